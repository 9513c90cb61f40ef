"""What is wrong with a job file is told: where, what was found, what is wanted."""

import pytest

from tests.kitchen_files import changed, faults_of, without

SIDES = dict.fromkeys(("left", "right", "top", "bottom"), "0")
OPENING = "cabinets.0.openings.0"
BOX = {"width": "14", "height": "20", "front_thickness": "3/4", "rise": "1/2"}
STACK = {
    "label": "a", "x": "1 1/2", "y": "1 1/2", "width": "15", "height": "26",
    "closed_by": "drawers", "count": 2,
}  # fmt: skip
PULL_OUT = {
    "label": "a", "x": "1 1/2", "y": "1 1/2", "width": "15", "height": "26",
    "closed_by": "pull-out",
}  # fmt: skip
O1 = "cabinets[0].openings[0]"
SIZE = "a length above zero, like 23 5/8"
ZERO = "a length of zero or more, like 23 5/8"
LABEL = "a label of 1 to 40 characters"


@pytest.mark.parametrize(
    ("path", "value", "line"),
    [
        ("version", 3, "version: found 3, wanted 1 or 2"),
        ("version", "1", 'version: found "1", wanted 1 or 2'),
        ("version", True, "version: found true, wanted 1 or 2"),
        ("job", [], "job: found an empty list, wanted an object with keys in braces"),
        ("job.unit", "cm", 'job.unit: found "cm", wanted one of in, mm'),
        ("job.number", 104, f"job.number: found 104, wanted {LABEL}"),
        ("job.number", "", f'job.number: found "", wanted {LABEL}'),
        ("job.step", "0", 'job.step: found "0", wanted a length above zero, at most 25.4 mm, '
         "like 23 5/8"),
        ("job.step", "2", 'job.step: found "2", wanted a length above zero, at most 25.4 mm, '
         "like 23 5/8"),
        ("job.fit_on", "12/3/2027", 'job.fit_on: found "12/3/2027", wanted a date like 2027-03-12'),
        ("job.fit_on", "2027-02-30", 'job.fit_on: found "2027-02-30", wanted a date like '
         "2027-03-12"),
        ("job.client", "a\nb", 'job.client: found "a\\u000ab", wanted text without control '
         "characters"),
        ("job.site", "\ud800", 'job.site: found "\\ud800", wanted text without control characters'),
        ("standard.mount", "flush", 'standard.mount: found "flush", wanted one of overlay, inset'),
        ("standard.overlay.left", "-1/2", f'standard.overlay.left: found "-1/2", wanted {ZERO}'),
        ("standard.gap_between", "nan", 'standard.gap_between: found "nan" (is not a length), '
         f"wanted {ZERO}"),
        ("standard.front_thickness", "0", f'standard.front_thickness: found "0", wanted {SIZE}'),
        ("standard.skin", "1/0", f'standard.skin: found "1/0" (divides by zero), wanted {ZERO}'),
        ("standard.reveal", {"between": "1/8", "end": SIDES}, "standard.reveal: found both, "
         "wanted only one of overlay and reveal on one level"),
        ("doors_on_hand", {}, "doors_on_hand: found an object, wanted a list"),
        ("doors_on_hand.0.label", "choose", 'doors_on_hand[0].label: found "choose", wanted a '
         "label other than the word choose"),
        ("doors_on_hand.0.width", "900", 'doors_on_hand[0].width: found "900" (is more than '
         f"20 m (65 ft)), wanted {SIZE}"),
        ("doors_on_hand.0.width", False, f"doors_on_hand[0].width: found false, wanted {SIZE}"),
        ("doors_on_hand.0.build", "raised", 'doors_on_hand[0].build: found "raised", wanted one of '
         "slab, five-piece"),
        ("doors_on_hand.0.stile", "8", 'doors_on_hand[0].stile: found "8", wanted less than half '
         "the door's width"),
        ("doors_on_hand.0.knob_hole", {"x": "17", "y": "1"}, "doors_on_hand[0].knob_hole: found a "
         "place outside the door, wanted a place on the door"),
        ("doors_on_hand.0.hinge_bores", [{"x": "1", "y": "1"}, {"x": "1", "y": "28"}],
         "doors_on_hand[0].hinge_bores[1]: found a place outside the door, wanted a place on the "
         "door"),
        ("doors_on_hand.1", {"label": "D1", "width": "1", "height": "1"},
         'doors_on_hand[1].label: found "D1", wanted a label that no other door has'),
        ("cabinets.0.label", "B" * 41, f'cabinets[0].label: found "{"B" * 39}…", wanted {LABEL}'),
        ("cabinets.0.label", "B1 ", 'cabinets[0].label: found "B1 ", wanted a label with no space '
         "before or after it"),
        ("cabinets.0.label", "B\u0007", 'cabinets[0].label: found "B\\u0007", wanted text without '
         "control characters"),
        ("cabinets.0.kind", "island", 'cabinets[0].kind: found "island", wanted one of base, wall, '
         "tall"),
        ("cabinets.0.build", None, "cabinets[0].build: found null, wanted one of face-frame, "
         "frameless"),
        ("cabinets.0.wall", " ", 'cabinets[0].wall: found " ", wanted a label with no space before '
         "or after it"),
        ("cabinets.0.depth", "0", f'cabinets[0].depth: found "0", wanted {SIZE}'),
        (f"{OPENING}.x", "-1", f'{O1}.x: found "-1", wanted {ZERO}'),
        (f"{OPENING}.width", "17", f'{O1}.width: found "17", wanted an opening that ends within '
         "its cabinet's width"),
        (f"{OPENING}.y", "5", f'{O1}.height: found "26", wanted an opening that ends within its '
         "cabinet's height"),
        (f"{OPENING}.closed_by", "flap", f'{O1}.closed_by: found "flap", wanted one of door, pair, '
         "drawer, drawers, pull-out, fixed, open"),
        (f"{OPENING}.hinged", "middle", f'{O1}.hinged: found "middle", wanted one of left, right, '
         "top, bottom"),
        (f"{OPENING}.count", 2, f"{O1}.count: found 2, wanted no count unless closed_by is "
         "drawers"),
        (f"{OPENING}.heights", ["4"], f"{O1}.heights: found a list of 1, wanted no heights unless "
         "closed_by is drawers"),
        (f"{OPENING}.box", BOX, f"{O1}.box: found an object, wanted no box unless closed_by is "
         "drawer or pull-out"),
        (f"{OPENING}.boxes", [BOX], f"{O1}.boxes: found a list of 1, wanted no boxes unless "
         "closed_by is drawers"),
        (f"{OPENING}.measured", {"diagonal_1": "30"}, f"{O1}.measured.diagonal_2: found nothing, "
         "wanted both diagonals or neither"),
        (f"{OPENING}.front", {"door_on_hand": "D9"}, f'{O1}.front.door_on_hand: found "D9", wanted '
         "the label of a door on hand, or choose"),
        (f"{OPENING}.front", {"shift_x": "?"}, f'{O1}.front.shift_x: found "?" (is not a length), '
         "wanted a length, also below zero, like 23 5/8"),
        (OPENING, STACK | {"front": {"door_on_hand": "D1"}}, f'{O1}.front.door_on_hand: found "D1",'
         " wanted choose: a door that is named serves a single front"),
        (OPENING, {k: v for k, v in STACK.items() if k != "count"}, f"{O1}.count: found nothing, "
         "wanted how many drawers, 1 to 20"),
        (OPENING, STACK | {"count": 0}, f"{O1}.count: found 0, wanted a whole number from 1 to 20"),
        (OPENING, STACK | {"count": 21}, f"{O1}.count: found 21, wanted a whole number from 1 to "
         "20"),
        (OPENING, STACK | {"count": True}, f"{O1}.count: found true, wanted a whole number from 1 "
         "to 20"),
        (OPENING, STACK | {"count": 2.0}, f"{O1}.count: found 2.0, wanted a whole number from 1 to "
         "20"),
        (OPENING, STACK | {"heights": ["4"]}, f"{O1}.heights: found a list of 1, wanted one entry "
         "for each of the 2 drawers, null where it has none"),
        (OPENING, STACK | {"boxes": []}, f"{O1}.boxes: found an empty list, wanted one entry for "
         "each of the 2 drawers, null where it has none"),
        (OPENING, STACK | {"box": BOX}, f"{O1}.box: found an object, wanted no box unless closed_by"
         " is drawer or pull-out"),
        (OPENING, STACK | {"boxes": [None, BOX | {"rise": "-1"}]}, f'{O1}.boxes[1].rise: found "-1"'
         f", wanted {ZERO}"),
        (OPENING, PULL_OUT | {"box": BOX | {"slide": "top"}}, f'{O1}.box.slide: found "top", wanted'
         " one of bottom, side, under, bottom-mount, side-mount, undermount"),
        (OPENING, PULL_OUT | {"box": BOX | {"shelf_pins": [{"x": "1", "y": "1", "pitch": "1",
         "count": 501}]}}, f"{O1}.box.shelf_pins[0].count: found 501, wanted a whole number from 1 "
         "to 500"),
        ("cabinets.0.openings.1", {"label": "a", "x": "2", "y": "28", "width": "1", "height": "1",
         "closed_by": "fixed"}, 'cabinets[0].openings[1].label: found "a", wanted a label that no '
         "other opening has; “B1.a” is taken"),
        ("stock", {"knob_thread": "fine"}, 'stock.knob_thread: found "fine", wanted a thread like '
         "8-32, 1/4-20 or M4"),
        ("stock", {"slide_lengths": ["12", "0"]}, f'stock.slide_lengths[1]: found "0", wanted '
         f"{SIZE}"),
        ("stock", {"screw_lengths": "1"}, 'stock.screw_lengths: found "1", wanted a list'),
        ("practice", {"spares": "101"}, 'practice.spares: found "101", wanted a number from 0 to '
         "100"),
        ("practice", {"spares": "1/0"}, 'practice.spares: found "1/0", wanted a number from 0 to '
         "100"),
        ("practice", {"hole_diameter": "0"}, f'practice.hole_diameter: found "0", wanted {SIZE}'),
        ("practice", {"slide_classes": ["50", "30"]}, "practice.slide_classes: found a list of 2, "
         "wanted one load in kg or more, each above the last"),
        ("practice", {"hinges_by_height": []}, "practice.hinges_by_height: found an empty list, "
         "wanted one row or more, each up_to above the last and hinges never fewer"),
        ("practice", {"hinges_by_height": [{"up_to": "30", "hinges": 3}, {"up_to": "40",
         "hinges": 2}]}, "practice.hinges_by_height: found a list of 2, wanted one row or more, "
         "each up_to above the last and hinges never fewer"),
        ("practice", {"hinges_by_weight": [{"up_to_kg": "-1", "hinges": 2}]},
         'practice.hinges_by_weight[0].up_to_kg: found "-1", wanted a number from 0.001 to 1000'),
        ("practice", {"humidity_low": 70}, "practice.humidity_low: found 70, wanted humidity_low "
         "at or under humidity_high"),
    ],
)  # fmt: skip
def test_one_thing_wrong(path: str, value: object, line: str) -> None:
    """One slip is told once, at its key."""
    assert faults_of(changed(path, value)) == [line]


@pytest.mark.parametrize(
    ("path", "line"),
    [
        ("version", "version: found nothing, wanted 1 or 2"),
        ("job", "job: found nothing, wanted an object with number and unit"),
        ("job.number", "job.number: found nothing, wanted the number, as text"),
        ("job.unit", "job.unit: found nothing, wanted one of in, mm"),
        ("standard.overlay.top", "standard.overlay.top: found nothing, wanted a length of zero or "
         "more"),
        ("doors_on_hand.0.height", "doors_on_hand[0].height: found nothing, wanted a length above "
         "zero"),
        ("cabinets.0.wall", "cabinets[0].wall: found nothing, wanted the wall, as text"),
        ("cabinets.0.x", "cabinets[0].x: found nothing, wanted a length, also below zero"),
        (f"{OPENING}.label", f"{O1}.label: found nothing, wanted the label, as text"),
        (f"{OPENING}.closed_by", f"{O1}.closed_by: found nothing, wanted one of door, pair, drawer,"
         " drawers, pull-out, fixed, open"),
        (f"{OPENING}.height", f"{O1}.height: found nothing, wanted a length above zero"),
    ],
)  # fmt: skip
def test_one_thing_missing(path: str, line: str) -> None:
    """A key that is needed is asked for by its path."""
    assert faults_of(without(path))[0] == line


@pytest.mark.parametrize(
    "path",
    ["", "job.", "standard.", "standard.overlay.", "doors_on_hand.0.", "cabinets.0.",
     f"{OPENING}."],
)  # fmt: skip
def test_unknown_keys_at_every_level(path: str) -> None:
    """A key that nobody knows is refused where it stands, with those that are known."""
    (line,) = faults_of(changed(f"{path}colour", "oak"))
    place = path.replace(".0.", "[0].")
    assert line.startswith(f"{place}colour: found an unknown key, wanted one of ")


def test_unknown_keys_within_a_box_and_beside_it() -> None:
    """The deepest objects are read as closely as the first."""
    pins = {"x": "1", "y": "1", "pitch": "1", "count": 3, "z": 1}
    wish = {"door": "D1"}
    measured = {"depth": "3"}
    found = faults_of(
        changed(
            OPENING,
            PULL_OUT
            | {"box": BOX | {"lid": 1, "shelf_pins": [pins]}, "front": wish, "measured": measured},
        )
    )
    assert [each.partition(": ")[0] for each in found] == [
        f"{O1}.measured.depth",
        f"{O1}.front.door",
        f"{O1}.box.lid",
        f"{O1}.box.shelf_pins[0].z",
    ]


def test_odd_keys_are_quoted_on_one_line() -> None:
    """A path stays one line that can be printed, whatever the key."""
    (line,) = faults_of(changed("two\nlines \ud800", 1))
    assert line.startswith('["two\\u000alines \\ud800"]: found an unknown key')
