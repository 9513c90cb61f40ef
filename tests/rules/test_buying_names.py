"""What things are bought as."""

from dataclasses import replace

import pytest

from fronts.jobfile import read
from fronts.rules.bought_results import BoughtFront
from fronts.rules.buying_names import (
    group_of,
    items_by_name,
    name_of_bought,
    name_of_need,
    renamed,
    slide_length,
    stock_name,
)
from fronts.rules.items import (
    BandItem,
    HandleItem,
    Hardware,
    HingeItem,
    LiftItem,
    SlideItem,
)
from fronts.rules.kinds import Unit
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches
from fronts.rules.results import Need
from fronts.rules.schedule import schedule
from tests.kitchen_files import SAMPLES
from tests.rules.small_kitchens import BOX, cabinet, kitchen, opening


def need(item: str, **facts: str) -> Need:
    """One of something."""
    return Need(item, 1, ("B1.a",), "why", {"B1.a": 1}, 0, **facts)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("line", "name"),
    [
        (need("hinge H-1, Clip hinge", code="H-1", kind="hinge"), "hinge H-1"),
        (need("hinge plate 3 mm for H-1"), "hinge plate 3 mm for H-1"),
        (need("S-1 Side slide, 22 in, 99 lb", code="S-1", length="22 in"), "slide S-1, 22 in"),
        (need("K-1 Turned knob", code="K-1", kind="knob or pull"), "knob or pull K-1"),
        (need("L-4 Stay", code="L-4", kind="lift"), "lift L-4"),
        (need("edge band E-1, walnut", code="E-1", kind="edge band"), "edge band E-1"),
        (need("8-32 × 1 machine screw"), "8-32 × 1 machine screw"),
        (need("glass 7 × 24, 1/8", kind="glass"), "glass 7 × 24, 1/8"),
        (need("bumper"), "bumper"),
    ],
)
def test_an_item_goes_by_its_code_and_all_else_by_its_words(line: Need, name: str) -> None:
    """So that an item that is called otherwise keeps its offers."""
    assert name_of_need(line) == name


def test_items_of_a_list_are_bought_as_orders_call_them() -> None:
    """A hinge with its plates, a slide in each length."""
    hardware = Hardware(
        hinges=(HingeItem("H-1", "overlay", "clip hinge", plates=(Mm(0), Mm(3))),),
        slides=(SlideItem("S-1", "side", (inches(18), inches(22)), Mm(40), "side slide"),),
        handles=(HandleItem("K-1"),),
        lifts=(LiftItem("L-4", Mm(1), Mm(9)),),
        bands=(BandItem("E-1", Mm(1)),),
    )

    assert items_by_name(hardware) == {
        "hinge H-1": "clip hinge",
        "hinge plate 0 mm for H-1": "",
        "hinge plate 3 mm for H-1": "",
        "slide S-1, 18 in": "side slide",
        "slide S-1, 22 in": "side slide",
        "knob or pull K-1": "",
        "lift L-4": "",
        "edge band E-1": "",
    }


@pytest.mark.parametrize(
    ("length", "said"),
    [
        (inches(18), "18 in"),
        (inches(33, 2), "16 1/2 in"),
        (Mm(450), "450 mm"),
        (Mm("457.2"), "18 in"),
        (Mm(457), "457 mm"),
        (Mm(508), "20 in"),
    ],
)
def test_a_slides_length_is_named_as_it_is_made(length: Mm, said: str) -> None:
    """In inches or millimetres, whatever a job is in."""
    assert slide_length(length) == said


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_one_slide_is_bought_under_one_name_whatever_the_jobs_unit(unit: Unit) -> None:
    """As it stands on the shop's list."""
    slides = (SlideItem("S-1", "side", (inches(18), Mm(450)), Mm(40)),)
    drawer = opening("drawer", boxes=(replace(BOX, height=inches(6), slide="side"),))
    of = kitchen(cabinet(drawer), hardware=Hardware(slides=slides))
    of = replace(of, job=replace(of.job, unit=unit))

    (slide,) = [line for line in schedule(of).hardware if line.code == "S-1"]

    assert name_of_need(slide) == "slide S-1, 18 in"
    assert {"slide S-1, 18 in", "slide S-1, 450 mm"} == set(items_by_name(of.hardware))


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.name)
def test_what_a_kitchen_needs_of_its_list_is_named_as_the_list_is(sample: object) -> None:
    """A need that has an item's code is bought under one of that item's names."""
    kitchen = read(sample.read_text(encoding="utf-8"))  # type: ignore[attr-defined]
    listed = items_by_name(kitchen.hardware)
    codes = {
        item.code
        for items in (kitchen.hardware.hinges, kitchen.hardware.handles, kitchen.hardware.slides)
        for item in items
    }
    named = [name_of_need(line) for line in schedule(kitchen).hardware if line.code in codes]

    assert set(named) <= set(listed)


def test_stock_and_bought_fronts_have_names_too() -> None:
    """A sheet by its material and size, a stick by its width, a front by what is priced."""
    sheet = ("MDF", inches(3, 4), inches(96), inches(48))
    stick = ("hard maple", Mm(19), Mm(2440), Mm(57))
    front = BoughtFront("door", Mm(400), Mm(700), Mm(19), "slab", style="flat", finish="satin")

    assert stock_name(*sheet, is_stick=False) == "sheet MDF 3/4 in, 96 × 48 in"
    assert stock_name(*stick, is_stick=True) == "stick hard maple 19 mm, 2440 × 57 mm"
    plywood = ("birch", inches(23, 32), inches(96), inches(48))
    assert stock_name(*plywood, is_stick=False) == "sheet birch 23/32 in, 96 × 48 in"
    metric = ("MDF", inches(3, 4), Mm(2440), Mm(1220))
    assert stock_name(*metric, is_stick=False) == "sheet MDF 19.05 mm, 2440 × 1220 mm"
    assert name_of_bought(front) == "bought door, flat, satin"
    wood = replace(front, material="hard maple", species="hard maple, select")
    assert name_of_bought(wood) == "bought door, flat, hard maple, select, satin"
    other = replace(front, material="poplar", species="hard maple")
    assert name_of_bought(other) == "bought door, flat, poplar, hard maple, satin"


@pytest.mark.parametrize(
    ("name", "kind", "now"),
    [
        ("hinge H-1", HingeItem, "hinge N"),
        ("hinge plate 3 mm for H-1", HingeItem, "hinge plate 3 mm for N"),
        ("hinge H-10", HingeItem, None),
        ("hinge plate 3 mm for H-10", HingeItem, None),
        ("slide H-1, 22 in", HingeItem, None),
        ("slide H-1, 22 in", SlideItem, "slide N, 22 in"),
        ("knob or pull H-1", HandleItem, "knob or pull N"),
        ("lift H-1", LiftItem, "lift N"),
        ("edge band H-1", BandItem, "edge band N"),
        ("bumper", HandleItem, None),
    ],
)
def test_a_name_follows_the_code(name: str, kind: type, now: str | None) -> None:
    """Of the item alone, with all that goes with it."""
    assert renamed(name, kind, "H-1", "N") == now


@pytest.mark.parametrize(
    ("name", "group"),
    [
        ("hinge H-1", "Hinges"),
        ("hinge plate 3 mm for H-1", "Hinges"),
        ("hinge screw", "Screws"),
        ("#8 washer-head screw, 1 1/4 in", "Screws"),
        ("slide S-1, 22 in", "Slides"),
        ("slide screw", "Screws"),
        ("knob or pull", "Knobs and pulls"),
        ("flap stay", "Lifts, stays and tip-outs"),
        ("tip-out tray, at most 31 in long", "Lifts, stays and tip-outs"),
        ("edge band E-1", "Edge bands"),
        ("glass stop", "Glass"),
        ("sheet MDF 3/4 in, 96 × 48 in", "Sheets and sticks"),
        ("bought door, flat", "Bought fronts"),
        ("bumper", "Other"),
        ("", "Other"),
    ],
)
def test_every_name_has_its_group(name: str, group: str) -> None:
    """Whatever it is."""
    assert group_of(name) == group
