"""The shop's days: weekdays, stages, jobs at once, closed days; and who may change them."""

from datetime import date

import pytest
from django.utils import timezone

from fronts.models import ClosedDays, ShopDates
from fronts.rules.date_facts import ClosedDays as ClosedFacts
from fronts.selectors.dates import shop_dates_of
from fronts.services.dates import closed_days_add
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.pages.dates.conftest import SignIn, send

ADDRESS = "/shop/dates/"
HOLIDAYS = {"name": "summer holidays", "first": "2027-08-02", "last": "2027-08-13"}


def test_the_office_sets_the_shops_days(
    fitted_first: Job, office: Person, signed_in: SignIn
) -> None:
    """They hold for every job at once; the office takes them back."""
    client = signed_in(office)

    assert send(client, ADDRESS, "shop-dates", cut_days="7", friday=None).status_code == 302
    row = shop_dates_of(fitted_first.shop)
    assert (row.cut_days, row.friday, row.monday, row.finish_days) == (7, False, True, 5)
    assert "7 working days" in client.get(f"/jobs/{fitted_first.pk}/dates/").text
    undone = Revision.objects.filter(shop=fitted_first.shop, job=None, can_undo=True).latest("pk")
    assert dom(client.get(ADDRESS)).has(".undo-bar form")
    assert not dom(client.get(ADDRESS)).has(".undo-bar > a")
    client.post("/shop/undo/", {"revision": undone.pk})
    assert not ShopDates.objects.exists()


@pytest.mark.parametrize(
    ("typed", "name", "words"),
    [
        ({"cut_days": "0"}, "cut_days", "Give 1 or more."),
        ({"cut_days": ""}, "cut_days", "Enter a number."),
        ({"cut_days": "9" * 400}, "cut_days", "Give 250 at most."),
        ({"fit_at_once": "many"}, "fit_at_once", "Enter a whole number."),
        ({"lead_days": "\0"}, "lead_days", "Enter a whole number."),
        (dict.fromkeys(("monday", "tuesday", "wednesday", "thursday", "friday")), "monday",
         "Choose one day of the week at least."),
    ],
)  # fmt: skip
def test_numbers_that_can_not_be(
    typed: dict[str, str], name: str, words: str, owner: Person, signed_in: SignIn
) -> None:
    """A clear word at the field, and nothing is kept."""
    answer = send(signed_in(owner), ADDRESS, "shop-dates", **typed)

    assert answer.status_code == 422
    assert dom(answer).one(f"#shop-dates-{name}_error").words == words
    assert not ShopDates.objects.exists()


def test_the_shop_is_closed_changed_and_open_again(office: Person, signed_in: SignIn) -> None:
    """A stretch of days with a name; a single day has no last one."""
    client = signed_in(office)

    assert send(client, ADDRESS, "closed-new", **HOLIDAYS).status_code == 302
    row = ClosedDays.objects.get()
    assert "Mon 2 Aug 2027 to Fri 13 Aug 2027" in dom(client.get(ADDRESS)).one(".closed-list").words
    send(client, f"{ADDRESS}closed/{row.pk}/", "closed", last="", name="wedding")
    row.refresh_from_db()
    assert (row.first, row.last, row.name) == (date(2027, 8, 2), date(2027, 8, 2), "wedding")
    client.post(f"{ADDRESS}closed/{row.pk}/delete/")
    assert not ClosedDays.objects.exists()
    assert Revision.objects.latest("pk").text == "Not closed any more for wedding, 2 August"


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ({"name": ""}, "name"),
        ({"name": "x" * 61}, "name"),
        ({"name": "a\0b"}, "name"),
        ({"first": ""}, "first"),
        ({"first": "0001-01-01"}, "first"),
        ({"last": "2027-08-01"}, "last"),
        ({"last": "2029-08-01"}, "last"),
        ({"last": "9999-12-31"}, "last"),
    ],
)
def test_closed_days_that_can_not_be(
    typed: dict[str, str], name: str, owner: Person, signed_in: SignIn
) -> None:
    """A clear word at the field; what was typed stays."""
    answer = send(signed_in(owner), ADDRESS, "closed-new", **(HOLIDAYS | typed))

    assert answer.status_code == 422
    page = dom(answer)
    assert page.has(f"#closed-new #closed-{name}_error")
    assert page.one("#closed-first").value == (HOLIDAYS | typed)["first"]
    assert not ClosedDays.objects.exists()


def test_who_fits_changes_nothing_of_it_and_no_other_shop_finds_it(
    office: Person, installer: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Neither its pages nor what is sent to them."""
    closed = ClosedFacts(date(2027, 8, 2), date(2027, 8, 2), "fair")
    assert office.shop is not None
    row = closed_days_add(shop=office.shop, facts=closed, by=office, at=timezone.now())
    one = f"{ADDRESS}closed/{row.pk}/"

    fits, other = signed_in(installer), signed_in(stranger)
    assert [fits.get(each).status_code for each in (ADDRESS, one)] == [403, 403]
    assert fits.post(f"{one}delete/").status_code == 403
    assert [other.get(one).status_code, other.post(f"{one}delete/").status_code] == [404, 404]
    assert "fair" not in other.get(ADDRESS).text
    assert ClosedDays.objects.count() == 1
