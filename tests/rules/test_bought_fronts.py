"""Fronts that a door maker makes: which they are, what is told of them, and what they leave."""

from collections import Counter
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given

from fronts.rules.bought_results import BoughtFront, BoughtLine
from fronts.rules.fingerprint import fingerprint
from fronts.rules.items import Hardware
from fronts.rules.kinds import MadeBy
from fronts.rules.kitchen import CHOOSE, FrontFacts, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.buying import buying
from tests.rules.hinge_items import listed, mm
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import (
    HALF_LAP,
    beside,
    cabinet,
    door,
    inch,
    inches,
    kitchen,
    opening,
)

BOUGHT = replace(HALF_LAP, made_by="bought", door_style="shaker", finish="clear lacquer")
FIVE_PIECE = FrontFacts(build="five-piece", material="cherry")


def lines(of: Kitchen) -> tuple[BoughtLine, ...]:
    """What is to be bought."""
    return schedule(of).bought


def only(of: Kitchen) -> BoughtFront:
    """What the maker is told of the one line."""
    (line,) = lines(of)
    return line.front


def said(word: MadeBy | None) -> Standard:
    """A level of which this is the only word."""
    return Standard(made_by=word)


@pytest.mark.parametrize(
    ("job", "case", "hole", "own", "is_bought"),
    [
        (None, None, None, None, False),
        ("bought", None, None, None, True),
        ("bought", "here", None, None, False),
        (None, "here", "bought", None, True),
        ("here", "here", "here", "bought", True),
        ("bought", "bought", "bought", "here", False),
    ],
)
def test_the_nearest_word_holds(
    job: MadeBy | None,
    case: MadeBy | None,
    hole: MadeBy | None,
    own: MadeBy | None,
    is_bought: bool,
) -> None:
    """The front's own before its opening's, that before its cabinet's, that before the job's."""
    of = opening(front=FrontFacts(made_by=own), standard=said(hole))
    standard = replace(HALF_LAP, made_by=job)
    found = schedule(kitchen(cabinet(of, standard=said(case)), standard=standard))

    assert [line.labels for line in found.bought] == ([("B1.a",)] if is_bought else [])
    assert bool(found.parts) != is_bought


@pytest.mark.parametrize(
    "front",
    [
        FrontFacts(door_on_hand="D1"),
        FrontFacts(door_on_hand=CHOOSE),
        FrontFacts(width=inch("16"), height=inch("28 1/2")),
    ],
    ids=["a door on hand", "one that is chosen", "a front that exists"],
)
def test_what_is_there_already_is_not_bought(front: FrontFacts) -> None:
    """Neither made nor bought, whatever the standard says."""
    found = schedule(kitchen(cabinet(opening(front=front)), standard=BOUGHT, doors=(door(),)))

    assert (found.bought, found.parts) == ((), ())


def test_where_no_door_on_hand_serves_a_new_one_is_bought() -> None:
    """It is needed all the same."""
    of = opening(front=FrontFacts(door_on_hand=CHOOSE))

    assert [line.labels for line in lines(kitchen(cabinet(of), standard=BOUGHT))] == [("B1.a",)]


def test_a_maker_is_told_all_of_a_five_piece_door() -> None:
    """16 × 28 1/2 in from an opening 15 × 27 1/2 in, lapping 1/2 in; B 3 mm, cups of 35 mm.

    The hinges stand 3 1/2 in from both ends, no end being nearer a rail.
    """
    words = replace(
        BOUGHT, species="black cherry", edge_profile="eased", panel_profile="flat",
        hinge_end=inch("3 1/2"),
    )  # fmt: skip
    of = kitchen(
        cabinet(opening(front=FIVE_PIECE, hinged="right")),
        standard=words,
        hardware=Hardware(hinges=(listed(),)),
    )
    told = only(of)

    assert told == BoughtFront(
        kind="door", width=inch("16"), height=inch("28 1/2"), thickness=inch("3/4"),
        build="five-piece", hand="right", style="shaker", material="cherry",
        species="black cherry", stile=inch("2 1/4"), rail=inch("2 1/4"), panel="cherry plywood",
        panel_thickness=inch("1/4"), edge_profile="eased", panel_profile="flat",
        grain="upright", bores=inches("3 1/2", "25"), bore_diameter=mm("35"),
        bore_depth=told.bore_depth, bore_from_edge=mm("20.5"), finish="clear lacquer",
    )  # fmt: skip
    assert told.bore_depth == schedule(of).fronts[0].hinge.cup_depth  # type: ignore[union-attr]


def test_a_frame_for_glass_comes_without_a_panel_and_the_pane_is_ordered_here() -> None:
    """Ready for glass; the pane stays on the hardware list."""
    of = kitchen(cabinet(opening(front=replace(FIVE_PIECE, glass=True))), standard=BOUGHT)
    told = only(of)

    assert (told.glass, told.panel, told.panel_thickness) == (True, "", None)
    assert [need.need for need in schedule(of).hardware if need.kind == "glass"] == [1]


@pytest.mark.parametrize(
    ("closed_by", "front", "grain"),
    [
        ("door", FrontFacts(material="oak"), "upright"),
        ("drawer", FrontFacts(material="oak"), "across"),
        ("drawer", FrontFacts(material="oak", build="five-piece"), "upright"),
        ("drawer", FrontFacts(material="oak", grain="upright"), "upright"),
        ("drawer", FrontFacts(material="MDF"), ""),
    ],
)
def test_the_grain_runs_as_the_shop_would_cut_it(
    closed_by: Any, front: FrontFacts, grain: str
) -> None:
    """As the front says, else as its kind has it."""
    of = kitchen(cabinet(opening(closed_by, front=front)), standard=BOUGHT)

    assert only(of).grain == grain


@pytest.mark.parametrize(
    "change",
    [
        {"hinged": "right"},
        {"width": inch("15 1/16")},
        {"standard": Standard(edge_profile="ogee")},
        {"front": FrontFacts(material="walnut")},
        {"front": FrontFacts(thickness=inch("7/8"))},
    ],
    ids=["hand", "width", "edge", "material", "thickness"],
)
def test_only_fronts_that_are_alike_in_all_are_one_line(change: dict[str, Any]) -> None:
    """Two of one kind count together; a third that differs in anything stands apart."""
    first = cabinet(opening())
    second = beside(first)
    third = beside(second, label="B3", openings=(opening(**change),))
    of = kitchen(first, second, third, standard=BOUGHT)

    assert [(line.count, line.labels) for line in lines(of)] == [
        (2, ("B1.a", "B2.a")), (1, ("B3.a",)),
    ]  # fmt: skip


@KITCHEN_LAW
@given(buying())
def test_buying_changes_nothing_but_who_makes_it(of: Kitchen) -> None:
    """Every new front is cut or bought, never both; all else is as if all were made here."""
    found, made = schedule(of), schedule(_made_here(of))
    bought = {label for line in found.bought for label in line.labels}
    cut = [part for part in made.parts if part.front not in bought or "box" in part.part]

    assert bought == {front.label for front in found.fronts if front.bought}
    assert bought <= {front.label for front in found.fronts if front.is_new}
    assert Counter(found.parts) == Counter(cut)
    assert [replace(front, bought=False) for front in found.fronts] == list(made.fronts)
    assert (found.hardware, found.fittings, found.boxes) == (
        made.hardware, made.fittings, made.boxes,
    )  # fmt: skip
    assert (fingerprint(found) == fingerprint(made)) == (not bought)
    for line in found.bought:
        for label in line.labels:
            front = found.front(label)
            size = (front.width, front.height, front.thickness)
            assert (line.front.width, line.front.height, line.front.thickness) == size
            assert all(Mm(0) < centre < max(size) for centre in line.front.bores)


def _made_here(of: Kitchen) -> Kitchen:
    """The same, with every word on who makes its fronts taken back."""
    return replace(
        of,
        standard=replace(of.standard, made_by=None),
        cabinets=tuple(
            replace(
                one,
                standard=replace(one.standard, made_by=None),
                openings=tuple(
                    replace(
                        hole,
                        standard=replace(hole.standard, made_by=None),
                        fronts=tuple(replace(front, made_by=None) for front in hole.fronts),
                    )
                    for hole in one.openings
                ),
            )
            for one in of.cabinets
        ),
    )
