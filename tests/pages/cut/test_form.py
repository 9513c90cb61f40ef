"""The form that begins a cutting plan: who may, and what it refuses."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import CutPlan
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.pages.cut.planned import address, cut_kitchen, finish, groups, make_plan
from tests.queue_work import in_queue

SignIn = Callable[[Person], Client]


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """The job with a kitchen in plywood, maple and MDF."""
    return cut_kitchen(job)


def test_another_plan_is_asked_as_the_last_one(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """What was typed once is offered again."""
    client = signed_in(office)
    make_plan(client, kitchen_job, kerf="3/32", birch__0_price="61.50", birch__0_count="4")
    finish(kitchen_job)

    page = dom(client.get(address(kitchen_job)))

    assert "3/32" in page.values
    assert "61.50" in page.values
    plywood = groups(kitchen_job)["birch plywood"].key
    assert page.field(f"{plywood}-0-count").value == "4"


def test_a_material_comes_from_up_to_three_sizes_of_stock(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """What is bought, and two offcuts to use up; each is asked of the plan."""
    client = signed_in(office)
    plywood = groups(kitchen_job)["birch plywood"].key
    fields = dom(client.get(address(kitchen_job))).all(
        f"input[name^='{plywood}-'][name$='-length']"
    )
    sizes: dict[str, Any] = {f"birch__{row}_length": f"{50 + row}" for row in range(1, len(fields))}
    widths: dict[str, Any] = {name.replace("length", "width"): "40" for name in sizes}
    make_plan(client, kitchen_job, **sizes, **widths)
    finish(kitchen_job)

    page = dom(client.get(address(kitchen_job)))
    assert [page.field(f"{plywood}-{row}-length").value for row in range(3)] == ["96", "51", "52"]
    assert len(fields) == 3


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"kerf": ""}, "Enter a length for “saw kerf”."),
        ({"kerf": "2"}, "No blade is that wide"),
        ({"kerf": "thin"}, "“thin” is not a length"),
        ({"trim": "1/0"}, "divides by zero"),
        ({"trim": "30"}, "The trim takes all of it"),
        ({"seconds": "86400"}, "Choose one from the list"),
        ({"birch__0_length": ""}, "Enter a length for “length”."),
        ({"birch__0_length": "0"}, "is nothing"),
        ({"birch__0_width": ""}, "Enter the sheet's width."),
        ({"birch__0_width": "1e400"}, "is not a length"),
        ({"birch__0_length": "20", "birch__0_width": "20"}, "is larger than every size given"),
        ({"birch__1_width": "20"}, "Enter the length too."),
        ({"birch__0_count": "0"}, "Give 1 or more"),
        ({"birch__0_count": "some"}, "Enter a whole number"),
        ({"birch__0_count": "9" * 40}, " at most."),
        ({"birch__0_price": "-1"}, "Give 0 or more"),
        ({"birch__0_price": "1e99"}, "digits"),
        ({"birch__0_price": "dear"}, "Enter a number"),
        ({"birch__0_price": "60", "birch__1_length": "40", "birch__1_width": "30"},
         "Give every size a price, or none."),
        ({"birch__0_grain": "up"}, "Choose one from the list"),
        ({"frame__kind": "logs"}, "Choose one from the list"),
        ({"frame__0_length": "12"}, "is larger than every size given"),
    ],
)  # fmt: skip
def test_what_makes_no_plan_is_refused_at_its_field(
    changes: dict[str, str], said: str, kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """The message says what is wanted; what was typed stays; nothing is begun."""
    answer = make_plan(signed_in(office), kitchen_job, htmx=True, safe="2 1/2", **changes)

    assert answer.status_code == 422
    assert said in dom(answer).words
    assert "2 1/2" in dom(answer).values
    assert not CutPlan.objects.exists()


@in_queue
def test_a_second_press_begins_nothing(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """While a plan is at work, another is refused in words."""
    client = signed_in(office)
    make_plan(client, kitchen_job)

    answer = make_plan(client, kitchen_job)

    assert answer.status_code == 422
    assert "is being worked out already" in dom(answer).words
    assert CutPlan.objects.count() == 1


def test_the_installer_sees_the_plan_but_makes_none(
    kitchen_job: Job, installer: Person, signed_in: SignIn
) -> None:
    """Making a plan is the owner's and the office's."""
    client = signed_in(installer)

    assert "Make the plan" not in dom(client.get(address(kitchen_job))).words
    assert make_plan(client, kitchen_job).status_code == 403


def test_another_shop_sees_nothing(kitchen_job: Job, stranger: Person, signed_in: SignIn) -> None:
    """Neither the list nor the plan of another shop exists."""
    client = signed_in(stranger)

    assert client.get(address(kitchen_job)).status_code == 404
    assert make_plan(client, kitchen_job).status_code == 404


def test_other_methods_are_refused(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """The page is read and posted to."""
    assert signed_in(office).patch(address(kitchen_job)).status_code == 405


def test_a_job_without_a_kitchen_says_what_comes_here(
    job: Job, office: Person, signed_in: SignIn
) -> None:
    """The empty page leads to where it is filled; a plan of nothing is not begun."""
    client = signed_in(office)

    assert "Nothing to cut yet" in dom(client.get(address(job))).words
    assert make_plan(client, job).status_code == 422
    assert not CutPlan.objects.exists()
