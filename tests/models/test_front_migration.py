"""A database goes all its steps from nothing, with a kitchen from before fronts were rows."""

from datetime import UTC, datetime
from fractions import Fraction
from typing import Any

import pytest

from fronts.rules.practice import inches
from shopjobs.services.installation import migrations_applied, own_apps
from tests.models.made_tables import made_tables
from tests.models.steps import in_steps, migrated, newest

pytestmark = pytest.mark.thorough

BEFORE = (
    ("fronts", "0002_cutting_plans_and_order_lists"), ("shopjobs", "0002_words_on_one_line"),
)  # fmt: skip
THEN = datetime(2027, 2, 1, 8, 0, tzinfo=UTC)
NOTHING: dict[str, Any] = {
    "own_height": None, "door": None, "choose": False, "width": None, "height": None,
    "thickness": None, "build": "", "material": "", "shift_x": Fraction(0),
    "shift_y": Fraction(0), "hinged": "",
}  # fmt: skip
BOX = {
    "width": inches(14), "height": inches(6), "front_thickness": inches(1, 2),
    "rise": inches(1), "slide": "side",
}  # fmt: skip
STACK = {
    "closed_by": "drawers", "count": 3, "heights": (inches(6), None, inches(9)),
    "front_build": "five-piece", "front_material": "cherry", "shift_y": inches(-1, 16),
}  # fmt: skip
HIGH_STACK = {
    "closed_by": "drawers", "count": 2, "heights": (None, inches(7)), "front_height": inches(5),
}  # fmt: skip
PAIR = {
    "closed_by": "pair", "front_choose": True, "front_thickness_own": inches(7, 8),
    "front_width": inches(8), "front_height": inches(20),
}  # fmt: skip
PULL_OUT = {"closed_by": "pull-out", "front_width": inches(16), "front_height": inches(24)}
LEANING = {"closed_by": "fixed", "diagonal_1": inches(30), "diagonal_2": inches(61, 2)}


@pytest.mark.usefixtures("now")
def test_from_nothing_step_by_step_and_back() -> None:
    """The tables are those of a new database, which are made at once; rows come through."""
    at_once, had = made_tables(), migrations_applied(*own_apps())
    in_steps().migrate([("fronts", None), ("shopjobs", None)])
    assert made_tables() == set()
    assert migrations_applied(*own_apps()) == []

    keys = _older_kitchen(migrated(*BEFORE))
    now = newest()

    by_steps = made_tables()
    assert len(by_steps) > 500
    assert at_once - by_steps == by_steps - at_once == set()
    assert migrations_applied(*own_apps()) == had
    _every_front_is_a_row_of_what_its_opening_said(now, keys)
    _boxes_and_records_found_their_fronts(now)

    _an_opening_says_what_its_first_front_says(migrated(*BEFORE))


def _older_kitchen(older: Any) -> dict[str, int]:
    """An opening of every kind, with boxes, a named door and records of fit: keys by label."""
    shop = older("shopjobs", "Shop").objects.create(name="Alder Row Cabinets")
    person = older("shopjobs", "Person").objects.create(username="ines", shop=shop)
    job = older("shopjobs", "Job").objects.create(shop=shop, number="K-1")
    other = older("shopjobs", "Job").objects.create(shop=shop, number="K-2")
    door = older("fronts", "DoorOnHand").objects.create(
        job=job, label="D1", width=inches(16), height=inches(28), thickness=inches(3, 4)
    )
    body = {
        "kind": "base", "build": "face-frame", "wall": "North", "x": 0, "y": inches(4),
        "width": inches(60), "height": inches(60), "depth": inches(24),
    }  # fmt: skip
    cabinet = older("fronts", "Cabinet").objects.create(job=job, label="B1", **body)
    older("fronts", "Cabinet").objects.create(job=other, label="B1", **body)
    place = {"x": inches(2), "y": inches(2), "width": inches(15), "height": inches(27)}
    openings = {
        label: older("fronts", "Opening").objects.create(
            cabinet=cabinet, label=label, position=position, **place, **said
        )
        for position, (label, said) in enumerate({
            "stack": STACK, "high": HIGH_STACK, "pair": PAIR,
            "door": {"closed_by": "door", "hinged": "right", "front_door": door},
            "drawer": {"closed_by": "drawer"}, "pull": PULL_OUT, "fixed": LEANING,
            "niche": {"closed_by": "open"},
        }.items())
    }  # fmt: skip
    for label, index in (("stack", 0), ("stack", 2), ("drawer", 0)):
        box = older("fronts", "Box").objects.create(opening=openings[label], index=index, **BOX)
        older("fronts", "ShelfPins").objects.create(
            box=box, x=1, y=1, pitch=32, count=index + 1, diameter=5
        )
    for owner, front in ((job, "B1.stack.2"), (job, "B1.door"), (job, "B9.gone"),
                         (other, "B1.door")):  # fmt: skip
        older("fronts", "FitRecord").objects.create(
            job=owner, front=front, cabinet=front.partition(".")[0], gap_left=inches(1, 8),
            note="snug", fitted_by=person, fitted_at=THEN, fingerprint="f",
        )  # fmt: skip
    return {label: opening.pk for label, opening in openings.items()}


def _fronts_of(now: Any, opening: int) -> list[dict[str, Any]]:
    """What each front of an opening says beyond nothing, in their order."""
    rows = list(now("fronts", "Front").objects.filter(opening=opening).order_by("position"))
    assert [row.position for row in rows] == list(range(len(rows)))
    return [
        {
            name: value
            for name in NOTHING
            if (value := row.door and row.door.label if name == "door" else getattr(row, name))
            != NOTHING[name]
        }
        for row in rows
    ]


def _every_front_is_a_row_of_what_its_opening_said(now: Any, keys: dict[str, int]) -> None:
    """As many as close it, each with all that held for it; a stack's heights one by one."""
    fronts = {label: _fronts_of(now, key) for label, key in keys.items()}

    drawer = {"build": "five-piece", "material": "cherry", "shift_y": inches(-1, 16)}
    leaf = {
        "choose": True, "thickness": inches(7, 8), "width": inches(8), "height": inches(20),
    }  # fmt: skip
    assert fronts == {
        "stack": [{**drawer, "own_height": inches(6)}, drawer, {**drawer, "own_height": inches(9)}],
        "high": [{"own_height": inches(5)}, {"own_height": inches(7)}],
        "pair": [leaf, leaf],
        "door": [{"door": "D1", "hinged": "right"}],
        "drawer": [{}],
        "pull": [{"width": inches(16), "height": inches(24)}],
        "fixed": [{}],
        "niche": [],
    }
    fixed = now("fronts", "Opening").objects.get(label="fixed")
    assert (fixed.measured_diagonal_1, fixed.measured_diagonal_2) == (inches(30), inches(61, 2))


def _boxes_and_records_found_their_fronts(now: Any) -> None:
    """A record of a front that has gone, or that another job has, points at none."""
    boxes = now("fronts", "Box").objects.order_by("pk")
    records = now("fronts", "FitRecord").objects.order_by("pk")

    assert [
        (box.front.opening.label, box.front.position, box.rise, box.shelf_pins.get().count)
        for box in boxes
    ] == [
        ("stack", 0, inches(1), 1),
        ("stack", 2, inches(1), 3),
        ("drawer", 0, inches(1), 1),
    ]
    assert [
        (record.label, record.front and (record.front.opening.label, record.front.position))
        for record in records
    ] == [
        ("B1.stack.2", ("stack", 1)),
        ("B1.door", ("door", 0)),
        ("B9.gone", None),
        ("B1.door", None),
    ]
    assert {
        (record.gap_left, record.note, record.fitted_by.username, record.fitted_at, record.hung)
        for record in records
    } == {(inches(1, 8), "snug", "ines", THEN, "")}


def _an_opening_says_what_its_first_front_says(before: Any) -> None:
    """Where its fronts are alike nothing is lost; boxes and records are whole again."""
    rows = {row.label: row for row in before("fronts", "Opening").objects.all()}
    said = {**STACK, "count": 3}

    assert {name: getattr(rows["stack"], name) for name in said} == said
    assert (rows["high"].count, rows["high"].heights) == (2, (inches(5), inches(7)))
    assert {name: getattr(rows["pair"], name) for name in PAIR} == PAIR
    assert (rows["door"].hinged, rows["door"].front_door.label) == ("right", "D1")
    assert (rows["pull"].front_width, rows["pull"].front_height) == (inches(16), inches(24))
    assert (rows["fixed"].diagonal_1, rows["niche"].closed_by) == (inches(30), "open")
    assert [
        (box.opening.label, box.index) for box in before("fronts", "Box").objects.order_by("pk")
    ] == [("stack", 0), ("stack", 2), ("drawer", 0)]
    assert [
        (record.front, record.cabinet)
        for record in before("fronts", "FitRecord").objects.order_by("pk")
    ] == [("B1.stack.2", "B1"), ("B1.door", "B1"), ("B9.gone", ""), ("B1.door", "")]
