"""A schedule's fingerprint: the same for the same schedule, another for another."""

import re
from dataclasses import replace

import pytest

from fronts.rules.fingerprint import fingerprint, parts_fingerprint
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from tests.rules.small_kitchens import BOX, cabinet, door, inch, inches, kitchen, opening

CHOSEN = opening(front=FrontFacts(door_on_hand="D1"))
BASE = kitchen(
    cabinet(opening("pull-out", boxes=(BOX,))),
    cabinet(CHOSEN, label="B2", x=inch("18")),
    doors=[door()],
)


def _of(kitchen_: Kitchen) -> str:
    return fingerprint(schedule(kitchen_))


def _with(index: int, **changes: object) -> Kitchen:
    cabinets = list(BASE.cabinets)
    cabinets[index] = replace(cabinets[index], **changes)  # type: ignore[arg-type]
    return replace(BASE, cabinets=tuple(cabinets))


def _box(**changes: object) -> Kitchen:
    box = replace(BOX, **changes)  # type: ignore[arg-type]
    return _with(0, openings=(opening("pull-out", boxes=(box,)),))


def _opening(**changes: Mm) -> Kitchen:
    return _with(0, openings=(opening("pull-out", boxes=(BOX,), **changes),))


def _stock(**changes: tuple[Mm, ...]) -> Kitchen:
    return replace(BASE, stock=replace(BASE.stock, **changes))  # type: ignore[arg-type]


SIZES = [
    ("an opening's width", _opening(width=inch("14 15/16"))),
    ("an opening's place", _opening(y=inch("1 9/16"))),
    ("a cabinet's place", _with(1, x=inch("18 1/128"))),
    ("a box's width", _box(width=inch("13 15/16"))),
    ("a box's rise", _box(rise=inch("9/16"))),
    ("a box's front", _box(front_thickness=inch("5/8"))),
    ("a box's height", _box(height=inch("23 15/16"))),
    ("a door's width", replace(BASE, doors_on_hand=(door(width="15 7/8"),))),
    ("a door's thickness", replace(BASE, doors_on_hand=(door(thickness=inch("13/16")),))),
    ("the screws on the shelf", _stock(screw_lengths=inches("1"))),
    ("the least gap", replace(BASE, standard=replace(BASE.standard, least_gap=inch("4")))),
    ("the unit", replace(BASE, job=replace(BASE.job, unit="mm"))),
]  # fmt: skip


@pytest.mark.parametrize("changed", [each[1] for each in SIZES], ids=[each[0] for each in SIZES])
def test_another_size_is_another_fingerprint(changed: Kitchen) -> None:
    """Paper printed before the change can be told from paper printed after it."""
    assert _of(changed) != _of(BASE)


def test_names_of_the_job_change_nothing() -> None:
    """Whose kitchen it is, where, and when it is fitted, are on the sheet beside it."""
    job = replace(BASE.job, client="Lindqvist", site="12 Hill Road", number="T-2")

    assert _of(replace(BASE, job=job)) == _of(BASE)


def test_the_same_kitchen_has_the_same_fingerprint() -> None:
    """Worked out again, or from an equal kitchen."""
    assert _of(BASE) == _of(replace(BASE)) == _of(_with(0))


def test_it_reads_easily_on_paper() -> None:
    """Two groups of four letters and digits."""
    assert re.fullmatch(r"[0-9a-f]{4}-[0-9a-f]{4}", _of(BASE))


def test_the_parts_fingerprint_is_that_of_the_parts_alone() -> None:
    """It stays when the parts come in another order, and changes with any part."""
    parts = schedule(BASE).parts
    other = (*parts[:-1], replace(parts[-1], width=parts[-1].width - Mm(1)))

    assert parts_fingerprint(reversed(parts)) == parts_fingerprint(parts)
    assert parts_fingerprint(other) != parts_fingerprint(parts)
    assert re.fullmatch(r"[0-9a-f]{4}-[0-9a-f]{4}", parts_fingerprint(parts))
