"""The cut page while a plan is being worked out: how far it is, why it waits, calling it off."""

from collections.abc import Callable, Iterator

import pytest
from django.test import Client

from shopjobs.models import Job, Person
from shopjobs.services.lost_tasks import worker_beat
from tests.dom import dom
from tests.pages.cut.planned import HTMX, address, cut_kitchen, make_plan
from tests.queue_work import in_queue, work_off

SignIn = Callable[[Person], Client]


@pytest.fixture(autouse=True)
def queue() -> Iterator[None]:
    """Plans wait in the queue."""
    with in_queue:
        yield


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """The job with a kitchen in plywood, maple and MDF."""
    return cut_kitchen(job)


def test_without_a_worker_the_page_says_so(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Whoever asked learns at once that nothing will come, and whom to ask."""
    client = signed_in(office)
    make_plan(client, kitchen_job)

    for answer in (
        client.get(address(kitchen_job)),
        client.get(address(kitchen_job), headers=HTMX),
    ):
        page = dom(answer)
        assert "No worker is running" in page.words
        assert "Now " not in page.words
        assert page.one("#cut-plan").attribute("hx-trigger") == "load delay:5s"


def test_with_a_worker_it_says_what_is_being_done(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """The materials that are done, the one that is next; a page without scripts reloads itself."""
    client = signed_in(office)
    make_plan(client, kitchen_job)
    worker_beat(name="bench-1", host="bench", pid=1)
    work_off(1)

    page = dom(client.get(address(kitchen_job)))

    assert "1 of 4 materials worked out" in page.words
    assert "No worker" not in page.words
    assert "Now birch plywood 3/4" in page.words
    assert page.one("noscript meta").attribute("http-equiv") == "refresh"
    assert page.one("#cut-plan").attribute("hx-trigger") == "load delay:1s"


@pytest.mark.parametrize("htmx", [False, True])
def test_a_plan_is_called_off(
    htmx: bool, kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """The page says by whom, and offers the form again."""
    client = signed_in(office)
    make_plan(client, kitchen_job)
    headers = HTMX if htmx else {}

    answer = client.post(f"{address(kitchen_job)}cancel/", headers=headers, follow=not htmx)

    page = dom(answer)
    assert "Cancelled by otto. Make the plan again." in page.words
    assert page.has("#cut-plan form button")
    assert not page.has("#cut-plan[hx-trigger]")


def test_an_installer_watches_but_calls_nothing_off(
    kitchen_job: Job, office: Person, installer: Person, signed_in: SignIn
) -> None:
    """Only who may begin a plan may cancel it."""
    make_plan(signed_in(office), kitchen_job)
    client = signed_in(installer)

    page = dom(client.get(address(kitchen_job)))
    assert "0 of 4 materials worked out" in page.words
    assert not page.has("#cut-plan form")
    assert client.post(f"{address(kitchen_job)}cancel/").status_code == 403
    assert "0 of 4" in dom(client.get(address(kitchen_job))).words


def test_another_shop_calls_nothing_off(
    kitchen_job: Job, office: Person, stranger: Person, signed_in: SignIn
) -> None:
    """For anyone else there is no such plan."""
    make_plan(signed_in(office), kitchen_job)

    assert signed_in(stranger).post(f"{address(kitchen_job)}cancel/").status_code == 404
    assert "0 of 4" in dom(signed_in(office).get(address(kitchen_job))).words
