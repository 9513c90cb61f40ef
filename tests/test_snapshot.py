"""A kitchen into the database and out again is the same kitchen."""

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest
from django.conf import settings as site
from django.db import transaction
from hypothesis import HealthCheck, given, settings
from pytest_django import DjangoAssertNumQueries

from fronts.jobfile import read, write
from fronts.models.kept import kept_tables
from fronts.rules.box_facts import USUAL_BOXES, BoxesMadeOf
from fronts.rules.facts import rows_of
from fronts.rules.items import NO_ITEMS, HandleItem, Hardware, HingeItem, SlideItem
from fronts.rules.kitchen import Kitchen
from fronts.rules.practice import PRACTICE, inches
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from fronts.rules.standards import COMMON_STOCK
from fronts.services.boxes_made_of import boxes_made_of_clear, boxes_made_of_set
from fronts.services.hardware import hardware_clear, items_set
from fronts.services.imports import job_import
from fronts.services.standards import tables_set
from fronts.services.stock import practice_set
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Shop
from tests.factories import NOW, CabinetFactory
from tests.saying import standard_set, stock_set
from tests.strategies import kitchens
from tests.strategies_of_hardware import equipped_kitchens

ITEMS = len(rows_of(Hardware))
QUERIES = len(kept_tables()) - ITEMS + 6
"""One a table of things, and what holds for the whole job; where there is a list of hardware,
one more for each kind of item."""
DEMO = Path(site.BASE_DIR) / "fixtures" / "demo.job.json"


@settings(
    deadline=None,
    max_examples=60,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(kitchens() | equipped_kitchens())
def test_any_kitchen_comes_back_as_it_went_in(shop: Shop, kitchen: Kitchen) -> None:
    """From a file into the database and back, nothing is lost, rounded or filled in."""
    with transaction.atomic():
        job = job_import(kitchen=kitchen, shop=shop, at=NOW)
        found = kitchen_of(Job.objects.get(pk=job.pk))
        transaction.set_rollback(True)

    assert kitchen == found


def test_the_demo_kitchen_comes_back_in_the_same_words(shop: Shop) -> None:
    """Export after import is the file that the same kitchen writes."""
    kitchen = read(DEMO.read_text(encoding="utf-8"))
    job = job_import(kitchen=kitchen, shop=shop, at=NOW)

    assert write(kitchen) == write(kitchen_of(job))


def test_a_kitchen_takes_few_queries_whatever_its_size(
    shop: Shop, job: Job, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    """As many for one cabinet as for sixty."""
    CabinetFactory.create(job=job)
    with django_assert_num_queries(QUERIES):
        kitchen_of(job)

    bare = replace(read(DEMO.read_text(encoding="utf-8")), hardware=NO_ITEMS)
    large = job_import(kitchen=thrice(bare), shop=shop, at=NOW)
    with django_assert_num_queries(QUERIES):
        kitchen_of(large)

    items_set(owner=shop, kind=HandleItem, items=[HandleItem(f"K{n}") for n in range(50)], at=NOW)
    with django_assert_num_queries(QUERIES + ITEMS):
        assert len(kitchen_of(job).hardware.handles) == 50


def thrice(kitchen: Kitchen) -> Kitchen:
    """The kitchen with two copies of each cabinet."""
    copies = [
        replace(each, label=f"{each.label}{mark}", wall=f"{each.wall}{mark}")
        for mark in ("", "x", "y")
        for each in kitchen.cabinets
    ]
    return replace(kitchen, cabinets=tuple(copies))


def test_the_shop_holds_where_the_job_says_nothing(shop: Shop, job: Job) -> None:
    """The job's level lies over the shop's, key by key."""
    standard_set(owner=shop, at=NOW, gap_between=inches(1, 4), skin=inches(1, 16))
    standard_set(owner=job, at=NOW, skin=inches(3, 16))
    said = kitchen_of(job).standard

    assert (inches(1, 4), inches(3, 16)) == (said.gap_between, said.skin)


def test_a_reveal_on_the_job_replaces_the_overlay_of_the_shop(shop: Shop, job: Job) -> None:
    """A level that gives one of the two replaces both of a farther level."""
    half, eighth = inches(1, 2), inches(1, 8)
    standard_set(
        owner=shop,
        at=NOW,
        overlay_left=half,
        overlay_right=half,
        overlay_top=half,
        overlay_bottom=half,
    )
    assert Sides(half, half, half, half) == kitchen_of(job).standard.overlay

    standard_set(
        owner=job,
        at=NOW,
        reveal_between=eighth,
        reveal_left=eighth,
        reveal_right=eighth,
        reveal_top=eighth,
        reveal_bottom=eighth,
    )
    said = kitchen_of(job).standard

    assert said.overlay is None
    assert said.reveal is not None
    assert eighth == said.reveal.between


def test_a_new_shop_has_what_is_commonly_kept(job: Job) -> None:
    """The same stock and numbers as a file that says nothing of them."""
    kitchen = kitchen_of(job)

    assert (COMMON_STOCK, PRACTICE, Standard()) == (
        kitchen.stock,
        kitchen.practice,
        kitchen.standard,
    )


def test_the_jobs_own_stock_replaces_the_shops_whole(shop: Shop, job: Job) -> None:
    """Numbers and tables fall through one by one, a stock does not."""
    stock_set(owner=shop, at=NOW, screw_lengths=[inches(1)], slide_lengths=[inches(20)])
    stock_set(owner=job, at=NOW, screw_lengths=[inches(2)], slide_lengths=[])
    stock = kitchen_of(job).stock

    assert ((inches(2),), ()) == (stock.screw_lengths, stock.slide_lengths)


def test_the_jobs_own_list_of_hardware_replaces_the_shops_whole(shop: Shop, job: Job) -> None:
    """Each kind of it, also one of which the job's list has nothing."""
    slide = SlideItem("S-1", "side", (inches(12), inches(14)), Fraction(45))
    hinges = [HingeItem("H-2", "inset", gaps=(inches(3, 32),)), HingeItem("H-1", "overlay")]
    hinges[1] = replace(hinges[1], overlays=(inches(1, 2),))
    items_set(owner=shop, kind=SlideItem, items=[slide], at=NOW)
    items_set(owner=shop, kind=HingeItem, items=hinges, at=NOW)
    assert kitchen_of(job).hardware == Hardware(hinges=tuple(hinges), slides=(slide,))

    pull = HandleItem("P-1", centres=inches(3))
    items_set(owner=job, kind=HandleItem, items=[pull], at=NOW)

    assert kitchen_of(job).hardware == Hardware(handles=(pull,))
    hardware_clear(job=job, at=NOW)
    assert kitchen_of(job).hardware == Hardware(hinges=tuple(hinges), slides=(slide,))


def test_how_boxes_are_made_is_the_jobs_or_else_the_shops(shop: Shop, job: Job) -> None:
    """Whole, as the stock is."""
    assert kitchen_of(job).boxes_made_of == USUAL_BOXES
    ours = BoxesMadeOf(side=inches(5, 8), joint="dado", heights=(inches(3), inches(4)))
    boxes_made_of_set(owner=shop, boxes=ours, at=NOW)
    assert kitchen_of(job).boxes_made_of == ours

    boxes_made_of_set(owner=job, boxes=BoxesMadeOf(bottom=inches(3, 8)), at=NOW)

    assert kitchen_of(job).boxes_made_of == BoxesMadeOf(bottom=inches(3, 8))
    boxes_made_of_clear(job=job, at=NOW)
    assert kitchen_of(job).boxes_made_of == ours


def test_the_shops_numbers_and_tables_are_in_force(shop: Shop, job: Job) -> None:
    """A job's own number comes before the shop's."""
    practice_set(owner=shop, at=NOW, values={"spares": Fraction(10), "stile": inches(3)})
    practice_set(owner=job, at=NOW, values={"spares": Fraction(15, 2)})
    tables_set(
        owner=shop,
        at=NOW,
        hinges_by_height=[(inches(48), 2), (inches(96), 4)],
        hinges_by_weight=None,
        slide_classes=[Fraction(30)],
        material="birch plywood",
        frame_material="",
    )
    found = kitchen_of(job).practice

    assert (Fraction(15, 2), inches(3)) == (found.spares, found.stile)
    assert ((inches(48), 2), (inches(96), 4)) == found.hinges_by_height
    assert PRACTICE.hinges_by_weight == found.hinges_by_weight
    assert ((Fraction(30),), "birch plywood") == (found.slide_classes, found.material)
    assert PRACTICE.frame_material == found.frame_material


def test_the_order_is_the_one_that_people_gave(job: Job) -> None:
    """Not that of the labels, nor of the places on the wall."""
    for label, x in (("B2", 50), ("B1", 0), ("A9", 100)):
        CabinetFactory.create(job=job, label=label, x=inches(x))

    assert [each.label for each in kitchen_of(job).cabinets] == ["B2", "B1", "A9"]


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_the_job_itself_is_part_of_it(job: Job, unit: str) -> None:
    """Number, client, site, unit and step."""
    job.unit = unit
    job.save()
    facts = kitchen_of(job).job

    assert ("K-1", "Lindqvist", "12 Hill Road", unit, inches(1, 16)) == (
        facts.number,
        facts.client,
        facts.site,
        facts.unit,
        facts.step,
    )


def test_a_job_without_a_kitchen_has_an_empty_schedule(job: Job) -> None:
    """A new job can be looked at."""
    assert schedule(kitchen_of(job)).fronts == ()
