"""The cut page says whether fronts will go, by the shop's own numbers."""

from collections.abc import Callable
from fractions import Fraction

from django.test import Client

from fronts.rules.practice import inches
from fronts.services.stock import practice_set
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW
from tests.pages.cut.planned import address, cut_kitchen

SignIn = Callable[[Person], Client]


def test_the_shop_s_errors_decide(job: Job, owner: Person, signed_in: SignIn) -> None:
    """Folded while all is well; a careless shop is told, and led to its number."""
    client = signed_in(owner)
    cut_kitchen(job)
    well = dom(client.get(address(job))).one("details.outlook")
    assert not well.carries("open")
    assert "may not come true" not in well.words

    careless: dict[str, Fraction | None] = {"setting_error": inches(1, 2)}
    practice_set(owner=job.shop, at=NOW, values=careless)

    page = dom(client.get(address(job)))
    told = page.one("details.outlook")
    assert told.carries("open")
    assert "may not come true" in told.one("summary").words
    assert {each.words for each in told.all("strong")} == {"may not come true"}
    assert "root-sum-square" in told.words
    assert "worst case" in told.words
    assert "/shop/standard/errors/" in told.addresses


def test_whoever_may_not_change_the_numbers_is_not_sent_there(
    job: Job, installer: Person, signed_in: SignIn
) -> None:
    """The figures are everybody's."""
    cut_kitchen(job)
    told = dom(signed_in(installer).get(address(job))).one("details.outlook")

    assert "Expected" in told.words
    assert told.addresses == []
