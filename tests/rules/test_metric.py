"""What a metric shop starts from: round figures, each common practice without a source."""

from dataclasses import replace
from fractions import Fraction
from typing import Any

import pytest

from fronts.rules.fact_kinds import EachSide, Length
from fronts.rules.facts import facts_of
from fronts.rules.lengths import INCH, Mm
from fronts.rules.metric import (
    METRIC_HINGES_BY_HEIGHT,
    METRIC_HINGES_BY_WEIGHT,
    METRIC_NUMBERS,
    METRIC_SLIDE_CLASSES,
    METRIC_STANDARD,
    METRIC_STOCK,
)
from fronts.rules.practice import NUMBERS, PLAIN, POSITIVE, PRACTICE
from fronts.rules.schedule import schedule
from fronts.rules.screws import thread_diameter
from fronts.rules.standard_keys import Sides, Standard
from fronts.rules.usual_hardware import usual_hardware
from fronts.rules.validity import standard_faults, stock_faults
from tests.rules.small_kitchens import BOX, cabinet, kitchen, opening

HALF = Fraction(1, 2)


@pytest.mark.parametrize("name", [number.name for number in NUMBERS if number.name not in PLAIN])
def test_no_length_is_a_converted_inch(name: str) -> None:
    """Whole or half millimetres, within two fifths of what an inch shop has."""
    metric, usual = METRIC_NUMBERS.get(name, getattr(PRACTICE, name)), getattr(PRACTICE, name)

    assert metric % HALF == 0
    assert name not in POSITIVE or metric > 0
    assert abs(metric - usual) <= usual * Fraction(2, 5)


def test_every_metric_number_is_one_of_the_shop_s() -> None:
    """No name that nothing asks for."""
    assert METRIC_NUMBERS.keys() <= {number.name for number in NUMBERS}


def test_the_metric_standard_says_all_that_has_a_usual_length() -> None:
    """But for what is nothing everywhere: bands are no lengths, nothing is milled off."""
    silent = {
        fact.name
        for fact in facts_of(Standard)
        if isinstance(fact.declared, Length | EachSide)
        and fact.declared.usual
        and not isinstance(fact.declared.usual, str)
        and getattr(METRIC_STANDARD, fact.name) is None
    }

    assert silent == set()
    assert standard_faults(METRIC_STANDARD) == {}


def test_the_metric_stock_is_sound() -> None:
    """Screws of 4 mm through knobs of M4 (ISO 261)."""
    assert stock_faults(METRIC_STOCK) == {}
    assert thread_diameter(METRIC_STOCK.knob_thread) == METRIC_NUMBERS["screw_diameter"]


def test_reach_is_the_published_one() -> None:
    """Source: 2010 ADA Standards, 308: 48 in, which they give as 1220 mm."""
    assert METRIC_NUMBERS["easy_reach"] == Mm(1220)


def test_a_knob_s_hole_clears_its_screw() -> None:
    """Sources: ISO 273, M4: 4.5 mm, medium; #8 in published drill tables: 0.180 in, close."""
    assert METRIC_NUMBERS["knob_hole"] >= Mm("4.5")
    assert PRACTICE.knob_hole >= Fraction("0.180") * INCH


def test_tables_are_no_less_careful_than_an_inch_shop_s() -> None:
    """No door may be higher, or heavier, on as many hinges; no class carries more."""
    for metric, usual in (
        (METRIC_HINGES_BY_HEIGHT, PRACTICE.hinges_by_height),
        (METRIC_HINGES_BY_WEIGHT, PRACTICE.hinges_by_weight),
    ):
        for (most, count), (usual_most, usual_count) in zip(metric, usual, strict=True):
            assert count == usual_count
            assert usual_most * Fraction(4, 5) < most <= usual_most
    for load, usual_load in zip(METRIC_SLIDE_CLASSES, PRACTICE.slide_classes, strict=True):
        assert usual_load * Fraction(4, 5) < load <= usual_load


def test_a_metric_pull_out_is_hung_with_metric_numbers() -> None:
    """A box 400 × 600 mm, 12 mm in at each side: holes of 6, ledges of 6 × 60, M4 through 19."""
    lap = Sides(*[Mm(12)] * 4)
    box = replace(
        BOX, width=Mm(400), height=Mm(600), depth=Mm(500), front_thickness=Mm(16), rise=Mm(12)
    )
    of = opening(
        "pull-out", x=Mm(40), y=Mm(40), width=Mm(424), height=Mm(640), boxes=(box,)
    )  # fmt: skip
    numbers: dict[str, Any] = dict(METRIC_NUMBERS)
    metric = cabinet(of, width=Mm(504), height=Mm(720), depth=Mm(560))
    found = schedule(
        kitchen(
            metric,
            standard=replace(METRIC_STANDARD, overlay=lap),
            stock=METRIC_STOCK,
            practice=replace(PRACTICE, **numbers),
            unit="mm",
            step=Mm(1),
        )
    )
    (fitting,) = found.fittings

    assert fitting.jig_thickness == Mm(24)
    assert fitting.ledges is not None
    assert (fitting.ledges.thickness, fitting.ledges.length) == (Mm(6), Mm(60))
    assert {hole.diameter for hole in fitting.holes} == {Mm(6)}
    assert fitting.screw is not None
    assert fitting.screw.length == Mm(30)
    assert fitting.play == Mm(1)
    assert "M4 washer-head screw, 30 mm" in {need.item for need in found.hardware}


def test_a_plain_knob_stands_out_in_whole_millimetres() -> None:
    """Where a metric shop has entered no knobs: 25 mm, not an inch (common practice, no source)."""
    numbers: dict[str, Any] = dict(METRIC_NUMBERS)
    metric = kitchen(stock=METRIC_STOCK, practice=replace(PRACTICE, **numbers), unit="mm")
    (knob,) = usual_hardware(metric).handles

    assert (knob.projection, knob.thread) == (Mm(25), "M4")
