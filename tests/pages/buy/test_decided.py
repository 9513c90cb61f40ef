"""What the office decided of a job's order holds when it is bought for."""

from collections.abc import Callable

from django.test import Client

from fronts.models.order_approvals import DISMISSED
from fronts.selectors.approved_items import buying_names_of
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import HINGES, OpeningFactory, door_and_drawer, overlaid
from tests.ordering import approved, settled
from tests.pages.suppliers.offered import offer


def test_an_order_that_stays_as_it_is_says_so(
    office: Person, shop: Shop, job: Job, signed_in: Callable[[Person], Client]
) -> None:
    """Five are needed since a door came; the office has two, so that three are bought."""
    overlaid(job)
    door_and_drawer(job)
    approved(job, office)
    OpeningFactory.create(cabinet__job=job, cabinet__label="B2", cabinet__x=600)
    settled(job, DISMISSED, office, "on the shelf")
    offer(shop, buying_names_of(job)[HINGES], price="2.00")

    page = dom(signed_in(office).get("/shop/buy/", {"job": job.pk}))

    row = page.one(".buy-from tbody tr")
    assert row.one("summary").words == "3"
    assert "the order stays at 3" in row.one("dl").words
    assert row.one("dl dd").words.startswith("5")
