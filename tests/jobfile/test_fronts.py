"""Version 2 has an entry for each front of an opening; version 1 decided about them together."""

import json
from fractions import Fraction
from typing import Any

import pytest

from fronts.jobfile import read, write
from fronts.rules.box_facts import Box
from fronts.rules.kinds import CLOSINGS
from fronts.rules.kitchen import CHOOSE, FrontFacts, Opening
from fronts.rules.lengths import INCH
from tests.kitchen_files import faults_of, small

O1 = "cabinets[0].openings[0]"
STACK: dict[str, Any] = {"closed_by": "drawers", "count": 3}
SAID: dict[str, Any] = {"width": "14", "height": "6", "front_thickness": "3/4", "rise": "1/2"}
BOX = Box(14 * INCH, 6 * INCH, INCH * 3 / 4, INCH / 2)
BESIDE_FRONT = ("own_height", "hinged", "box")


def file(*, version: int = 2, **keys: Any) -> str:
    """The small job with these keys in its only opening, which is hinged nowhere."""
    tree = small() | {"version": version}
    opening = tree["cabinets"][0]["openings"][0]
    del opening["hinged"]
    opening.update(keys)
    return json.dumps(tree)


def opening_of(text: str) -> Opening:
    """The only opening of a file."""
    return read(text).cabinets[0].openings[0]


def told(text: str) -> list[str]:
    """What is wrong, without the way to the opening."""
    return [fault.removeprefix(f"{O1}.") for fault in faults_of(text)]


def test_each_front_of_a_stack_is_its_own() -> None:
    """The top one a slab, the others five-piece; one stands on a box, one is made of a door."""
    entries = [
        {"height": "6", "build": "slab", "material": "cherry"},
        {"build": "five-piece", "box": SAID, "shift_x": "-1/16", "thickness": "7/8"},
        {"build": "five-piece", "door_on_hand": CHOOSE},
    ]
    assert opening_of(file(**STACK, fronts=entries)).fronts == (
        FrontFacts(own_height=6 * INCH, build="slab", material="cherry"),
        FrontFacts(build="five-piece", box=BOX, shift_x=-INCH / 16, thickness=INCH * 7 / 8),
        FrontFacts(build="five-piece", door_on_hand=CHOOSE),
    )


def test_a_height_alone_is_a_part_of_the_stack() -> None:
    """With a width it is that of a front that exists, and elsewhere it always is."""
    entries = [{"height": "6"}, {"width": "16", "height": "7"}, {"own_height": "5", "height": "8"}]
    stack = opening_of(file(**STACK, fronts=entries))
    assert stack.fronts == (
        FrontFacts(own_height=6 * INCH),
        FrontFacts(width=16 * INCH, height=7 * INCH),
        FrontFacts(own_height=5 * INCH),
    )

    door = opening_of(file(fronts=[{"height": "6"}]))
    assert door.fronts == (FrontFacts(height=6 * INCH, hinged="left"),)


def test_an_empty_entry_leaves_its_front_to_the_rules() -> None:
    """`null` says the same as an empty object."""
    entries = [None, {}, {"height": None, "box": None}]
    assert opening_of(file(**STACK, fronts=entries)).fronts == (FrontFacts(),) * 3


def test_an_entry_comes_before_what_is_said_of_all() -> None:
    """The older keys go on holding for what the entries leave open."""
    opening = opening_of(
        file(
            **STACK, front={"build": "slab", "material": "cherry"}, heights=["4", "5", None],
            boxes=[SAID, None, None], fronts=[{"build": "five-piece"}, None, {"box": SAID}],
        )
    )  # fmt: skip
    assert opening.fronts == (
        FrontFacts(own_height=4 * INCH, build="five-piece", material="cherry", box=BOX),
        FrontFacts(own_height=5 * INCH, build="slab", material="cherry"),
        FrontFacts(build="slab", material="cherry", box=BOX),
    )


@pytest.mark.parametrize("version", [1, 2])
def test_the_older_keys_mean_the_same_in_either_version(version: int) -> None:
    """What is said of the opening holds for each of its fronts."""
    stack = file(
        version=version, **STACK, heights=["4", None, None], boxes=[None, SAID, None],
        front={"build": "slab", "shift_y": "1/16"},
    )  # fmt: skip
    slab = {"build": "slab", "shift_y": INCH / 16}
    assert opening_of(stack).fronts == (
        FrontFacts(own_height=4 * INCH, **slab),  # type: ignore[arg-type]
        FrontFacts(box=BOX, **slab),  # type: ignore[arg-type]
        FrontFacts(**slab),  # type: ignore[arg-type]
    )

    pull_out = file(version=version, closed_by="pull-out", box=SAID, front={"door_on_hand": "D1"})
    assert opening_of(pull_out).fronts == (FrontFacts(door_on_hand="D1", box=BOX),)
    door = file(version=version, hinged="top", front={"width": "16", "height": "27"})
    assert opening_of(door).fronts == (FrontFacts(width=16 * INCH, height=27 * INCH, hinged="top"),)
    together = file(version=version, **STACK, front={"height": "6"}, heights=[None, "5", None])
    assert [front.own_height for front in opening_of(together).fronts] == [
        6 * INCH, 5 * INCH, 6 * INCH,
    ]  # fmt: skip


def test_a_door_says_in_its_entry_where_it_is_hinged() -> None:
    """Before what the opening says."""
    assert opening_of(file(hinged="top", fronts=[{"hinged": "right"}])).fronts[0].hinged == "right"


def test_fronts_are_unknown_in_version_1() -> None:
    """That is all that is told of them, whatever they hold."""
    known = "label, x, y, width, height, closed_by, measured, standard, count"
    wrong: tuple[Any, ...] = ([{}], [{}, {"lid": 1}], "none", [{"door_on_hand": "D9"}])
    for entries in wrong:
        assert told(file(version=1, fronts=entries)) == [
            f"fronts: found an unknown key, wanted one of {known}, hinged, heights, front, box, "
            "boxes"
        ]


@pytest.mark.parametrize(
    ("keys", "fault"),
    [
        ({"fronts": {}}, "fronts: found an object, wanted a list"),
        ({"fronts": [{}] * 21}, "fronts: found a list of 21, wanted at most 20 entries"),
        ({"fronts": []}, "fronts: found an empty list, wanted one entry a front, 1 in all"),
        (STACK | {"fronts": [{}]}, "fronts: found a list of 1, wanted one entry a front, 3 in all"),
        ({"closed_by": "pair", "fronts": [{}] * 3},
         "fronts: found a list of 3, wanted one entry a front, 2 in all"),
        ({"closed_by": "open", "fronts": [{}]},
         "fronts: found a list of 1, wanted one entry a front, 0 in all"),
        (STACK | {"fronts": [None, 3, None]},
         "fronts[1]: found 3, wanted an object with keys in braces"),
        (STACK | {"fronts": [{}, {}, {"height": "0"}]},
         'fronts[2].height: found "0", wanted a length above zero, like 23 5/8'),
        ({"fronts": [{"hinged": "middle"}]},
         'fronts[0].hinged: found "middle", wanted one of left, right, top, bottom'),
        (STACK | {"fronts": [{}, {"box": SAID | {"rise": "-1"}}, {}]},
         'fronts[1].box.rise: found "-1", wanted a length of zero or more, like 23 5/8'),
        (STACK | {"fronts": [{}, {}, {"door_on_hand": "D1"}]},
         'fronts[2].door_on_hand: found "D1", wanted choose: a door that is named serves a '
         "single front"),
        ({"fronts": [{"door_on_hand": "D9"}]},
         'fronts[0].door_on_hand: found "D9", wanted the label of a door on hand, or choose'),
        ({"fronts": [{"box": SAID}]},
         "fronts[0].box: found an object, wanted no box unless closed_by is drawer or drawers or "
         "pull-out"),
        ({"fronts": [{"own_height": "3"}]},
         'fronts[0].own_height: found "3", wanted no own_height unless closed_by is drawers'),
    ],
)  # fmt: skip
def test_one_slip_is_told_once_with_its_path(keys: dict[str, Any], fault: str) -> None:
    """In the entry where it was made."""
    assert told(file(**keys)) == [fault]


def test_a_slip_before_it_does_not_make_the_fronts_wrong() -> None:
    """How many there should be, nobody can tell."""
    closings = ", ".join(CLOSINGS)
    assert told(file(closed_by="flap", fronts=[{}], heights=["4"])) == [
        f'closed_by: found "flap", wanted one of {closings}'
    ]
    assert told(file(closed_by="drawers", fronts=[{}, {}])) == [
        "count: found nothing, wanted how many drawers, 1 to 20"
    ]


@pytest.mark.parametrize("key", ["handle", "hinge", "handles", "glass"])
def test_a_key_of_version_2_is_refused_by_name(key: str) -> None:
    """A front's hardware, in version 1: nothing that a file says is dropped without a word."""
    (fault,) = told(file(version=1, front={key: "K1"}))
    assert fault.startswith(f"front.{key}: found an unknown key, wanted one of ")


def test_a_front_says_its_hardware_and_its_glass() -> None:
    """The items by their codes, and where the middles of its handles are."""
    says = {"handle": "K1", "hinge": "H1", "glass": True, "handles": [{"x": "2", "y": "3 1/2"}]}
    (front,) = opening_of(file(fronts=[says])).fronts

    assert (front.handle, front.hinge, front.glass) == ("K1", "H1", True)
    assert [(place.x, place.y) for place in front.handles] == [(2 * INCH, INCH * 7 / 2)]


@pytest.mark.parametrize("key", ["walls", "hardware", "boxes_made_of", "others"])
def test_whole_parts_of_a_kitchen_are_refused_by_name(key: str) -> None:
    """In version 1, which knows none of them."""
    (fault,) = faults_of(json.dumps(small() | {key: []}))
    assert fault.startswith(f"{key}: found an unknown key, wanted one of ")


def test_a_box_to_be_made_is_refused_in_version_1() -> None:
    """A box there is one that was measured."""
    faults = told(file(version=1, **STACK, boxes=[SAID | {"make": True}, None, None]))
    assert [fault.partition(", wanted")[0] for fault in faults] == [
        "boxes[0].make: found an unknown key"
    ]


def test_a_box_to_be_made_has_no_sizes_of_its_own() -> None:
    """They follow from its opening and its slide, so each that stands there is refused."""
    faults = told(file(**STACK, fronts=[{"box": SAID | {"make": True}}, {}, {}]))
    wanted = "where the box is to be made: its sizes follow"
    assert faults == [
        f'fronts[0].box.{key}: found "{size}", wanted no {key} {wanted}'
        for key, size in SAID.items()
    ]


@pytest.mark.parametrize("closed_by", ["lift-up", "tip-out", "appliance-panel"])
def test_one_front_closes_it_in_other_ways(closed_by: str) -> None:
    """It lifts up, tips out, or is a machine's."""
    of = opening_of(file(closed_by=closed_by))
    assert (of.closed_by, len(of.fronts)) == (closed_by, 1)


WAYS = "door, pair, drawer, drawers, pull-out, fixed, open"


@pytest.mark.parametrize("closed_by", ["lift-up", "tip-out", "appliance-panel"])
def test_version_1_has_no_word_for_them(closed_by: str) -> None:
    """It is told what there was."""
    assert told(file(version=1, closed_by=closed_by)) == [
        f'closed_by: found "{closed_by}", wanted one of {WAYS}'
    ]


MACHINE = {"least_width": "23", "most_width": "24", "most_kg": "9.5"}


def test_a_panel_says_what_its_machine_takes() -> None:
    """In an entry of its own, and written again as it was read."""
    text = file(closed_by="appliance-panel", fronts=[{"machine": MACHINE}])
    (front,) = opening_of(text).fronts

    assert (front.machine.most_width, front.machine.most_kg) == (24 * INCH, Fraction(19, 2))
    assert written(text)["fronts"] == [{"machine": MACHINE}]


def test_a_machine_or_a_sink_is_refused_where_there_is_none() -> None:
    """A door has none; a tip-out has the sink alone; and no most is under its least."""
    door = told(file(fronts=[{"machine": MACHINE, "room_behind": "3"}]))
    assert [fault.rpartition(", wanted ")[2] for fault in door] == [
        "no machine unless closed_by is appliance-panel",
        "no room_behind unless closed_by is tip-out",
    ]
    (sink,) = opening_of(file(closed_by="tip-out", front={"room_behind": "3"})).fronts
    assert sink.room_behind == 3 * INCH
    wrong = {"machine": MACHINE | {"most_width": "22"}}
    assert told(file(closed_by="appliance-panel", front=wrong)) == [
        'front.machine.most_width: found "22", wanted this is less than the least; exchange the two'
    ]


def written(text: str) -> dict[str, Any]:
    """The only opening of a file as it is written again."""
    tree = json.loads(write(read(text)))
    assert tree["version"] == 2
    opening: dict[str, Any] = tree["cabinets"][0]["openings"][0]
    return opening


def test_a_stack_is_written_front_by_front() -> None:
    """Its own height is called the height again, unless a front's own sizes stand beside it."""
    entries = [{"height": "6", "build": "slab"}, {}, {"own_height": "7", "width": "16"}]
    opening = written(file(**STACK, fronts=entries))

    assert (opening["count"], opening["fronts"]) == (3, entries)
    assert not {"front", "heights", "box", "boxes", "hinged"} & opening.keys()


def test_what_version_1_said_of_all_is_written_of_each() -> None:
    """Nobody decided anything else about the one than about the other."""
    opening = written(
        file(version=1, closed_by="pair", front={"build": "slab", "door_on_hand": CHOOSE})
    )
    assert opening["fronts"] == [{"door_on_hand": CHOOSE, "build": "slab"}] * 2


def test_a_front_left_to_the_rules_is_not_written() -> None:
    """A drawer says nothing, a stack only how many there are; a door where it is hinged."""
    assert "fronts" not in written(file(closed_by="drawer"))
    stack = written(file(**STACK))
    assert stack["count"] == 3
    assert "fronts" not in stack
    assert written(file())["fronts"] == [{"hinged": "left"}]
