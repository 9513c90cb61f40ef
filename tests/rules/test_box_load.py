"""What slides must carry. Source: ANSI/KCMA A161.1-2012, drawer operation, 15 lb/ft²."""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.rules.box_load import box_load
from fronts.rules.box_stock import MATERIAL
from fronts.rules.materials import density_of
from fronts.rules.practice import POUND, PRACTICE
from fronts.rules.schedule import schedule
from tests.rules.finding_cases import boxed
from tests.rules.finding_cases_boxes import SIDE, to_make, with_slides
from tests.rules.made_boxes import parts_of_box
from tests.rules.small_kitchens import BOX, codes_of, inch, only_front

SQUARE_FOOT = inch("12") ** 2
GRAVITY = 9.80665
"""m/s² (standard gravity, 3rd General Conference on Weights and Measures, 1901)."""


def test_load_of_a_square_foot_of_drawer() -> None:
    """15 lb/ft², which the standard gives as 718 Pa too."""
    load = box_load(inch("12"), inch("12"), 0, None, Fraction(0), PRACTICE)

    assert load.load_kg == 15 * POUND
    assert load.needed_kg == 15 * POUND * Fraction(5, 4)
    assert float(load.load_kg) * GRAVITY / (SQUARE_FOOT / 10**6) == pytest.approx(718, abs=0.5)


@pytest.mark.parametrize(
    ("shelves", "stated", "pounds"), [(0, None, 15), (4, None, 75), (4, 20, 20)],
    ids=["its floor", "five tiers", "somebody said so"],
)  # fmt: skip
def test_tiers(shelves: int, stated: int | None, pounds: int) -> None:
    """The floor and each shelf above it bear as much, unless a load is stated."""
    said = None if stated is None else stated * POUND

    load = box_load(inch("12"), inch("12"), shelves, said, Fraction(0), PRACTICE)

    assert load.load_kg == pounds * POUND


def test_box_and_front_are_carried_too() -> None:
    """A margin of 1.25 over load, box and front (common practice, no source)."""
    load = box_load(inch("12"), inch("12"), 0, None, 5 * POUND, PRACTICE)

    assert load.needed_kg == 25 * POUND
    assert load.load_kg == 15 * POUND


def test_a_found_box_is_reckoned_likewise() -> None:
    """14 × 21 in at 15 lb/ft² is 30.6 lb; unknown, it is as deep as its cabinet."""
    (known,) = schedule(boxed()).boxes
    (unknown,) = schedule(boxed(depth=None)).boxes

    assert known.load_kg == inch("14") * inch("21") / SQUARE_FOOT * 15 * POUND
    assert unknown.load_kg == inch("14") * inch("24") / SQUARE_FOOT * 15 * POUND
    assert not known.made


def test_each_tier_weighs_on_the_class() -> None:
    """Two of them want 150 lb where one wants 75, and five more than there is."""
    one, two, five = (schedule(boxed(shelves=shelves)).boxes[0] for shelves in (0, 1, 4))

    assert two.load_kg == 2 * one.load_kg
    assert (one.class_kg, two.class_kg, five.class_kg) == (75 * POUND, 150 * POUND, None)


@pytest.mark.parametrize(("short", "serves"), [(0, True), (1, False)])
def test_a_class_may_be_just_enough(short: int, serves: bool) -> None:
    """Exactly 1.25 × load, box and front, for a box to be made and for a found one like it."""
    plain = to_make("side", load_kg=20 * POUND)
    (box,) = schedule(plain).boxes
    volumes = [
        part.length * part.width * part.thickness * part.count
        for part in parts_of_box(plain).values()
    ]
    wood = sum(volumes, Fraction(0)) * density_of(MATERIAL, MATERIAL) / 10**9
    needed = (box.load_kg + wood + only_front(plain).weight_kg) * Fraction(5, 4)
    slide = replace(SIDE, load_kg=needed - Fraction(short, 10**9))
    found = boxed(
        slide="side", width=box.width, height=box.height, depth=box.depth, rise=box.rise,
        front_thickness=box.side_thickness, load_kg=box.load_kg,
    )  # fmt: skip

    for of in (plain, found):
        assert ("no-slide-fits" not in codes_of(with_slides(of, slide))) is serves


def test_the_margin_is_the_shops() -> None:
    """A shop that wants half as much again."""
    half = replace(PRACTICE, load_margin=Fraction(150))

    load = box_load(BOX.width, inch("21"), 0, 10 * POUND, Fraction(0), half)

    assert load.needed_kg == 15 * POUND
