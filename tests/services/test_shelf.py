"""Stock of what is bought: never below nothing anywhere, whatever is done in whichever order."""

import random
from collections import Counter
from datetime import timedelta
from fractions import Fraction
from functools import partial

import pytest
from django.db.models import Sum

from fronts.models import Cabinet, Goods, OrderArrival, StockEntry
from fronts.models.shelf import GIVEN_BACK, LAID_BY, USED
from fronts.rules.buying_names import name_of_need
from fronts.selectors.needed import wanted_by
from fronts.selectors.order_progress import order_progress
from fronts.selectors.purchases import shares_of_stock, shop_buying
from fronts.selectors.schedules import schedule_of
from fronts.services.cabinets import cabinet_delete
from fronts.services.history import revision_undo
from fronts.services.order_arrivals import last_arrival_take_back, lines_receive
from fronts.services.order_sendings import order_send
from fronts.services.saving import AskFirst
from fronts.services.shelf import shares_lay_by, stock_count
from shopjobs.models import Job, Person, Revision, Shop
from shopjobs.services.jobs import job_delete
from shopjobs.services.refused import Refused
from tests.factories import NOW, JobFactory, door_and_drawer, overlaid
from tests.ordering import approved, sent_of, sent_to
from tests.stocked import counted, moved, there_is

ITEM = "bumper"


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """A job with a door on two hinges, and a drawer."""
    overlaid(job)
    door_and_drawer(job)
    return job


def came(job: Job, by: Person, amount: int, item: str = ITEM) -> None:
    """So many of an item came of the order that was sent."""
    (sent,) = sent_of(job)
    (line,) = [line for line in sent.lines if line.row.item == item]
    lines_receive(
        job=job, sent=sent, amounts={line.row.pk: amount}, came_on=NOW.date(), note="",
        confirmed=True, by=by, at=NOW,
    )  # fmt: skip


def undone(by: Person) -> None:
    """What was done last is taken back."""
    revision_undo(revision=Revision.objects.latest("pk"), by=by, at=NOW, confirmed=True)


def test_a_count_makes_the_difference_free(shop: Shop, office: Person, job: Job) -> None:
    """What is laid by stays so; its own undo brings back what was free before."""
    goods = counted(shop, office, 12)
    moved(goods, job, office, 5)

    counted(shop, office, 20)

    assert there_is(shop) == {"": 15, "K-1": 5}
    undone(office)
    assert there_is(shop) == {"": 7, "K-1": 5}


def test_fewer_than_is_laid_by_are_refused(shop: Shop, office: Person, job: Job) -> None:
    """With who holds what; nothing changed."""
    goods = counted(shop, office, 12)
    moved(goods, job, office, 5)

    with pytest.raises(Refused, match="5 for K-1"):
        counted(shop, office, 4)

    assert there_is(shop) == {"": 7, "K-1": 5}


def test_whoever_counts_is_told_what_changed_meanwhile(shop: Shop, office: Person) -> None:
    """Who did it, and what there is now."""
    counted(shop, office, 12)

    with pytest.raises(AskFirst, match=r"otto .*12 on hand"):
        stock_count(
            shop=shop, item=ITEM.upper(), amount=Fraction(9), reason="mine", seen=None, by=office,
            at=NOW,
        )  # fmt: skip

    assert there_is(shop) == {"": 12}


@pytest.mark.parametrize("kind", [LAID_BY, GIVEN_BACK, USED])
def test_nothing_goes_below_nothing(kind: str, shop: Shop, office: Person, job: Job) -> None:
    """More than there is at the place is refused, in words."""
    goods = counted(shop, office, 10)
    moved(goods, job, office, 4)

    with pytest.raises(Refused, match="more would be taken than are"):
        moved(goods, job, office, 7, kind)

    assert there_is(shop) == {"": 6, "K-1": 4}


def test_whatever_is_done_sums_agree_and_nothing_is_below_nothing(
    shop: Shop, office: Person, job: Job
) -> None:
    """Random deeds of two jobs beside a plain account of them; each refused or counted."""
    jobs = [job, JobFactory.create(shop=shop, number="K-2")]
    chance = random.Random(11)
    account: Counter[str] = Counter()
    goods, refused = counted(shop, office, 6), 0
    account[""] = 6
    for _ in range(60):
        of, much = chance.choice(jobs), chance.randrange(1, 8)
        kind = chance.choice((LAID_BY, GIVEN_BACK, USED, "count"))
        after = account.copy()
        try:
            if kind == "count":
                after[""] += much - sum(account.values())
                counted(shop, office, much)
            else:
                after[""] += {LAID_BY: -much, GIVEN_BACK: much}.get(kind, 0)
                after[str(of)] += much if kind == LAID_BY else -much
                moved(goods, of, office, much, kind)
        except Refused:
            refused += 1
            assert min(after.values()) < 0
        else:
            account = after
        assert min(account.values()) >= 0
        assert there_is(shop) == {place: count for place, count in account.items() if count}
    assert 5 < refused < 55
    total = StockEntry.objects.aggregate(Sum("amount"))["amount__sum"]
    assert total == sum(account.values())


def test_what_came_is_laid_by_as_far_as_it_was_sent_for(
    kitchen_job: Job, shop: Shop, office: Person
) -> None:
    """What is over is free; taken back, all of it goes, unless it was used meanwhile."""
    approved(kitchen_job, office)
    sent_to(kitchen_job, "Ash", office, {"bumper": 3})

    came(kitchen_job, office, 2)
    came(kitchen_job, office, 4)

    assert there_is(shop) == {"K-1": 3, "": 3}
    goods = Goods.objects.get(name=ITEM)
    moved(goods, kitchen_job, office, 3, USED)
    sent = sent_of(kitchen_job)[0]
    with pytest.raises(Refused, match="laid by for K-1"):
        last_arrival_take_back(job=kitchen_job, sent=sent, by=office, at=NOW)
    assert OrderArrival.objects.count() == 2
    undone(office)
    last_arrival_take_back(job=kitchen_job, sent=sent, by=office, at=NOW)
    assert there_is(shop) == {}


def test_an_item_is_in_stock_under_its_buying_name(
    kitchen_job: Job, shop: Shop, office: Person
) -> None:
    """Also one that the kitchen does not need any more when it comes."""
    need = next(each for each in schedule_of(kitchen_job).hardware if each.code)
    assert name_of_need(need) != need.item
    approved(kitchen_job, office)
    order_send(
        job=kitchen_job, supplier="Ash", reference="", sent_on=NOW.date(), amounts={need.item: 2},
        by=office, at=NOW,
    )  # fmt: skip
    for cabinet in Cabinet.objects.filter(job=kitchen_job).select_related("job__shop"):
        cabinet_delete(cabinet=cabinet, by=office, at=NOW)

    came(kitchen_job, office, 2, need.item)

    assert there_is(shop, name_of_need(need)) == {"K-1": 2}


def test_what_is_laid_by_is_neither_bought_nor_sent_for(
    kitchen_job: Job, shop: Shop, office: Person
) -> None:
    """Used it covers still; given back it is wanted again."""
    approved(kitchen_job, office)
    whole = order_progress(kitchen_job).items[ITEM].to_send
    goods = counted(shop, office, 50)

    def left() -> tuple[int, int]:
        wanted = next(each for each in wanted_by([kitchen_job]) if each.name == ITEM)
        to_send = order_progress(kitchen_job).items[ITEM].to_send
        return to_send, int(wanted.amount)

    assert left() == (whole, whole)
    moved(goods, kitchen_job, office, 3)
    assert left() == (whole - 3, whole - 3)
    moved(goods, kitchen_job, office, 2, USED)
    assert left() == (whole - 3, whole - 3)
    moved(goods, kitchen_job, office, 1, GIVEN_BACK)
    assert left() == (whole - 2, whole - 2)
    sent_to(kitchen_job, "Ash", office, {"bumper": whole - 2})
    came(kitchen_job, office, whole - 2)
    assert left() == (0, 0)
    moved(goods, kitchen_job, office, whole - 2, GIVEN_BACK)
    assert left() == (whole - 2, whole - 2)
    sent_to(kitchen_job, "Ash", office, {"bumper": whole - 2})
    assert left() == (0, 0)
    undone(office)
    assert left() == (whole - 2, whole - 2)


def test_shares_are_laid_by_once(kitchen_job: Job, shop: Shop, office: Person) -> None:
    """Who saw them too is told, and no job gets more than it wants."""
    counted(shop, office, 500)
    shares = shares_of_stock(shop, shop_buying(shop, [kitchen_job]).buying)
    asked = partial(shares_lay_by, shop=shop, jobs=[kitchen_job], shares=shares, by=office, at=NOW)

    asked()

    assert there_is(shop)["K-1"] == shares[0].amount
    with pytest.raises(Refused, match="has changed"):
        asked()
    assert not shares_of_stock(shop, shop_buying(shop, [kitchen_job]).buying)


def test_undo_leaves_nothing_below_nothing(shop: Shop, office: Person, job: Job) -> None:
    """A count under what was laid by since is not taken back; in turn both are."""
    goods = counted(shop, office, 10)
    of_count = Revision.objects.latest("pk")
    counted(shop, office, 30)
    later = Revision.objects.latest("pk")
    moved(goods, job, office, 25)

    for revision in (later, of_count):
        with pytest.raises(Refused):
            revision_undo(revision=revision, by=office, at=NOW, confirmed=True)

    undone(office)
    revision_undo(revision=later, by=office, at=NOW, confirmed=True)
    assert there_is(shop) == {"": 10}


def test_what_was_laid_by_for_a_job_that_is_gone_is_free(
    shop: Shop, owner: Person, kitchen_job: Job
) -> None:
    """Once nobody can bring it back; until then it waits for it."""
    approved(kitchen_job, owner)
    sent_to(kitchen_job, "Ash", owner, {"bumper": 4})
    came(kitchen_job, owner, 4)
    moved(Goods.objects.get(name=ITEM), kitchen_job, owner, 1, USED)
    job_delete(job=kitchen_job, by=owner, at=NOW)
    assert there_is(shop) == {"K-1": 3}

    other = JobFactory.create(shop=shop, number="K-9")
    job_delete(job=other, by=owner, at=NOW + timedelta(days=Job.DAYS_KEPT + 1))

    assert there_is(shop) == {"": 3}


def test_a_length_is_counted_to_the_thousandth(shop: Shop, office: Person, job: Job) -> None:
    """A foot is 304.8 mm; nothing is lost in moving some of it."""
    goods = counted(shop, office, Fraction("100.125"), "edge band E-1")
    for _ in range(3):
        moved(goods, job, office, Fraction("0.125"))

    held = there_is(shop, "edge band E-1")

    assert held["K-1"] == Fraction("0.375") * Fraction("304.8") * 10_000
    assert sum(held.values()) == Fraction("100.125") * Fraction("304.8") * 10_000
