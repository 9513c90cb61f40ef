"""The cut page: the list of parts, and the plan that was made."""

from collections.abc import Callable

import pytest
from django.test import Client
from pytest_django.fixtures import DjangoAssertNumQueries

from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import BoxFactory, CabinetFactory, OpeningFactory, overlaid
from tests.pages.cut.planned import HTMX, address, cut_kitchen, finish, make_plan
from tests.queue_work import in_queue

SignIn = Callable[[Person], Client]


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """The job with a kitchen in plywood, maple and MDF."""
    return cut_kitchen(job)


def test_the_list_has_every_part_by_material(
    kitchen_job: Job, installer: Person, signed_in: SignIn
) -> None:
    """Equal sizes stand together, with their count, what they are, and for which fronts."""
    page = dom(signed_in(installer).get(address(kitchen_job)))

    assert "birch plywood, 3/4 thick" in page.words
    assert "hard maple, 3/4 thick, 2 1/4 wide" in page.words
    assert "B2.a ×2" in page.words  # two stiles
    assert "Jigs and shims" in page.words


@in_queue
def test_a_plan_is_begun_and_then_shown(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Each material's plan says what it takes and what is proved, drawn, with its cuts."""
    client = signed_in(office)

    answer = make_plan(client, kitchen_job)
    assert answer.status_code == 302
    assert "0 of 4 materials worked out" in dom(client.get(address(kitchen_job))).words

    finish(kitchen_job)
    page = dom(client.get(address(kitchen_job)))
    assert page.words.count("1 of 96 × 48 in") == 3
    assert "1 of 96 in" in page.words
    assert page.words.count("proved least") == 4
    assert "Made by otto" in page.words
    assert "cuts in order" in page.words
    assert "birch plywood 3/4: 7.5 ft" in page.words  # edge banding
    assert "have changed" not in page.words


@in_queue
def test_htmx_sees_how_far_it_is_until_it_is_made(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """The part asks again by itself while the plan is at work, and stops when it is made."""
    client = signed_in(office)

    answer = make_plan(client, kitchen_job, htmx=True)
    assert dom(answer).first.id == "cut-plan"
    assert dom(answer).first.attribute("hx-trigger") == "load delay:5s"

    finish(kitchen_job)
    answer = client.get(address(kitchen_job), headers=HTMX)
    assert dom(answer).first.id == "cut-plan"
    assert not dom(answer).has("[hx-trigger]")
    assert "Made by otto" in dom(answer).words


def test_the_plan_says_when_the_parts_have_changed(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """A plan from other parts is not to be cut from, on the page and on the sheet."""
    client = signed_in(office)
    make_plan(client, kitchen_job)
    finish(kitchen_job)

    OpeningFactory.create(cabinet__job=kitchen_job, cabinet__label="B9", cabinet__x=inches(90))

    assert "The parts have changed" in dom(client.get(address(kitchen_job))).words


def test_prices_give_the_cost(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """With a price on every material the plan adds them up."""
    client = signed_in(office)
    make_plan(
        client, kitchen_job, birch__0_price="60", hard__0_price="40", frame__0_price="9.50",
        MDF__0_price="30",
    )  # fmt: skip
    finish(kitchen_job)

    assert "139.50 in all" in dom(client.get(address(kitchen_job))).words


def test_offcuts_are_used_where_they_are_cheaper(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """A second size that costs nothing and is large enough spares the sheet."""
    client = signed_in(office)
    make_plan(
        client, kitchen_job, birch__0_price="60", birch__1_length="40", birch__1_width="30",
        birch__1_count="1", birch__1_price="0",
    )  # fmt: skip
    finish(kitchen_job)

    assert "1 of 40 × 30 in" in dom(client.get(address(kitchen_job))).words


def test_a_drawer_stack_is_cut_as_one_block(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """With the grain upright, the fronts of the stack lie on each other in their order."""
    make_plan(signed_in(office), kitchen_job, upright="on", MDF__0_grain="length")
    plan = finish(kitchen_job)

    placed = [
        each
        for found in plan.found
        for layout in found["layouts"]
        for each in layout["placed"]
        if each["block"] == "B3.a"
    ]
    assert [each["part"] for each in placed] == ["B3.a.1", "B3.a.2", "B3.a.3"]
    assert len({each["y"] for each in placed}) == 1


@in_queue
def test_the_page_takes_few_queries(
    kitchen_job: Job,
    office: Person,
    signed_in: SignIn,
    django_assert_max_num_queries: DjangoAssertNumQueries,
) -> None:
    """With a plan on it too; and the part that only waits takes fewer still."""
    client = signed_in(office)
    make_plan(client, kitchen_job)
    with django_assert_max_num_queries(6):
        client.get(address(kitchen_job), headers=HTMX)
    finish(kitchen_job)

    with django_assert_max_num_queries(28):
        client.get(address(kitchen_job))


def test_jigs_are_those_that_are_made(job: Job, installer: Person, signed_in: SignIn) -> None:
    """Two that differ by 1/64 in are one; the front that sits off by it says so."""
    overlaid(job)
    for number, rise in enumerate((inches(1, 2), inches(33, 64)), 1):
        cabinet = CabinetFactory.create(job=job, label=f"B{number}", wall=f"W{number}")
        hole = OpeningFactory.create(cabinet=cabinet, closed_by="pull-out", hinged="")
        BoxFactory.create(opening=hole, rise=rise)

    page = dom(signed_in(installer).get(address(job)))

    row = page.one("[aria-label='Jigs'] tbody tr")
    assert row.words.startswith("1 × 14 × 1 1/2")
    assert row.words.endswith("B1.a, B2.a (sits 1/64 higher)")
    assert "1 fewer jig than" in page.words
