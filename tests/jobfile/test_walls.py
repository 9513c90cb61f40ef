"""Walls and things beside cabinets in a job file, and what the schedule says of them."""

import json
from typing import Any

import pytest

from fronts.jobfile import read, write
from fronts.jobfile.schedule_json import schedule_json
from fronts.rules.schedule import schedule
from tests.kitchen_files import faults_of, small

FILLER = {"label": "F1", "kind": "filler", "wall": "North", "after": "B1", "width": "3"}
CORNER = {"corner": "inside", "wall": "East", "angle": "90"}
WALL = {"label": "North", "length": "120", "right": CORNER}
AFTER = "others[0].after: found "


def file(*others: dict[str, Any], walls: object = None) -> str:
    """The small job with a second cabinet on the east wall, and these things."""
    said: dict[str, Any] = small() | {"version": 2, "others": list(others)}
    (first,) = said["cabinets"]
    said["cabinets"] = [_placeless(first), _placeless(first, label="E1", wall="East")]
    return json.dumps(said if walls is None else said | {"walls": walls})


def _placeless(cabinet: dict[str, Any], **changes: str) -> dict[str, Any]:
    return {key: value for key, value in cabinet.items() if key != "x"} | changes


def test_what_is_read_is_written_again() -> None:
    """Things without a place stay without one; a corner's angle is always said."""
    said = json.loads(write(read(file(FILLER, walls=[WALL, {"label": "East"}]))))

    assert said["others"] == [FILLER]
    assert said["walls"] == [WALL, {"label": "East"}]
    assert all("x" not in cabinet for cabinet in said["cabinets"])


def test_a_schedule_says_where_things_stand_and_what_is_left() -> None:
    """By hand: 18 in and a filler of 3, of a wall 120 in long; of the other nothing is known."""
    found = schedule_json(schedule(read(file(FILLER, walls=[WALL]))))

    assert found["cabinets"] == [
        {"label": "B1", "x": "0", "y": "101.6"},
        {"label": "E1", "x": "0", "y": "101.6"},
    ]
    assert found["walls"] == [
        {"label": "North", "runs": {"floor": {"length": "533.4", "left_over": "2514.6"}}},
        {"label": "East", "runs": {"floor": {"length": "457.2", "left_over": None}}},
    ]


def test_a_schedule_says_how_a_front_lies_at_the_ends() -> None:
    """Of an opening that tapers: 15 in wide at the top, 15 1/4 at the bottom, lapped 1/2 in."""
    said = json.loads(file())
    said["cabinets"][0]["openings"][0]["measured"] = {
        "width_top": "15", "width_bottom": "15 1/4",
    }  # fmt: skip
    found = schedule_json(schedule(read(json.dumps(said))))
    side = {"top": "15.875", "bottom": "12.7"}
    end = {"left": "12.7", "right": "12.7"}

    assert found["openings"] == [
        {"opening": "B1.a", "ends": {"left": side, "right": side, "top": end, "bottom": end}}
    ]


@pytest.mark.parametrize(
    ("things", "line"),
    [
        ([FILLER | {"after": "B9"}],
         f'{AFTER}"B9", wanted the label of a cabinet or of another entry'),
        ([FILLER | {"after": "E1"}], f'{AFTER}"E1", wanted something on wall North'),
        ([FILLER | {"after": "F1"}],
         f'{AFTER}"F1", wanted something that does not follow this one in turn'),
        ([FILLER | {"label": "B1", "after": None}],
         'others[0].label: found "B1", wanted a label that no cabinet has'),
        ([FILLER | {"width": "0"}],
         'others[0].width: found "0", wanted a length above zero, like 23 5/8'),
    ],
    ids=["not there", "another wall", "itself", "a cabinet's label", "no width"],
)  # fmt: skip
def test_what_things_may_not_say(things: list[dict[str, Any]], line: str) -> None:
    """Each fault at its place."""
    assert faults_of(file(*things)) == [line]


def test_things_that_follow_each_other_are_refused() -> None:
    """A ring has no first: each of it is told, what hangs on it is not."""
    ring = [FILLER | {"after": "F2"}, FILLER | {"label": "F2", "after": "F1"}]
    hung = FILLER | {"label": "F3", "after": "F2"}

    assert [fault.partition(":")[0] for fault in faults_of(file(*ring, hung))] == [
        "others[0].after",
        "others[1].after",
    ]


def test_a_corner_names_a_wall_that_there_is() -> None:
    """One that cabinets stand on, or that is told of."""
    (fault,) = faults_of(file(walls=[WALL | {"right": {"wall": "West", "corner": "inside"}}]))

    assert fault.startswith("walls[0].right: found ")
    assert '"West"' in fault
