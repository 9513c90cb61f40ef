"""What to buy for some jobs: the page, its choices, who sees it, and what was sent for."""

from collections.abc import Callable
from contextlib import ExitStack
from decimal import Decimal
from typing import Any

import pytest
from django.db import connection
from django.test import Client
from django.test.utils import CaptureQueriesContext

from fronts.models import OrderSending, SentLine
from fronts.selectors.schedules import schedule_of
from fronts.sheets.places import PLACES_A_SHOP, printing_place
from shopjobs.models import Job, Person, Shop
from tests.dom import Answer, dom
from tests.factories import NOW, JobFactory
from tests.pages.buy.planned import planned
from tests.pages.buy.read_back import words_of_pdf
from tests.pages.kitchens import furnish
from tests.pages.suppliers.offered import offer
from tests.saying import standard_set
from tests.stocked import counted, there_is

SignIn = Callable[[Person], Client]
WAY = "/shop/buy/"
PRICE, NAME = "7318.47", "Quillfeather Supply"


@pytest.fixture
def desk(office: Person, signed_in: SignIn) -> Client:
    """A browser in which the office is signed in."""
    return signed_in(office)


def asked(client: Client, *jobs: Job, status: int = 200, **more: Any) -> Answer:
    """The page for these jobs."""
    answer = client.get(WAY, {"job": [job.pk for job in jobs], **more})
    assert answer.status_code == status
    return dom(answer)


def need_of(job: Job, item: str) -> int:
    """How many of an item a job's order says, with spares."""
    return next(each.need + each.spares for each in schedule_of(job).hardware if each.item == item)


def another(shop: Shop) -> Job:
    """A second job of the shop, with the same kitchen."""
    job: Job = JobFactory.create(shop=shop, number="K-2")
    furnish(job)
    return job


def test_two_jobs_share_packs(desk: Client, shop: Shop, job: Job) -> None:
    """The need of both, rounded up once; it opens onto the jobs and their fronts."""
    furnish(job)
    second, each = another(shop), need_of(job, "bumper")
    offer(shop, "bumper", price="4.60", pack=Decimal(2 * each), code="CB-8", lead_days=4)

    page = asked(desk, job, second)

    section = page.one(".buy-from")
    row = section.one("tbody tr")
    assert row.one("td.packs").words == "1"
    assert row.one("summary").words == str(2 * each)
    assert row.one("td.cost").words == "4.60 USD"
    assert [part.one("dt").words for part in row.all("dl div")] == ["K-1", "K-2"]
    assert "B1.a" in row.one("dl").words
    assert "within 4 working days" in section.words
    assert "In all 4.60 USD" in page.one(".buy-total").words


def test_what_nobody_sells_or_otherwise_counted_stands_apart(
    desk: Client, shop: Shop, job: Job, office: Person
) -> None:
    """Each says what to do; so does what no plan says, until there is one."""
    furnish(job)
    offer(shop, "bumper", unit="ft")

    page = asked(desk, job)

    assert "slide screw" in page.one("#unsold ~ table").words
    assert "sells feet" in page.one("#otherwise ~ table").words
    assert "MDF" in page.one("#to-plan ~ ul").words
    assert page.has(f'a[href="/jobs/{job.pk}/cut/#plan"]')
    assert not page.has(".buy-from")
    planned(job, office)
    page = asked(desk, job)
    assert not page.has("#to-plan")
    assert "sheet MDF" in page.one("#unsold ~ table").words


def test_a_plan_of_other_parts_is_none(desk: Client, shop: Shop, job: Job, office: Person) -> None:
    """Once the kitchen has other parts, its plan is to be made again."""
    furnish(job)
    planned(job, office)
    assert not asked(desk, job).has("#to-plan")

    standard_set(owner=shop, front_build="slab", front_material="beech board", at=NOW)

    assert "beech board" in asked(desk, job).one("#to-plan ~ ul").words


def test_another_offer_is_taken_for_this_purchase(desk: Client, shop: Shop, job: Job) -> None:
    """By a field of the page; the preferred one stays the preferred one, files follow."""
    furnish(job)
    offer(shop, "bumper", price="4.60", pack=Decimal(100))
    other = offer(shop, "bumper", NAME, price="5.10", pack=Decimal(100))
    page = asked(desk, job)
    assert page.one(".buy-from h2").words == "Kestrel Lane Fittings"
    assert f"{NAME}: 100 pieces for 5.10 USD" in page.one("select").words

    page = asked(desk, job, offer=other.pk)

    assert page.one(".buy-from h2").words == NAME
    files = [link.attribute("href") for link in page.all(".buy-head .actions a")]
    pdf, xlsx, csv = (desk.get(way) for way in files)
    assert "bumper" in csv.text
    assert "5.1" in csv.text
    assert xlsx.status_code == 200
    said = words_of_pdf(pdf.content)
    assert "bumper" in said
    assert "Inall5.10USD" in said
    assert asked(desk, job).one(".buy-from h2").words == "Kestrel Lane Fittings"


def test_what_was_sent_for_is_not_bought_again(
    desk: Client, shop: Shop, job: Job, office: Person
) -> None:
    """Only what is missing; what is all sent for stands below."""
    furnish(job)
    offer(shop, "bumper")
    need = need_of(job, "bumper")
    sent = OrderSending.objects.create(
        job=job, supplier="Kestrel", sent_on=NOW.date(), sent_by=office, sent_at=NOW
    )
    line = SentLine.objects.create(sending=sent, item="bumper", amount=need - 1)

    row = asked(desk, job).one(".buy-from tbody tr")
    assert row.one("summary").words == "1"
    assert f"{need - 1} sent for already" in row.words

    line.amount = need
    line.save()
    page = asked(desk, job)
    assert not page.has(".buy-from")
    assert f"bumper: K-1 {need}, sent for {need}" in page.one(".covered").words


@pytest.mark.parametrize(
    "query",
    [
        {"job": "9" * 40}, {"job": "x\0"}, {"job": "-1"}, {"job": "٣"}, {"offer": "0"},
        {"offer": "1e9"}, {"job": [str(number) for number in range(200)]},
    ],
)  # fmt: skip
def test_what_cannot_be_followed_is_said(query: Any, desk: Client, shop: Shop, job: Job) -> None:
    """The page comes all the same, and says what it left out; a file does not come."""
    row = offer(shop, "bumper")
    answer = desk.get(WAY, query)

    assert answer.status_code == 422
    assert dom(answer).has(".fault")
    for file in ("csv", "xlsx", "pdf"):
        way = f"{WAY}{row.supplier_id}/purchase.{file}"
        assert desk.get(way, query).status_code == 404


def test_without_jobs_they_are_chosen(desk: Client, job: Job) -> None:
    """Each with how far its order is."""
    page = asked(desk)

    assert "K-1 Lindqvist order not approved yet" in page.one(".buy-jobs").words
    assert not page.has(".buy-from, .buy-apart")
    assert page.one(".buy-for details").carries("open")


def test_more_jobs_ask_the_database_no_more(desk: Client, shop: Shop, job: Job) -> None:
    """Once what each needs is known."""
    furnish(job)
    second = another(shop)
    asked(desk, job, second)
    counts = []
    for jobs in ([job], [job, second]):
        with CaptureQueriesContext(connection) as queries:
            asked(desk, *jobs)
            counts.append(len(queries))

    assert counts[0] == counts[1]


def test_only_who_sees_prices_sees_it(
    shop: Shop, job: Job, owner: Person, installer: Person, signed_in: SignIn
) -> None:
    """The installer has neither the page nor a link to it."""
    furnish(job)
    row = offer(shop, "bumper", NAME, PRICE)
    client, query = signed_in(installer), f"?job={job.pk}"
    assert f"{WAY}{query}" in signed_in(owner).get(f"/jobs/{job.pk}/order/").text

    for way in ("", *(f"{row.supplier_id}/purchase.{file}" for file in ("csv", "xlsx", "pdf"))):
        assert client.get(f"{WAY}{way}{query}").status_code == 403
    order = client.get(f"/jobs/{job.pk}/order/").text
    assert not [value for value in (PRICE, NAME, WAY) if value in order]


def test_another_shops_jobs_and_offers_do_not_exist(
    shop: Shop, job: Job, stranger: Person, signed_in: SignIn
) -> None:
    """Neither by their keys nor by their values."""
    furnish(job)
    row = offer(shop, "bumper", NAME, PRICE)
    assert stranger.shop is not None
    theirs = another(stranger.shop)
    offer(stranger.shop, "bumper", "Birch Supply", "1.25", pack=Decimal(500))
    client = signed_in(stranger)

    answer = client.get(f"{WAY}?job={theirs.pk}&job={job.pk}&offer={row.pk}")

    assert answer.status_code == 422
    assert not [value for value in (PRICE, NAME, "K-1") if value in answer.text]
    assert "Birch Supply" in answer.text
    way = f"{WAY}{row.supplier_id}/purchase.csv"
    assert client.get(way, {"job": theirs.pk}).status_code == 404


def test_a_sheet_that_waits_for_others_asks_again_by_itself(
    desk: Client, shop: Shop, job: Job, caplog: pytest.LogCaptureFixture
) -> None:
    """As the sheets of a job do; no failure is logged."""
    furnish(job)
    row = offer(shop, "bumper", NAME, PRICE)
    with ExitStack() as taken:
        for _ in range(PLACES_A_SHOP):
            taken.enter_context(printing_place(shop.pk))
        answer = desk.get(f"{WAY}{row.supplier_id}/purchase.pdf?job={job.pk}")

    assert (answer.status_code, answer["Retry-After"]) == (503, "2")
    assert "This page tries again by itself" in dom(answer).words
    assert not caplog.records


def test_what_is_free_in_stock_is_laid_by_in_one_press(
    desk: Client, shop: Shop, job: Job, office: Person
) -> None:
    """One item, or all of them; then that much less is bought, and it says why."""
    furnish(job)
    second = another(shop)
    offer(shop, "bumper")
    need = need_of(job, "bumper")
    counted(shop, office, need + 1)
    counted(shop, office, 1, "slide screw")
    page = asked(desk, job, second)
    shown = page.one(".in-stock ul").words
    assert f"bumper {need} for K-1, 1 for K-2" in shown

    answer = desk.post(f"{WAY}lay-by/", sent_of(page, item="bumper"))

    assert answer.status_code == 302
    assert there_is(shop) == {"K-1": need, "K-2": 1}
    page = dom(desk.get(answer["Location"]))
    row = page.one(".buy-from tbody tr")
    assert row.one("summary").words == str(need - 1)
    assert f"{need} laid by from stock" in row.words
    assert desk.post(f"{WAY}lay-by/", sent_of(page)).status_code == 302
    assert there_is(shop, "slide screw") == {"K-1": 1}
    assert not asked(desk, job, second).has(".in-stock")


def test_what_is_no_longer_free_is_told(desk: Client, shop: Shop, job: Job, office: Person) -> None:
    """Of two who press it one reads that the other did."""
    furnish(job)
    counted(shop, office, 5)
    first, second = asked(desk, job), asked(desk, job)
    assert desk.post(f"{WAY}lay-by/", sent_of(first)).status_code == 302

    answer = desk.post(f"{WAY}lay-by/", sent_of(second))

    assert answer.status_code == 409
    assert "has changed" in dom(answer).one(".summary").words
    assert there_is(shop) == {"K-1": 5}
    for wrong in ({"share": "x\0"}, {}, {"item": "y" * 500}):
        assert desk.post(f"{WAY}lay-by/", {"job": job.pk, **wrong}).status_code in (409, 422)


def sent_of(page: Answer, **typed: str) -> dict[str, Any]:
    """The form that lays by what is free, with all that it shows."""
    form = page.one("#lay-by")
    fields = form.all("input")
    names = {field.attribute("name") for field in fields}
    sent = {
        name: [field.value for field in fields if field.attribute("name") == name] for name in names
    }
    return sent | typed
