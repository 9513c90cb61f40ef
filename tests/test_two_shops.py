"""What one shop sets is never another's: not on its pages, in its saving, imports, schedules."""

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from difflib import unified_diff
from fractions import Fraction
from pathlib import Path

import pytest
from django.test import Client
from django.urls import URLPattern, URLResolver, reverse

from fronts import urls
from fronts.jobfile import read
from fronts.models import DoorOnHand, Goods, Opening, ShopNumber, Snag
from fronts.pages.standard.forms.short_pages import SHORT_PAGES
from fronts.rules.kitchen import Kitchen
from fronts.rules.practice import PRACTICE
from fronts.rules.schedule import schedule
from fronts.rules.snags import SnagFacts
from fronts.rules.standards import COMMON_STOCK
from fronts.services.imports import job_import
from fronts.services.snags import snag_raise
from fronts.services.standards import tables_set
from fronts.services.stock import practice_set
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import NOW, CabinetFactory, JobFactory, PersonFactory, ShopFactory
from tests.frozen_sheets import frozen_code
from tests.kitchen_files import SAMPLES
from tests.own_ways import own_boxes, own_hardware, own_numbers, own_ways
from tests.pages.kitchens import furnish
from tests.saying import standard_set, stock_set
from tests.stocked import counted, moved

SignIn = Callable[[Person], Client]
OURS, THEIRS = Fraction(9, 10), Fraction(3, 5)
PRINTED = ("job-sheet", "cabinet-sheet")
TOKEN = re.compile(r'(?i)(?<=csrf).{0,40}?[A-Za-z0-9]{64}|(?<=name="form_key" value=")[^"]+')


@pytest.fixture
def their_shop(db: None) -> Shop:
    """Another shop, there before ours."""
    return ShopFactory.create(name="Birch Lane Joiners")


@pytest.fixture(params=["silent", "own"])
def our_shop(request: pytest.FixtureRequest, their_shop: Shop, shop: Shop) -> Shop:
    """Our shop, which says nothing itself, or everything."""
    if request.param == "own":
        own_ways(shop, OURS)
    return shop


@pytest.fixture
def our_job(our_shop: Shop, job: Job) -> Job:
    """A kitchen of ours, with a snag, and something in stock for it."""
    furnish(job)
    facts = SnagFacts("job", "paint on the floor")
    by = PersonFactory.create(shop=our_shop)
    snag_raise(job=job, facts=facts, by=by, at=NOW)
    moved(counted(our_shop, by, 40), job, by, 3)
    return job


def ways_of(shop: Shop) -> Kitchen:
    """All that a job without a word of its own takes from the shop."""
    return kitchen_of(JobFactory.create(shop=shop))


def addresses(patterns: list[URLPattern | URLResolver]) -> Iterator[URLPattern]:
    """Every address below `fronts` but the printed sheets, which only show the schedule.

    A spreadsheet file holds what its list has as CSV.
    """
    for pattern in patterns:
        if isinstance(pattern, URLResolver):
            yield from addresses(pattern.url_patterns)
        elif pattern.name not in PRINTED and not str(pattern.name).endswith("-xlsx"):
            yield pattern


def pages_of(job: Job, client: Client) -> dict[str, str]:
    """What stands on every page of the job and of its shop, without what is new each time."""
    drawer = Opening.objects.get(cabinet__job=job, closed_by="drawer")
    known = {
        "job_id": job.pk,
        "cabinet_id": drawer.cabinet_id,
        "opening_id": drawer.pk,
        "index": 0,
        "size": "width_top",
        "page": "doors",
        "kind": "hinges",
        "cabinet_kind": "base",
        "snag_id": Snag.objects.get(job=job).pk,
        "key": DoorOnHand.objects.get(job=job).pk,
        "code": frozen_code(job, "B2"),
        "stage": "cut",
        "closed_id": 0,
        "sending_id": 0,
        "goods_id": Goods.objects.get(shop=job.shop, name="bumper").pk,
        "token": "none",
    }
    pages = {}
    for address in addresses(urls.urlpatterns):
        for topic in SHORT_PAGES if "topic" in address.pattern.converters else ("",):
            every = known | {"topic": topic}
            asked = {name: every[name] for name in address.pattern.converters}
            answer = client.get(reverse(f"fronts:{address.name}", kwargs=asked))
            if answer.status_code == 200:
                pages[f"{address.name}{topic}"] = TOKEN.sub("", answer.text)
    return pages


def changed(before: dict[str, str], after: dict[str, str]) -> dict[str, list[str]]:
    """Of the same pages those that are not as they were, with the lines that differ."""
    return {
        name: list(unified_diff(old.splitlines(), after[name].splitlines(), lineterm="", n=0))
        for name, old in before.items()
        if old != after[name]
    }


def test_no_page_shows_another_shops_values(
    our_job: Job, their_shop: Shop, owner: Person, signed_in: SignIn
) -> None:
    """Every page of ours stays the same, to the letter, whatever the other shop sets."""
    before = pages_of(our_job, signed_in(owner))

    own_ways(their_shop, THEIRS)
    counted(their_shop, PersonFactory.create(shop=their_shop), 77)

    after = pages_of(our_job, signed_in(owner))
    assert after.keys() == before.keys()
    assert changed(before, after) == {}
    assert {"shop-standard", "job-measure", "job-stock", "job-standard", "job-order"} <= set(before)
    assert {"shop-hardware", "job-hardware", "shop-items-csv", "job-boxes"} <= set(before)
    assert {"shop-suppliers", "shop-offers-csv", "shop-buy", "job-cost"} <= set(before)
    assert {"shop-shelf", "shop-shelf-item", "shop-shelf-new"} <= set(before)
    assert {"job-what-if", "job-suited", "job-snags", "snag", "job-sign-off"} <= set(before)


def test_no_schedule_follows_another_shops_values(our_job: Job, their_shop: Shop) -> None:
    """The snapshot and all that is worked out from it."""
    before = kitchen_of(our_job)

    own_ways(their_shop, THEIRS)

    assert kitchen_of(our_job) == before
    assert schedule(kitchen_of(our_job)) == schedule(before)


def test_two_shops_with_values_of_their_own_each_have_theirs(shop: Shop, their_shop: Shop) -> None:
    """No value of the one is the other's, in either direction."""
    own_ways(their_shop, THEIRS)
    own_ways(shop, OURS)
    ours, theirs = ways_of(shop), ways_of(their_shop)

    assert [getattr(ours.practice, name) for name in own_numbers(OURS)] == [
        *own_numbers(OURS).values()
    ]
    assert [getattr(theirs.practice, name) for name in own_numbers(THEIRS)] == [
        *own_numbers(THEIRS).values()
    ]
    assert ours.stock.screw_lengths == tuple(OURS * each for each in COMMON_STOCK.screw_lengths)
    assert theirs.stock.screw_lengths == tuple(THEIRS * each for each in COMMON_STOCK.screw_lengths)
    assert (ours.standard.skin, theirs.standard.skin) == (
        OURS * Fraction("3.175"),
        THEIRS * Fraction("3.175"),
    )
    assert (ours.hardware, theirs.hardware) == (own_hardware(OURS), own_hardware(THEIRS))
    assert (ours.boxes_made_of, theirs.boxes_made_of) == (own_boxes(OURS), own_boxes(THEIRS))
    assert ours.practice.slide_classes == (100 * OURS,)
    assert theirs.practice.slide_classes == (100 * THEIRS,)


def test_saving_one_number_takes_over_no_other(our_shop: Shop, their_shop: Shop) -> None:
    """What else the shop does stays as it was."""
    before = ways_of(our_shop).practice
    own_ways(their_shop, THEIRS)

    practice_set(owner=our_shop, at=NOW, values={"spares": Fraction(77)})

    after = ways_of(our_shop).practice
    assert {
        name for name in own_numbers(OURS) if getattr(after, name) != getattr(before, name)
    } == {"spares"}
    assert (after.material, after.slide_classes) == (before.material, before.slide_classes)


def test_a_page_of_numbers_saved_as_it_is_keeps_nothing_of_another_shops(
    shop: Shop, their_shop: Shop, owner: Person, signed_in: SignIn
) -> None:
    """Every form holds only what our shop said; posted again, only that is stored."""
    own_ways(their_shop, THEIRS)
    client = signed_in(owner)
    for path in SHORT_PAGES:
        address = f"/shop/standard/{path}/"
        form = dom(client.get(address)).one("#shop-standard")
        fields = form.all("input, select, textarea")
        typed = {field.attribute("name"): field.value for field in fields}
        own = {"tape_width": "7/8"} if "tape_width" in typed else {}

        assert client.post(address, typed | own).status_code == 302

    assert [each.name for each in ShopNumber.objects.filter(shop=shop)] == ["tape_width"]


@pytest.mark.parametrize("whose", ["shop", "job"])
def test_saving_one_length_takes_over_no_other_stock(
    whose: str, our_shop: Shop, job: Job, their_shop: Shop
) -> None:
    """A first stock of one's own is a copy of what held before, and that was ours."""
    before = kitchen_of(job).stock
    own_ways(their_shop, THEIRS)

    stock_set(owner=our_shop if whose == "shop" else job, at=NOW, knob_thread="1/4-20")

    after = kitchen_of(job).stock
    assert after.knob_thread == "1/4-20"
    assert after.screw_lengths == before.screw_lengths
    assert after.knob_screw_lengths == before.knob_screw_lengths
    assert after.slide_lengths == before.slide_lengths
    assert after.knob_thread_depth == before.knob_thread_depth


def test_saving_a_table_or_a_standard_takes_over_no_other(our_shop: Shop, their_shop: Shop) -> None:
    """A level that speaks for the first time says only what was entered."""
    before = ways_of(our_shop)
    own_ways(their_shop, THEIRS)

    standard_set(owner=our_shop, at=NOW, bite=Fraction(11))
    tables_set(
        owner=our_shop, at=NOW, hinges_by_height=None, hinges_by_weight=None,
        slide_classes=[Fraction(44)], material="", frame_material="",
    )  # fmt: skip

    after = ways_of(our_shop)
    assert after.standard.bite == 11
    assert (after.standard.skin, after.standard.inset_gap) == (
        before.standard.skin, before.standard.inset_gap
    )  # fmt: skip
    assert after.practice.slide_classes == (Fraction(44),)
    assert after.practice.hinges_by_height == PRACTICE.hinges_by_height
    assert after.practice.material == PRACTICE.material


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.name.split(".")[0])
@pytest.mark.parametrize("like", ["theirs", "usual"])
def test_an_import_comes_out_as_it_went_in_beside_another_shops_values(
    like: str, sample: Path, our_shop: Shop, their_shop: Shop
) -> None:
    """A file whose stock, numbers and tables are just the other shop's still says so itself."""
    own_ways(their_shop, THEIRS)
    kitchen = read(sample.read_text(encoding="utf-8"))
    if like == "theirs":
        theirs = ways_of(their_shop)
        kitchen = replace(
            kitchen,
            stock=theirs.stock,
            practice=theirs.practice,
            hardware=theirs.hardware,
            boxes_made_of=theirs.boxes_made_of,
        )

    job = job_import(kitchen=kitchen, shop=our_shop, at=NOW)

    made = kitchen_of(job)
    assert (made.stock, made.practice) == (kitchen.stock, kitchen.practice)
    assert (made.hardware, made.boxes_made_of) == (kitchen.hardware, kitchen.boxes_made_of)
    assert schedule(kitchen_of(job)) == schedule(kitchen)


def test_a_copy_in_another_shop_exports_the_same(our_job: Job, their_shop: Shop) -> None:
    """Exported from ours and imported into theirs, it is the same kitchen still."""
    own_ways(their_shop, THEIRS)
    kitchen = kitchen_of(our_job)

    copy = job_import(kitchen=kitchen, shop=their_shop, at=NOW)

    assert schedule(kitchen_of(copy)) == schedule(kitchen)
    CabinetFactory.create(job=copy)
    assert kitchen_of(our_job) == kitchen
