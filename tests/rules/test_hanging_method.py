"""How fronts are hung: common practice, no source."""

from dataclasses import replace

import pytest

from fronts.rules.hanging_method import HangingMethod, hanging_method
from fronts.rules.kitchen import Opening
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import BOX, cabinet, inch, kitchen, opening

INSET = Standard(mount="inset")
ON_A_BOX = opening("pull-out", boxes=(BOX,))
METHODS: list[tuple[str, Opening, HangingMethod | None]] = [
    ("door", opening(), "hinges"),
    ("door at its top", opening(hinged="top"), "top-hung"),
    ("door at its bottom", opening(hinged="bottom"), "bottom-hung"),
    ("fixed", opening("fixed"), "fixed"),
    ("overlay on a box", ON_A_BOX, "jig"),
    ("inset on a box above its edge", replace(ON_A_BOX, standard=INSET), "inset-jig"),
    (
        "inset, its box at the opening's edge",
        opening("pull-out", boxes=(replace(BOX, rise=inch("0")),), standard=INSET),
        "shims",
    ),
    (
        "its box 1/8 in above its edge",
        opening("pull-out", boxes=(replace(BOX, rise=inch("-3/8")),)),
        "packers",
    ),
    (
        "inset, its box 1/8 in above its edge",
        opening("pull-out", boxes=(replace(BOX, rise=inch("7/32")),), standard=INSET),
        "shims",
    ),
    (
        "its box below its edge",
        opening("pull-out", boxes=(replace(BOX, rise=inch("-3/4")),)),
        "no-jig",
    ),
    ("its box not measured", opening("drawer"), None),
]


@pytest.mark.parametrize(
    ("one", "method"), [row[1:] for row in METHODS], ids=[row[0] for row in METHODS]
)
def test_how_it_is_hung(one: Opening, method: HangingMethod | None) -> None:
    """By its hinge side, or by where its box stands behind it."""
    worked_out = schedule(kitchen(cabinet(one)))
    (front,) = worked_out.fronts

    assert hanging_method(front, worked_out.fitting(front.label)) == method


def test_each_door_of_a_pair_has_hinges() -> None:
    """A pair is two doors."""
    worked_out = schedule(kitchen(cabinet(opening("pair"))))

    assert [hanging_method(front, None) for front in worked_out.fronts] == ["hinges", "hinges"]
