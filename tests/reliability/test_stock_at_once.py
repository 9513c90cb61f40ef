"""Two people take from one shelf at the same moment: there is never less than nothing."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Goods, StockEntry
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import JobFactory
from tests.pages.shared.sending import as_sent, together
from tests.stocked import counted, there_is
from tests.tried import Tally

pytestmark = [pytest.mark.django_db(transaction=True), pytest.mark.thorough]
SignIn = Callable[[Person], Client]
ROUNDS = (3, pytest.param(15, marks=pytest.mark.reliability))


@pytest.fixture
def desks(owner: Person, office: Person, signed_in: SignIn) -> list[Client]:
    """Two browsers of two people of the shop."""
    return [signed_in(owner), signed_in(office)]


def sending(
    desk: Client, goods: Goods, form: str, **typed: Any
) -> tuple[Client, Callable[[Client], Any]]:
    """A form of the thing's page as somebody has it in view, sent later."""
    page = dom(desk.get(f"/shop/stock/{goods.pk}/"))
    sent, way = as_sent(page.one(form), **typed), page.one(form).attribute("action")
    return desk, lambda browser: browser.post(way, sent)


@pytest.mark.parametrize("rounds", ROUNDS)
def test_the_last_ones_are_laid_by_once(
    desks: list[Client], shop: Shop, job: Job, office: Person, rounds: int, tally: Tally
) -> None:
    """One job gets them, the other person reads that they are gone."""
    jobs = [job, JobFactory.create(shop=shop, number="K-2")]
    for _ in range(rounds):
        goods = counted(shop, office, 5)
        forms = [
            sending(desk, goods, "#lay-by", job=each.pk, amount="4")
            for desk, each in zip(desks, jobs, strict=True)
        ]
        statuses = sorted(answer.status_code for answer in together(*forms))
        held = sorted(there_is(shop).values())
        tally.of(*[] if (statuses, held) == ([302, 422], [1, 4]) else [f"{statuses} {held}"])
        StockEntry.objects.all().delete()
    tally.check()


@pytest.mark.parametrize("rounds", ROUNDS)
def test_of_two_counts_one_is_told(
    desks: list[Client], shop: Shop, office: Person, rounds: int, tally: Tally
) -> None:
    """The first one's number stands until the other has read it."""
    for _ in range(rounds):
        goods = counted(shop, office, 5)
        forms = [
            sending(desk, goods, "#count", amount=amount, reason="counted")
            for desk, amount in zip(desks, ("7", "9"), strict=True)
        ]
        statuses = [answer.status_code for answer in together(*forms)]
        stands = 7 if statuses[0] == 302 else 9
        good = sorted(statuses) == [302, 409] and there_is(shop) == {"": stands}
        tally.of(*[] if good else [f"{statuses}, {there_is(shop)}"])
        StockEntry.objects.all().delete()
    tally.check()


@pytest.mark.parametrize("rounds", ROUNDS)
def test_a_thing_is_begun_once(desks: list[Client], shop: Shop, rounds: int, tally: Tally) -> None:
    """Two who count it for the first time: it is one thing, and the second is told."""
    for turn in range(rounds):
        name = f"cup hook {turn}"

        def counting(browser: Client, name: str = name) -> Any:
            sent = {"item": name, "amount": "6", "reason": "counted"}
            return browser.post("/shop/stock/count/", sent)

        statuses = sorted(
            answer.status_code for answer in together(*[(desk, counting) for desk in desks])
        )
        good = statuses == [302, 409] and there_is(shop, name) == {"": 6}
        tally.of(*[] if good else [f"{statuses}, {there_is(shop, name)}"])
    tally.check()
