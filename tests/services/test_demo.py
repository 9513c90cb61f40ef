"""The demo shop's kitchens."""

from dataclasses import replace
from typing import Any

from fronts.models import JobStandard, Stock, StockEntry
from fronts.rules.buying_names import name_of_need
from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.kitchen import CHOOSE
from fronts.rules.lengths import Mm
from fronts.rules.metric import (
    METRIC_HINGES_BY_HEIGHT,
    METRIC_HINGES_BY_WEIGHT,
    METRIC_NUMBERS,
    METRIC_SLIDE_CLASSES,
    METRIC_STANDARD,
    METRIC_STOCK,
)
from fronts.rules.offcuts import fitting
from fronts.rules.practice import PRACTICE, inches
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides
from fronts.selectors.offcuts import offcuts_for
from fronts.services.demo import demo_kitchen, load_demo
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Shop
from tests import kitchen_files
from tests.factories import NOW
from tests.kitchen_files import metric_kitchen


def test_it_is_a_whole_kitchen(db: None) -> None:
    """Every build, mount and way of closing that the shop does; one leaning opening."""
    job = load_demo()
    assert job is not None
    kitchen = kitchen_of(job)
    openings = [each for cabinet in kitchen.cabinets for each in cabinet.openings]
    fronts = schedule(kitchen).fronts

    assert len(kitchen.cabinets) >= 14
    assert len(fronts) >= 30
    assert len({cabinet.wall for cabinet in kitchen.cabinets}) >= 2
    assert {cabinet.build for cabinet in kitchen.cabinets} == {"face-frame", "frameless"}
    assert {front.plane for front in fronts} == {"overlay", "inset"}
    assert {each.closed_by for each in openings} == {
        "door", "pair", "drawer", "drawers", "pull-out", "fixed", "open", "lift-up", "tip-out",
        "appliance-panel",
    }  # fmt: skip
    assert [each.label for each in openings if each.measured.diagonal_1] == ["a"]
    doors = {front.door_on_hand for opening in openings for front in opening.fronts}
    assert CHOOSE in doors
    assert doors & {"D1", "D4"}


def test_it_shows_what_the_shop_can_have_made_and_bought(db: None) -> None:
    """Boxes for two kinds of slide, glass, a pull, bands, one grain over a run, a door maker."""
    job = load_demo()
    assert job is not None
    kitchen = kitchen_of(job)
    shown = schedule(kitchen)
    kinds = {slide.code: slide.kind for slide in kitchen.hardware.slides}

    assert {kinds[box.slide] for box in shown.boxes if box.made and box.slide} == {"side", "under"}
    assert {handle.screws for front in shown.fronts for handle in front.handles} == {1, 2}
    assert {"lift", "glass", "edge band"} <= {need.kind for need in shown.hardware}
    (grain_set,) = shown.grain_sets
    assert len({shown.front(label).cabinet for label in grain_set.fronts}) > 1
    assert {shown.front(label).cabinet for line in shown.bought for label in line.labels} == {
        "P2", "P3",
    }  # fmt: skip
    assert all(line.front.finish for line in shown.bought)
    assert any(line.front.panel_profile for line in shown.bought)


def test_its_only_stop_is_the_leaning_opening(db: None) -> None:
    """So that the pages show what a finding looks like, and mostly none."""
    job = load_demo()
    assert job is not None
    findings = schedule(kitchen_of(job)).findings

    assert [(each.code, each.where) for each in findings if each.level == "stop"] == [
        ("opening-out-of-square", ("P2.a",))
    ]
    assert len([each for each in findings if each.level == "check"]) <= 2


def test_it_follows_the_shops_standard(db: None) -> None:
    """The job says nothing itself: pages show what is inherited as inherited."""
    job = load_demo()
    assert job is not None

    half = inches(1, 2)
    assert kitchen_of(job).standard.overlay == Sides(half, half, half, half)
    assert not JobStandard.objects.filter(job=job).exists()
    assert not Stock.objects.filter(job=job).exists()


def test_its_shelf_and_rack_hold_what_it_can_use(db: None) -> None:
    """A few goods, each with its reason; a piece of a sheet and one of a stick for its plan."""
    job = load_demo()
    assert job is not None
    found = schedule(kitchen_of(job))
    needed = {name_of_need(need) for need in found.hardware}
    groups = cutting_groups(found.parts)
    counted = StockEntry.objects.filter(shop=job.shop).select_related("goods")

    assert {each.goods.name for each in counted} <= needed
    assert len(counted) >= 4
    assert all(each.reason and each.amount > 0 and each.job is None for each in counted)
    for offcut in offcuts_for(job):
        assert any(fitting([offcut], group) for group in groups), offcut.label
    assert {offcut.facts.is_stick for offcut in offcuts_for(job)} == {True, False}


def test_it_is_loaded_once(db: None) -> None:
    """What people did to it since then stays done."""
    load_demo()
    Job.objects.all().delete()

    assert load_demo() is None
    assert not Job.objects.exists()


def test_it_is_the_files_kitchen(shop: Shop) -> None:
    """Which level says a thing makes no difference to the kitchen."""
    kitchen = kitchen_files.demo_kitchen()
    job = demo_kitchen(kitchen=kitchen, shop=shop, at=NOW)
    assert job is not None

    assert kitchen_of(job) == kitchen


# The metric kitchen beside it.


def test_a_metric_kitchen_lies_beside_it(db: None) -> None:
    """It keeps its unit and numbers in a shop that works in inches, and changes none there."""
    first = load_demo()
    metric = metric_kitchen()
    job = Job.objects.get(number=metric.job.number)

    assert first is not None
    assert (first.unit, job.unit, first.shop) == ("in", "mm", job.shop)
    assert kitchen_of(job) == metric
    assert kitchen_of(first).practice == PRACTICE


def test_a_metric_kitchen_works_with_metric_numbers() -> None:
    """Those that a shop in millimetres starts from, all of them."""
    metric = metric_kitchen()
    numbers: dict[str, Any] = dict(METRIC_NUMBERS)
    tables: dict[str, Any] = {
        "hinges_by_height": METRIC_HINGES_BY_HEIGHT,
        "hinges_by_weight": METRIC_HINGES_BY_WEIGHT,
        "slide_classes": METRIC_SLIDE_CLASSES,
    }

    assert metric.practice == replace(PRACTICE, **numbers, **tables)
    assert metric.stock == METRIC_STOCK
    assert replace(metric.standard, mount=None, reveal=None) == METRIC_STANDARD


def test_a_metric_kitchen_shows_what_its_hardware_does() -> None:
    """Plates at two heights, boxes made for two kinds of slide, glass, a lift, pulls and knobs."""
    metric = metric_kitchen()
    found = schedule(metric)
    closings = {hole.closed_by for cabinet in metric.cabinets for hole in cabinet.openings}

    assert {front.hinge.plate for front in found.fronts if front.hinge} == {Mm(0), Mm(9)}
    assert {box.made for box in found.boxes} == {True}
    assert {box.slide for box in found.boxes} == {"U-50", "S-45"}
    assert {"lift", "glass"} <= {need.kind for need in found.hardware}
    assert {handle.screws for front in found.fronts for handle in front.handles} == {1, 2}
    assert closings == {"door", "pair", "drawers", "pull-out", "fixed", "lift-up"}
    assert {thing.kind for thing in metric.others} == {"appliance", "gap"}
    assert metric.walls[0].right is not None


def test_a_metric_kitchen_can_be_cut() -> None:
    """A high box wants a guide, and somebody must look whether a lift-up has room."""
    found = schedule(metric_kitchen()).findings

    assert {(finding.level, finding.code) for finding in found} == {
        ("note", "box-wants-guide"),
        ("note", "room-above"),
    }
