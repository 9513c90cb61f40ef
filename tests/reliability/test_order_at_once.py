"""Two people do the same of one order at the same moment: approve, send, receive."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import OrderApproval, OrderArrival, OrderSending
from fronts.selectors.order_progress import order_progress
from shopjobs.models import Job, Person
from tests.dom import Part, dom
from tests.factories import door_and_drawer, overlaid
from tests.ordering import approved, sent_to
from tests.pages.shared.sending import as_sent, together
from tests.tried import Tally

pytestmark = [pytest.mark.django_db(transaction=True), pytest.mark.thorough]
SignIn = Callable[[Person], Client]
ROUNDS = (2, pytest.param(12, marks=pytest.mark.reliability))


@pytest.fixture
def desks(owner: Person, office: Person, job: Job, signed_in: SignIn) -> list[Client]:
    """Two browsers of two people of the shop, beside a small kitchen."""
    overlaid(job)
    door_and_drawer(job)
    return [signed_in(owner), signed_in(office)]


def both(desks: list[Client], job: Job, selector: str, **typed: Any) -> list[int]:
    """What each is answered who sends the form of the page that both look at."""
    forms = [dom(desk.get(f"/jobs/{job.pk}/order/")).one(selector) for desk in desks]

    def sending(form: Part) -> Callable[[Client], Any]:
        ticked = {
            box.attribute("name"): "on"
            for box in form.all('input[type="checkbox"]')
            if box.attribute("name").startswith("goes-")
        }
        sent = as_sent(form, **ticked, **typed)
        return lambda browser: browser.post(form.attribute("action"), sent)

    answers = together(*[(desk, sending(form)) for desk, form in zip(desks, forms, strict=True)])
    return sorted(answer.status_code for answer in answers)


@pytest.mark.parametrize("rounds", ROUNDS)
def test_one_does_it_and_the_other_is_told(
    desks: list[Client], job: Job, office: Person, rounds: int, tally: Tally
) -> None:
    """There is one approval, everything is sent once, and came once."""
    for _ in range(rounds):
        approved(job, office)
        OrderApproval.objects.all().delete()
        found = [both(desks, job, "#approve-form", what="approve")]
        found.append(both(desks, job, "#send-form", supplier="Ash"))
        found.append(both(desks, job, ".sending > form", what="all"))
        items = order_progress(job).items.values()
        exact = all(item.ordered == item.sent == item.came for item in items)
        once = OrderApproval.objects.count() == OrderSending.objects.count() == 1
        told = all(statuses == [302, 409] for statuses in found)
        tally.of(*[] if exact and once and told else [f"{found}, {[*items]}"])
        OrderSending.objects.all().delete()
        OrderApproval.objects.all().delete()
    tally.check()


@pytest.mark.parametrize("rounds", ROUNDS)
def test_what_came_is_counted_once_for_each_who_wrote_it(
    desks: list[Client], job: Job, office: Person, rounds: int, tally: Tally
) -> None:
    """Of two who write down the same box one is told, so that it does not count twice."""
    approved(job, office)
    for _ in range(rounds):
        sent_to(job, "Ash", office)
        form = dom(desks[0].get(f"/jobs/{job.pk}/order/")).one(".sending > form")
        first = form.all('input[name^="came-"]')[0].attribute("name")
        statuses = both(desks, job, ".sending > form", what="these", **{first: "1"})
        came = OrderArrival.objects.filter(line_id=int(first.removeprefix("came-")))
        amounts = [each.amount for each in came]
        tally.of(*[] if (statuses, amounts) == ([302, 409], [1]) else [f"{statuses} {amounts}"])
        OrderSending.objects.all().delete()
    tally.check()
