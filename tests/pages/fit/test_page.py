"""Fitting: the cabinets by wall, and a cabinet's page with what was measured."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client
from pytest_django.fixtures import DjangoAssertNumQueries

from fronts.models import Cabinet, FitRecord, Opening
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import (
    NOW,
    CabinetFactory,
    JobFactory,
    door_and_drawer,
)
from tests.pages.kitchens import seen_in
from tests.saying import standard_set

SignIn = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """A cabinet with an inset door (gaps of 3/32 in) and a drawer."""
    standard_set(owner=job, at=NOW, mount="inset", hinge_end=inches(3, 2))
    cabinet = door_and_drawer(job)
    CabinetFactory.create(job=job, label="W1", wall="East", kind="wall", x=inches(20))
    return cabinet


def address(cabinet: Cabinet) -> str:
    """The page of the cabinet."""
    return f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/"


def record(client: Client, cabinet: Cabinet, **changes: str) -> Any:
    """Record what was measured round the door, unless told otherwise."""
    return client.post(
        address(cabinet), {"front": "B1.a", "state": "done", "gap_left": "1/8"} | changes
    )


def test_the_cabinets_stand_by_wall(cabinet: Cabinet, installer: Person, signed_in: SignIn) -> None:
    """Each wall has its cabinets, with what is in them and how far they are."""
    page = dom(signed_in(installer).get(f"/jobs/{cabinet.job_id}/fit/"))

    north, east = page.all("section.wall")
    assert [wall.one("h2").words for wall in (north, east)] == ["Wall North", "Wall East"]
    assert north.one(".name").words == "B1"
    assert "○ a door, hinged left ○ b drawer" in page.words
    assert "not done" in page.words
    assert "0 of 2 fronts done" in page.words


def test_a_cabinet_is_fitted_once_all_its_fronts_are(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """One of two fronts is half the way."""
    client, fit = signed_in(installer), f"/jobs/{cabinet.job_id}/fit/"

    record(client, cabinet)
    assert "1 of 2 done" in dom(client.get(fit)).words

    record(client, cabinet, front="B1.b")
    assert "2 of 2 fronts done" in dom(client.get(fit)).words


def test_the_cabinets_page_has_what_is_needed_to_hang_its_fronts(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """Sizes, shims, screws, holes, hinges, steps, cautions, and the sheet to print."""
    page = dom(signed_in(installer).get(address(cabinet)))

    assert "14 13/16 × 18 13/16" in page.words  # 15 × 19 less twice 3/32, down to 1/16
    for words in (
        "Side offset",
        "Side shims",
        "Screws",
        "Hole places",
        "On the door",
        "Plates",
        "Knob",
    ):
        assert words in page.words
    assert "Order of work" in page.words
    assert "Take care" in page.words
    assert len(page.all("svg")) >= 3
    assert f"/jobs/{cabinet.job_id}/sheets/fitting/{cabinet.pk}/" in page.addresses
    assert "planned 3/32" in page.words
    order = [part.id or part.attribute("class") for part in page.all(".drawn, .works, section[id]")]
    assert order[:3] == ["drawn", "record-B1.a-front", "record-B1.a-work"]
    door = page.one("[id='record-B1.a-front']")
    assert door.has("[id='record-B1.a']")
    assert "#record-B1.b-front" in page.addresses


def test_what_was_measured_stands_beside_what_was_planned(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """The difference of each gap is shown, with who measured it."""
    client = signed_in(installer)

    answer = record(client, cabinet, gap_left="1/8", gap_right="1/16", gap_top="3/32", note="ok")

    assert (answer.status_code, answer["Location"]) == (302, f"{address(cabinet)}#record-B1.a")
    record_of_a = dom(client.get(address(cabinet))).one("[id='record-B1.a']")
    gaps = record_of_a.one("table.gaps")
    assert "ines" in record_of_a.words
    assert [row.words for row in gaps.all("tbody tr")][:3] == [
        "left 3/32 1/8 +1/32", "right 3/32 1/16 −1/32", "top 3/32 3/32 0",
    ]  # fmt: skip


def test_htmx_gets_the_one_front(cabinet: Cabinet, installer: Person, signed_in: SignIn) -> None:
    """What others have typed into other fronts' fields is left alone."""
    answer = signed_in(installer).post(
        address(cabinet), {"front": "B1.a", "state": "done", "gap_left": "1/8"}, headers=HTMX
    )

    assert answer.status_code == 200
    assert dom(answer).first.id == "record-B1.a"
    assert "job-changed" in answer["HX-Trigger-After-Settle"]  # Undo follows it.
    assert not dom(answer).has("[id='record-B1.b']")


@pytest.mark.parametrize(
    "typed", ["1/0", "twelve", "-1/8", "1e400", "100 m", "1/3", "99999999999999999999 in"]
)
def test_a_gap_that_is_none_is_refused_beside_its_field(
    typed: str, cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """The message names what was typed, and the other fields keep theirs."""
    answer = record(signed_in(installer), cabinet, gap_left=typed, gap_right="1/16", note="tight")

    assert answer.status_code == 422
    assert dom(answer).has("[id='record-B1.a-gap_left_error']")
    assert f"{typed}" in dom(answer).values
    assert "1/16" in dom(answer).values
    assert "tight" in dom(answer).values
    assert not FitRecord.objects.exists()


def test_measuring_again_starts_from_what_was_recorded(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """Only what has changed is typed anew."""
    client = signed_in(installer)
    record(client, cabinet, gap_left="1/8", gap_top="3/32", note="tight at the top")

    record_of_a = dom(client.get(address(cabinet))).one("[id='record-B1.a']")

    assert "Correct it" in record_of_a.words
    for kept in ("1/8", "3/32", "tight at the top"):
        assert kept in record_of_a.values


@pytest.mark.parametrize("who", ["installer", "owner"])
def test_an_opening_measured_from_here_leads_back_here(
    who: str, cabinet: Cabinet, request: pytest.FixtureRequest, signed_in: SignIn
) -> None:
    """Also after a slip in the form, and from its link to leave it."""
    client, back = signed_in(request.getfixturevalue(who)), f"?back=fit-{cabinet.pk}"
    opening = Opening.objects.get(cabinet=cabinet, label="a")
    way = f"/jobs/{cabinet.job_id}/openings/{opening.pk}/measured/{back}"
    link = dom(client.get(address(cabinet))).one(f"a[href='{way}']")
    assert link.words == "Measure opening a again"

    form = client.get(way)
    assert way in dom(form).addresses
    assert address(cabinet) in dom(form).addresses
    typed = seen_in(dom(form))
    refused = client.post(way, typed | {"measured_width_top": "1/0"})
    assert refused.status_code == 422
    assert way in dom(refused).addresses

    answer = client.post(way, typed)
    assert (answer.status_code, answer["Location"]) == (302, address(cabinet))


@pytest.mark.parametrize(
    "back",
    ["https://elsewhere.example/", "//elsewhere.example", "fit-", "fit-1x", "fit-" + "9" * 30],
)
def test_no_address_leads_elsewhere(
    back: str, cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """A word that is not known leads to the kitchen, as without one."""
    client = signed_in(installer)
    opening = Opening.objects.get(cabinet=cabinet, label="a")
    way = f"/jobs/{cabinet.job_id}/openings/{opening.pk}/measured/?back={back}"
    seen = seen_in(dom(client.get(way)))

    answer = client.post(way, seen)

    assert answer["Location"].startswith(f"/jobs/{cabinet.job_id}/?at=opening")


def test_a_stop_stands_over_the_order_of_work_and_says_what_its_link_does(
    cabinet: Cabinet, owner: Person, installer: Person, signed_in: SignIn
) -> None:
    """Nothing is to be hung before it is settled; each role is led to what it may do."""
    door = Opening.objects.filter(cabinet=cabinet, label="a")
    door.update(measured_diagonal_1=inches(25), measured_diagonal_2=inches(24))

    page = dom(signed_in(owner).get(address(cabinet)))
    assert "Only after the stop is settled." in page.words
    back = f".found a[href$='?back=fit-{cabinet.pk}']"
    assert "Change B1.a" in [link.words for link in page.all(back)]
    for_installer = dom(signed_in(installer).get(address(cabinet)))
    assert "Measure B1.a again" in [link.words for link in for_installer.all(back)]


@pytest.mark.parametrize("front", ["B9.z", "", "x" * 500, "B1.a\x00"])
def test_a_front_that_is_gone_is_said_so(
    front: str, cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """The kitchen may be changed while somebody stands before it."""
    answer = record(signed_in(installer), cabinet, front=front)

    assert answer.status_code == 422
    assert "no longer part of cabinet B1" in dom(answer).words
    assert not FitRecord.objects.exists()


def test_a_note_too_long_stays_as_typed(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """The message stands at the note."""
    answer = record(signed_in(installer), cabinet, note="x" * 401)

    assert answer.status_code == 422
    assert "Keep the note under 400 characters." in dom(answer).words
    assert "x" * 401 in dom(answer).values


@pytest.mark.parametrize("path", ["fit/", "fit/{cabinet}/"])
def test_another_shop_sees_nothing(
    path: str, cabinet: Cabinet, stranger: Person, signed_in: SignIn
) -> None:
    """Neither the list nor a cabinet of another shop exists."""
    client = signed_in(stranger)

    assert (
        client.get(f"/jobs/{cabinet.job_id}/{path.format(cabinet=cabinet.pk)}").status_code == 404
    )
    assert record(client, cabinet).status_code == 404


def test_a_cabinet_of_another_job_is_not_there(
    cabinet: Cabinet, shop: object, installer: Person, signed_in: SignIn
) -> None:
    """A cabinet belongs to its job."""
    other = JobFactory.create(shop=cabinet.job.shop)

    assert signed_in(installer).get(f"/jobs/{other.pk}/fit/{cabinet.pk}/").status_code == 404


def test_other_methods_are_refused(cabinet: Cabinet, installer: Person, signed_in: SignIn) -> None:
    """The list is only read; a cabinet is read and posted to."""
    client = signed_in(installer)

    assert client.post(f"/jobs/{cabinet.job_id}/fit/").status_code == 405
    assert client.put(address(cabinet)).status_code == 405


def test_the_pages_take_few_queries(
    cabinet: Cabinet,
    installer: Person,
    signed_in: SignIn,
    django_assert_max_num_queries: DjangoAssertNumQueries,
) -> None:
    """However many cabinets and fronts there are."""
    client = signed_in(installer)

    for path in (address(cabinet), f"/jobs/{cabinet.job_id}/fit/"):
        with django_assert_max_num_queries(38):
            client.get(path)


def test_a_kitchen_without_cabinets_says_what_comes_here(
    job: Job, installer: Person, signed_in: SignIn
) -> None:
    """The empty list leads to where it is filled."""
    assert (
        "There are no cabinets yet" in dom(signed_in(installer).get(f"/jobs/{job.pk}/fit/")).words
    )
