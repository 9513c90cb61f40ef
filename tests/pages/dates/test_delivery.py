"""What a job waits for of its order: by its own days, a supplier's, or the shop's; who is told."""

from datetime import date, datetime

import pytest
from django.db import connection
from django.test import Client
from django.test.utils import CaptureQueriesContext
from django.utils import timezone

from fronts.rules.date_facts import JobDates
from fronts.selectors.approved_items import buying_names_of
from fronts.selectors.dates import jobs_now, plan_of
from fronts.selectors.order_progress import order_progress
from fronts.services.dates import job_dates_set
from fronts.services.order_arrivals import lines_receive
from fronts.services.order_sendings import order_send
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import JobFactory
from tests.ordering import approved, sent_of
from tests.pages.dates.conftest import TODAY, SignIn, send
from tests.pages.dates.test_job_dates import dates, stage
from tests.pages.suppliers.offered import offer, supplier
from tests.shopjobs.kitchens import kitchen
from tests.stocked import counted, moved

SELLER = "Northfield"


@pytest.fixture
def ordered(fitted_first: Job, owner: Person) -> Job:
    """The job with two doors, its order approved; nobody sells anything of it yet."""
    kitchen(fitted_first)
    approved(fitted_first, owner)
    return fitted_first


def items(job: Job) -> dict[str, str]:
    """What the order's items are bought as."""
    return buying_names_of(job)


def offered(job: Job, days: int, item: str, seller: str = SELLER) -> str:
    """What an item of the job's order is bought as, once somebody sells it."""
    name = items(job)[item]
    offer(job.shop, name, seller, lead_days=days)
    return name


def first_item(job: Job) -> str:
    """An item of the order."""
    return next(iter(items(job)))


def all_sent(job: Job, by: Person, seller: str = SELLER, on: date = TODAY) -> None:
    """All that is left goes to a supplier."""
    amounts = {item.item: item.to_send for item in order_progress(job).to_send}
    order_send(
        job=job, supplier=seller, reference="", sent_on=on, amounts=amounts, by=by, at=now(),
    )  # fmt: skip


def all_came(job: Job, by: Person) -> None:
    """All that was sent for is there."""
    for each in sent_of(job):
        lines_receive(
            job=job, sent=each, amounts={line.row.pk: line.missing for line in each.lines},
            came_on=TODAY, note="", confirmed=True, by=by, at=now(),
        )  # fmt: skip


def now() -> datetime:
    """Noon of the day on which all of this happens."""
    return timezone.now()


def ordering(client: Client, job: Job) -> str:
    """What the page says of ordering."""
    return stage(client, job, "order")


def test_the_shops_days_until_the_order_is_approved(
    fitted_first: Job, owner: Person, signed_in: SignIn
) -> None:
    """Whoever sells what."""
    words = ordering(signed_in(owner), fitted_first)

    assert "1 working day, then 10 for delivery" in words
    assert "Delivery: the shop’s usual number of days, until the order is approved." in words


def test_what_takes_longest_is_waited_for(ordered: Job, owner: Person, signed_in: SignIn) -> None:
    """By its preferred offer; what nobody says the days of comes in the shop's usual ones."""
    client = signed_in(owner)
    names = list(items(ordered).values())
    assert f"since nobody says how long this takes: {max(names)}." in (ordering(client, ordered))

    name = offered(ordered, 15, first_item(ordered))
    offer(ordered.shop, name, "Slow and Sons", lead_days=90)

    words = ordering(client, ordered)
    assert "1 working day, then 15 for delivery" in words
    assert f"Delivery: {name} from {SELLER} takes longest." in words
    # Ten working days before cutting on 23 March had been the 8th; fifteen are the 1st.
    assert "At the latest Mon 1 Mar 2027" in words


def test_what_is_late_says_what_it_waits_for(
    ordered: Job, owner: Person, signed_in: SignIn
) -> None:
    """On the job's page and in the diary; in the calendar to subscribe to nobody is named."""
    name = offered(ordered, 16, first_item(ordered))
    client = signed_in(owner)
    said = (
        "Ordering should have begun on 26 February: 1 working day for ordering, 16 for delivery "
        f"({name} from {SELLER}), 4 for cutting and 5 for finishing before fitting on 5 April."
    )

    assert said in dom(client.get(dates(ordered))).one(".is-late").words
    assert f"16 for delivery ({name} from {SELLER})" in dom(client.get("/diary/")).one("main").words


def test_a_number_of_its_own_goes_before(ordered: Job, owner: Person, signed_in: SignIn) -> None:
    """Whoever sells what, and of what was sent for too."""
    offered(ordered, 15, first_item(ordered))
    client = signed_in(owner)

    assert send(client, dates(ordered), "job-days", lead_days="3").status_code == 302
    words = ordering(client, ordered)
    assert "1 working day, then 3 for delivery" in words
    assert "Delivery: this job’s own number of days." in words

    all_sent(ordered, owner)
    assert "sent for on 1 March, 3 working days, this job’s own number." in ordering(
        client, ordered
    )


def test_what_was_sent_for_comes_from_whom_it_was_sent_to(
    ordered: Job, owner: Person, signed_in: SignIn
) -> None:
    """By that supplier's offer, else by what is usual with it; what came is waited for no more."""
    client = signed_in(owner)
    name = offered(ordered, 15, first_item(ordered))
    supplier(ordered.shop, "Kestrel Lane", lead_days=4)
    offer(ordered.shop, name, "Kestrel Lane", lead_days=21)

    all_sent(ordered, owner, "kestrel lane")

    words = ordering(client, ordered)
    assert "Passed: all of the order is sent." in words
    assert (
        f"{name} from kestrel lane comes last, on 30 March; sent for on 1 March, 21 working days."
        in words
    )
    assert dom(client.get(dates(ordered))).one(".is-late").words == (
        f"Will be late {name[0].upper()}{name[1:]} from kestrel lane, sent for on 1 March, comes "
        "on 30 March; cutting takes 4 working days, then 5 working days for finishing: fitting can "
        "begin on 13 April, not on 5 April."
    )
    assert jobs_now(ordered.shop, TODAY, [ordered.pk])[ordered.pk].words == "will be late"

    all_came(ordered, owner)
    assert "comes last" not in ordering(client, ordered)
    assert not dom(client.get(dates(ordered))).all(".is-late")


def test_what_is_overdue_is_said(ordered: Job, owner: Person, signed_in: SignIn) -> None:
    """The day on which it was to come has been."""
    supplier(ordered.shop, SELLER, lead_days=3)
    all_sent(ordered, owner, on=date(2027, 2, 22))

    words = ordering(signed_in(owner), ordered)

    assert f"from {SELLER} was to come by 25 February; sent for on 22 February" in words


def test_what_is_laid_by_from_stock_is_not_waited_for(
    ordered: Job, owner: Person, signed_in: SignIn
) -> None:
    """Part of it, then all."""
    client, first = signed_in(owner), first_item(ordered)
    name = offered(ordered, 40, first)
    assert f"{name} from {SELLER} takes longest" in ordering(client, ordered)

    for each in order_progress(ordered).to_send:
        thing = items(ordered)[each.item]
        moved(counted(ordered.shop, owner, each.to_send, thing), ordered, owner, each.to_send)
        if each.item == first:
            assert name not in ordering(client, ordered)
            assert "Delivery: the shop’s usual number of days" in ordering(client, ordered)

    words = ordering(client, ordered)
    assert "Delivery" not in words
    assert plan_of(ordered.shop, TODAY).jobs[ordered.pk].days.lead == 0


def test_who_fits_is_told_of_those_alone_to_whom_an_order_went(
    ordered: Job, owner: Person, installer: Person, signed_in: SignIn
) -> None:
    """Whom the office would ask is none of an installer's pages; the thing and its days are."""
    name = offered(ordered, 16, first_item(ordered))
    client = signed_in(installer)

    for address in (dates(ordered), "/diary/"):
        page = dom(client.get(address)).one("main").words
        assert SELLER not in page
        assert f"16 for delivery ({name})" in page
    all_sent(ordered, owner)
    assert f"{name} from {SELLER} comes last" in ordering(client, ordered)


def test_another_shops_offers_are_not_asked(
    ordered: Job, owner: Person, stranger: Person, signed_in: SignIn
) -> None:
    """To the letter, whatever the other shop buys and from whom; and the other way round."""
    assert stranger.shop is not None
    client = signed_in(owner)
    before = dom(client.get(dates(ordered))).one("#stages").words
    theirs = JobFactory.create(shop=stranger.shop, number="Z-1", fit_on=ordered.fit_on)
    kitchen(theirs)
    approved(theirs, stranger)
    offered(theirs, 99, first_item(theirs), "Elsewhere")
    all_sent(theirs, stranger, "Elsewhere")

    assert dom(client.get(dates(ordered))).one("#stages").words == before
    offered(ordered, 15, first_item(ordered))
    words = stage(signed_in(stranger), theirs, "order")
    assert "99 working days" in words
    assert SELLER not in words


def test_many_jobs_take_as_many_reads_as_one(shop: Shop, owner: Person) -> None:
    """Approved, sent in part, some of it laid by; no schedule is asked for."""
    jobs = [JobFactory.create(shop=shop, number=f"M-{each}", fit_on=TODAY) for each in range(4)]
    for job in jobs:
        kitchen(job)
        approved(job, owner)
    name = offered(jobs[0], 15, first_item(jobs[0]))
    for job in jobs:
        item, *_ = order_progress(job).to_send
        order_send(
            job=job, supplier=SELLER, reference="", sent_on=TODAY, amounts={item.item: 1}, by=owner,
            at=now(),
        )  # fmt: skip
        moved(counted(shop, owner, 100, name), job, owner, 1)
    job_dates_set(job=jobs[0], facts=JobDates(lead_days=1), by=owner, at=now())

    reads = []
    for asked in (jobs[:1], jobs):
        with CaptureQueriesContext(connection) as captured:
            jobs_now(shop, TODAY, [job.pk for job in asked])
        reads.append(len(captured))

    assert reads[0] == reads[1] <= 20
