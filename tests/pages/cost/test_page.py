"""What a job costs: sums that agree, what it may cost, and who sees it."""

from collections.abc import Callable, Iterable
from decimal import Decimal

import pytest
from django.test import Client
from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.models import JobBudget
from fronts.pages.cost.rows import Amount, against, costs_shown
from fronts.rules.job_cost import job_cost
from fronts.rules.kitchen import Kitchen
from fronts.rules.money import Price
from fronts.rules.offers import OfferFacts
from fronts.rules.schedule import schedule
from fronts.selectors.needed import needs_of
from fronts.services.budgets import job_budget_set
from shopjobs.models import Job, Person, Revision, Shop
from tests.dom import Part, dom
from tests.factories import NOW
from tests.pages.buy.planned import planned
from tests.pages.kitchens import furnish
from tests.pages.suppliers.offered import offer
from tests.rules.buying import buying
from tests.rules.laws import KITCHEN_LAW

SignIn = Callable[[Person], Client]
BUDGET = "4711.13"


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def way(job: Job) -> str:
    """The page's address."""
    return f"/jobs/{job.pk}/cost/"


def amounts(cells: Iterable[Part]) -> list[Decimal]:
    """What cells of money say."""
    return [Decimal(cell.words.split()[0]) for cell in cells]


def sum_of(parts: Iterable[Amount]) -> Decimal:
    """What several amounts come to."""
    return sum((each.price.amount for each in parts), Decimal(0))


def test_all_sums_of_the_page_agree(desk: Client, shop: Shop, job: Job, office: Person) -> None:
    """By kind, by cabinet with its fronts, and in all: to the cent."""
    furnish(job)
    planned(job, office)
    offer(shop, "bumper", price="4.60", pack=Decimal(7))
    offer(shop, "slide screw", price="13.20", pack=Decimal(301))
    offer(shop, "sheet MDF 3/4 in, 96 × 48 in", price="41.99")

    section = dom(desk.get(way(job))).one("section.cost")

    (total,) = amounts(section.all(".cost-kinds tfoot .number"))
    assert total == sum(amounts(section.all(".cost-kinds tbody .number")))
    assert total == sum(amounts(section.all(".cost-cabinets tbody .number")))
    assert "Sheets and sticks" in section.one(".cost-kinds").words
    for row in section.all(".cost-cabinets tbody tr:not(.rest)"):
        assert sum(amounts(row.all("dd"))) == amounts(row.all(".number"))[0]
    assert f"In all {total} USD" in section.one("h2").words


@settings(KITCHEN_LAW, max_examples=10)
@given(st.data(), buying())
def test_shown_parts_add_up_whatever_is_bought(data: st.DataObject, of: Kitchen) -> None:
    """And the budget's rest with what is spent."""
    wanted = list(needs_of(schedule(of), None))
    prices = st.builds(
        Price, st.decimals(0, 500, places=0), st.sampled_from(("USD", "JPY", "KWD"))
    )  # fmt: skip
    facts = st.builds(OfferFacts, price=prices, pack=st.integers(1, 99).map(Decimal))
    cost = job_cost(wanted, {each.name: data.draw(facts) for each in wanted})

    for shown in costs_shown(cost):
        assert sum_of(shown.kinds) == shown.total.amount
        assert sum_of((*shown.cabinets, shown.rest)) == shown.total.amount
        for cabinet in shown.cabinets:
            assert sum_of(cabinet.parts) == cabinet.price.amount
        held = against(Price(Decimal(100), shown.total.currency), cost)
        assert held is not None
        assert held.cost == shown.total
        left, over = (each.amount if each else Decimal(0) for each in (held.left, held.over))
        assert held.cost.amount + left - over == 100


def test_the_owner_sets_what_it_may_cost(desk: Client, shop: Shop, job: Job) -> None:
    """What is left, or too much, stands first; empty, nobody says."""
    furnish(job)
    offer(shop, "slide screw", price="60.00", pack=Decimal(1))

    for typed, said in (("10 000", "left"), ("0.50", "too much")):
        answer = desk.post(way(job), {"amount": typed, "currency": "USD"}, follow=True)
        assert said in dom(answer).one(".cost-left").words
    answer = desk.post(way(job), {"amount": "", "currency": "USD"}, follow=True)
    assert not dom(answer).has(".cost-left")
    assert not JobBudget.objects.exists()


@pytest.mark.parametrize("typed", ["abc", "-1", "1" * 29, "1,234", "12.345", "1e5", "5\0"])
def test_what_is_no_amount_is_said_at_its_field(typed: str, desk: Client, job: Job) -> None:
    """What was typed stays."""
    answer = desk.post(way(job), {"amount": typed, "currency": "USD"})

    assert answer.status_code == 422
    page = dom(answer)
    assert page.has("#budget-amount_error")
    assert page.field("amount").value == typed.replace("\0", "\ufffd")
    assert not JobBudget.objects.exists()


def test_the_office_sees_it_and_the_installer_does_not(
    shop: Shop, job: Job, owner: Person, office: Person, installer: Person, signed_in: SignIn
) -> None:
    """By values, in history too; the amount is the owner's to set and to take back."""
    furnish(job)
    price = Price(Decimal(BUDGET), "USD")
    job_budget_set(job=job, price=price, by=owner, at=NOW)
    desk, site = signed_in(office), signed_in(installer)

    assert BUDGET in desk.get(way(job)).text
    assert not dom(desk.get(way(job))).has("#budget")
    assert desk.post(way(job), {"amount": "1", "currency": "USD"}).status_code == 403
    assert site.get(way(job)).status_code == 403
    for page in ("order", "history", "fit"):
        text = site.get(f"/jobs/{job.pk}/{page}/").text
        assert BUDGET not in text
        assert way(job) not in text
    undo = {"revision": Revision.objects.latest("pk").pk, "back": "/jobs/"}
    for client in (desk, site):
        assert client.post(f"/jobs/{job.pk}/undo/", undo).status_code == 403
    assert JobBudget.objects.get().amount == Decimal(BUDGET)


def test_another_shops_costs_do_not_exist(
    job: Job, owner: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Neither to see nor to set."""
    job_budget_set(job=job, price=Price(Decimal(BUDGET), "USD"), by=owner, at=NOW)
    client = signed_in(stranger)

    assert client.get(way(job)).status_code == 404
    assert client.post(way(job), {"amount": "1", "currency": "USD"}).status_code == 404
    assert JobBudget.objects.get().amount == Decimal(BUDGET)
