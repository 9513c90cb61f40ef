"""What a job file says is what the kitchen holds."""

import ast
import inspect
import json
from datetime import date
from fractions import Fraction

import pytest

from fronts.jobfile import read, read_bytes
from fronts.rules import practice as practice_module
from fronts.rules.kitchen import KnobHole, Measured, Opening, Point
from fronts.rules.lengths import INCH, Mm
from fronts.rules.practice import NUMBER_NAMES, PLAIN, PRACTICE
from fronts.rules.standard_keys import Reveal, Sides, Standard
from tests.kitchen_files import FOLDER, changed, small, without


def opening_with(**keys: object) -> Opening:
    """The only opening of the small job with keys put in; None takes one out."""
    tree = small()
    around = tree["cabinets"][0]["openings"][0]
    around.update(keys)
    return read(json.dumps(tree)).cabinets[0].openings[0]


def test_the_whole_of_a_galley() -> None:
    """Every key of a full file arrives, in millimetres, under its own name."""
    kitchen = read((FOLDER / "boathouse-galley.job.json").read_text(encoding="utf-8"))
    job, door = kitchen.job, kitchen.doors_on_hand[0]
    pull_out, drawer = kitchen.cabinets[0].openings
    stack = kitchen.cabinets[1].openings[0]
    box = pull_out.fronts[0].box
    assert (job.number, job.client, job.fit_on) == (
        "BH-7",
        "Rosalind Achterberg",
        date(2027, 5, 18),
    )
    assert job.step == INCH / 16
    assert kitchen.standard == Standard(
        mount="overlay",
        overlay=Sides(INCH * 3 / 8, INCH * 3 / 8, INCH * 3 / 8, INCH / 4),
        gap_between=INCH / 8,
        front_thickness=INCH * 3 / 4,
    )
    assert door.knob_hole == KnobHole(INCH, INCH * 39 / 2, INCH / 4)
    assert door.hinge_bores[1] == Point(INCH * 105 / 8, INCH * 75 / 4)
    assert (door.build, door.stile, door.material) == ("five-piece", 2 * INCH, "cherry")
    assert pull_out.fronts[0].door_on_hand == "old sink door"
    assert box is not None
    assert (box.rise, box.side_clearance, box.slide) == (INCH * 5 / 8, INCH * 9 / 16, "bottom")
    assert (box.shelf_pins[0].count, box.shelf_pins[0].diameter) == (9, Mm(5))
    assert drawer.fronts[0].box is not None
    assert drawer.fronts[0].box.slide == "side"
    assert [front.own_height for front in stack.fronts] == [INCH * 11 / 2, None, None]
    assert [front.box is None for front in stack.fronts] == [False, True, True]
    assert kitchen.cabinets[1].standard == Standard(least_gap=INCH * 3 / 32, hinge_end=3 * INCH)
    assert kitchen.practice.lines_seen == INCH * 3 / 16
    assert kitchen.practice.humidity_high == 60
    assert kitchen.practice.humidity_low == PRACTICE.humidity_low


def test_the_whole_of_a_flat_in_millimetres() -> None:
    """Reveals, measured sizes, shifts and a niche arrive in a job in millimetres."""
    kitchen = read((FOLDER / "attic-flat.job.json").read_text(encoding="utf-8"))
    tall, base = kitchen.cabinets
    pair, fixed = base.openings
    ends = Sides(Mm(3, 2), Mm(3, 2), Mm(2), Mm(0))
    assert kitchen.standard.reveal == Reveal(Mm(3), ends)
    assert tall.x == -40
    assert (tall.openings[0].fronts[0].hinged, tall.openings[1].closed_by) == ("right", "open")
    assert pair.measured == Measured(
        Mm(1531, 2), Mm(764), diagonal_1=Mm(1851, 2), diagonal_2=Mm(924)
    )
    assert (fixed.fronts[0].width, fixed.fronts[0].thickness) == (Mm(790), Mm(22))
    assert fixed.fronts[0].shift_y == -2
    assert fixed.standard.mount == "inset"
    assert kitchen.stock.slide_lengths == ()
    assert kitchen.practice is PRACTICE


def test_what_is_left_out_takes_its_default() -> None:
    """A short file is filled as the contract's example says; the standard stays unsaid."""
    kitchen = read(json.dumps(small()))
    door = kitchen.doors_on_hand[0]
    stock = kitchen.stock
    assert kitchen.job.step == INCH / 16
    assert (kitchen.job.client, kitchen.job.fit_on) == ("", None)
    assert kitchen.standard.gap_between is None
    assert (door.thickness, door.build, door.bore_diameter) == (INCH * 3 / 4, "slab", Mm(35))
    assert stock.screw_lengths == (INCH * 3 / 4, INCH, INCH * 5 / 4, INCH * 3 / 2)
    assert stock.knob_screw_lengths == (INCH, INCH * 7 / 4)
    assert (stock.knob_thread, stock.knob_thread_depth) == ("8-32", INCH / 2)
    assert stock.slide_lengths == tuple(each * INCH for each in range(12, 25, 2))
    assert kitchen.practice is PRACTICE


def test_one_key_of_the_stock_leaves_the_others_as_they_are() -> None:
    """Stock falls back key by key."""
    stock = read(changed("stock", {"screw_lengths": ["1"]})).stock
    assert stock.screw_lengths == (INCH,)
    assert stock.slide_lengths[0] == 12 * INCH


def test_the_step_of_a_job_in_millimetres_is_half_of_one() -> None:
    """Each unit has a step of its own."""
    kitchen = read(json.dumps({"version": 1, "job": {"number": "1", "unit": "mm"}}))
    assert kitchen.job.step == Fraction(1, 2)
    assert kitchen.cabinets == ()


@pytest.mark.parametrize(
    ("said", "mm"),
    [
        ("23 5/8", Fraction(23 * 8 + 5, 8) * INCH),
        ("600 mm", Fraction(600)),
        ("1' 3\"", 15 * INCH),
        ("1/128", Fraction(254, 1280)),
        (15, 15 * INCH),
        (14.1, Fraction(141, 10) * INCH),
    ],
)
def test_lengths_as_people_say_them(said: object, mm: Fraction) -> None:
    """Text in any of the forms, or a JSON number, which is taken to the last digit."""
    text = changed("doors_on_hand.0.width", said)
    assert read(text).doors_on_hand[0].width == mm


def test_null_says_the_same_as_nothing() -> None:
    """An optional key may stand there empty."""
    opening = opening_with(front=None, box=None, standard=None, measured=None)
    assert opening == opening_with()


@pytest.mark.parametrize(
    ("said", "slide"),
    [("undermount", "under"), ("side-mount", "side"), ("bottom-mount", "bottom"), ("none", None),
     ("under", "under"), (None, None)],
)  # fmt: skip
def test_slides_by_either_word(said: str | None, slide: str | None) -> None:
    """A slide may be called by where it sits or by how it is mounted."""
    box = {"width": "14", "height": "20", "front_thickness": "3/4", "rise": "0", "slide": said}
    opening = opening_with(closed_by="pull-out", hinged=None, box=box)
    assert opening.fronts[0].box is not None
    assert opening.fronts[0].box.slide == slide


def test_a_door_is_hinged_left_unless_it_says_so() -> None:
    """A door without a hand gets one; nothing else has a hand."""
    assert [front.hinged for front in opening_with(hinged=None).fronts] == ["left"]
    for said in (None, "right"):
        pair = opening_with(closed_by="pair", hinged=said)
        assert [front.hinged for front in pair.fronts] == [None, None]


def test_measured_sizes_stand_in_for_the_nominal_ones() -> None:
    """Width and height may be left out where they were measured; the greater counts."""
    tree = small()
    around = tree["cabinets"][0]["openings"][0]
    del around["width"], around["height"]
    around["measured"] = {"width_top": "15", "width_bottom": "15 1/16", "height_left": "26"}
    opening = read(json.dumps(tree)).cabinets[0].openings[0]
    assert (opening.width, opening.height) == (INCH * 241 / 16, 26 * INCH)


def test_an_existing_front_needs_no_overlay() -> None:
    """Doors that are named and fronts with a size lie as they are; so does an open niche."""
    for keys in (
        {"front": {"door_on_hand": "D1"}},
        {"front": {"width": "16", "height": "27"}},
        {"closed_by": "open", "hinged": None},
        {"standard": {"mount": "inset"}},
    ):
        tree = small()
        del tree["standard"]
        tree["cabinets"][0]["openings"][0].update(keys)
        assert read(json.dumps(tree)).standard == Standard()


def test_a_cabinet_may_be_empty() -> None:
    """Openings come later; a cabinet without them is a cabinet."""
    assert read(without("cabinets.0.openings")).cabinets[0].openings == ()


def test_a_shop_with_tables_of_its_own() -> None:
    """Hinges by height and weight, slide classes and materials may be the shop's."""
    said = {
        "hinges_by_height": [{"up_to": "36", "hinges": 2}, {"up_to": "50", "hinges": 4}],
        "hinges_by_weight": [{"up_to_kg": "7.5", "hinges": 2}],
        "slide_classes": ["30", 45.5],
        "frame_material": "cherry",
    }
    practice = read(changed("practice", said)).practice
    assert practice.hinges_by_height == ((36 * INCH, 2), (50 * INCH, 4))
    assert practice.hinges_by_weight == ((Fraction(15, 2), 2),)
    assert practice.slide_classes == (Fraction(30), Fraction(91, 2))
    assert (practice.frame_material, practice.material) == ("cherry", PRACTICE.material)


def test_every_number_of_the_shop_is_known_as_a_length_or_as_none() -> None:
    """A number declared as a plain one has its range; all others are lengths."""
    source = ast.parse(inspect.getsource(practice_module))
    declared = {
        each.target.id
        for each in ast.walk(source)
        if isinstance(each, ast.AnnAssign)
        and isinstance(each.target, ast.Name)
        and isinstance(each.annotation, ast.Name)
        and each.annotation.id == "Fraction"
    }
    assert set(PLAIN) == declared & set(NUMBER_NAMES)


def test_a_byte_order_mark_is_no_fault() -> None:
    """Some editors put one in front of UTF-8."""
    assert read_bytes(b"\xef\xbb\xbf" + json.dumps(small()).encode()).kitchen.job.number == "T-1"


def test_a_door_may_be_named_twice() -> None:
    """That is for the schedule to find, with the names of both fronts."""
    tree = small()
    first = tree["cabinets"][0]["openings"][0]
    first["height"], first["front"] = "10", {"door_on_hand": "D1"}
    tree["cabinets"][0]["openings"].append(first | {"label": "b", "y": "13"})
    assert len(read(json.dumps(tree)).cabinets[0].openings) == 2


def test_a_row_of_pins_is_a_quarter_inch_wide_where_nobody_says() -> None:
    """As a shop drills them (common practice, no source)."""
    row = {"x": "2", "y": "3", "pitch": "1", "count": 5}
    box = {"width": "14", "height": "6", "front_thickness": "1/2", "rise": "0", "shelf_pins": [row]}
    (front,) = opening_with(closed_by="drawer", hinged=None, box=box).fronts

    assert front.box is not None
    assert front.box.shelf_pins[0].diameter == INCH / 4
