"""The cut page: the list of parts, the form for a plan, and the plan that was made."""

from collections.abc import Callable
from datetime import timedelta
from typing import Any

import pytest
from django.test import Client
from django.utils import timezone
from pytest_django.fixtures import DjangoAssertNumQueries

from fronts.models import CutPlan, PlanState
from fronts.rules.practice import inches
from fronts.selectors.kitchens import schedule_of
from fronts.selectors.plans import Group, groups_of
from fronts.services.cutting import plan_work
from fronts.services.standards import standard_set
from shopjobs.models import Job, Person
from tests.factories import NOW, BoxFactory, CabinetFactory, OpeningFactory

SignIn = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}
HALF = inches(1, 2)


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """A plywood door, a five-piece maple door, and a stack of three MDF drawer fronts."""
    standard_set(
        owner=job, at=NOW, overlay_left=HALF, overlay_right=HALF, overlay_top=HALF,
        overlay_bottom=HALF,
    )  # fmt: skip
    one = CabinetFactory.create(job=job)
    OpeningFactory.create(cabinet=one, front_material="birch plywood")
    two = CabinetFactory.create(job=job, label="B2", x=inches(18))
    OpeningFactory.create(cabinet=two, front_build="five-piece", front_material="hard maple")
    three = CabinetFactory.create(job=job, label="B3", x=inches(36))
    stack = OpeningFactory.create(
        cabinet=three, closed_by="drawers", hinged="", count=3, front_material="MDF"
    )
    for index in range(3):
        BoxFactory.create(opening=stack, index=index)
    return job


def address(job: Job) -> str:
    """The cut page of the job."""
    return f"/jobs/{job.pk}/cut/"


def groups(job: Job) -> dict[str, Group]:
    """The job's materials by name; the frame's sticks as "frame"."""
    found = groups_of(schedule_of(job).parts)
    return {"frame" if each.sticks else each.material: each for each in found}


def make_plan(client: Client, job: Job, *, htmx: bool = False, **changes: str) -> Any:
    """Post the form as it is offered, but for the changes (by material, field and row)."""
    posted = {"kerf": "1/8", "trim": "1/4", "ends": "1/2", "safe": "3", "seconds": "5"}
    for name, group in groups(job).items():
        posted |= {f"{group.key}-0-length": "96", f"{group.key}-0-width": "48"}
        if group.sticks:
            posted[f"{group.key}-kind"] = "sticks"
        for said, typed in changes.items():
            material, _, field = said.partition("__")
            if field and material == name.partition(" ")[0]:
                posted[f"{group.key}-{field.replace('_', '-')}"] = typed
    posted |= {name: typed for name, typed in changes.items() if "__" not in name}
    return client.post(address(job), posted, headers=HTMX if htmx else {})


def finish(job: Job) -> CutPlan:
    """Work out the plan that was begun."""
    begun = CutPlan.objects.get(job=job, state=PlanState.WORKING)
    plan_work(plan_id=begun.pk)
    begun.refresh_from_db()
    return begun


def test_the_list_has_every_part_by_material(
    kitchen_job: Job, installer: Person, signed_in: SignIn
) -> None:
    """Equal sizes stand together, with their count, what they are, and for which fronts."""
    page = signed_in(installer).get(address(kitchen_job)).text

    assert "birch plywood, 3/4 thick" in page
    assert "hard maple, 3/4 thick, 2 1/4 wide" in page
    assert "B2.a ×2" in page  # two stiles
    assert "Jigs and shims" in page


def test_a_plan_is_begun_and_then_shown(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Each material's plan says what it takes and what is proved, drawn, with its cuts."""
    client = signed_in(office)

    answer = make_plan(client, kitchen_job)
    assert answer.status_code == 302
    assert "0 of 4</strong> materials worked out" in client.get(address(kitchen_job)).text

    finish(kitchen_job)
    page = client.get(address(kitchen_job)).text
    assert page.count("1 of 96 × 48 in") == 3
    assert "1 of 96 in" in page
    assert page.count("proved least") == 4
    assert "Made by otto" in page
    assert "cuts in order" in page
    assert "birch plywood 3/4: " in page  # edge banding
    assert "have changed" not in page


def test_htmx_sees_how_far_it_is_until_it_is_made(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """The part asks again by itself while the plan is at work, and stops when it is made."""
    client = signed_in(office)

    answer = make_plan(client, kitchen_job, htmx=True)
    assert answer.text.strip().startswith('<div id="cut-plan" class="at-work"')
    assert 'hx-trigger="load delay:1s"' in answer.text

    finish(kitchen_job)
    answer = client.get(address(kitchen_job), headers=HTMX)
    assert answer.text.strip().startswith('<div id="cut-plan">')
    assert "hx-trigger" not in answer.text
    assert "Made by otto" in answer.text


def test_the_plan_says_when_the_parts_have_changed(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """A plan from other parts is not to be cut from, on the page and on the sheet."""
    client = signed_in(office)
    make_plan(client, kitchen_job)
    finish(kitchen_job)

    OpeningFactory.create(cabinet__job=kitchen_job, cabinet__label="B9", cabinet__x=inches(90))

    assert "The parts have changed" in client.get(address(kitchen_job)).text


def test_another_plan_is_asked_as_the_last_one(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """What was typed once is offered again."""
    client = signed_in(office)
    make_plan(client, kitchen_job, kerf="3/32", birch__0_price="61.50", birch__0_count="4")
    finish(kitchen_job)

    page = client.get(address(kitchen_job)).text

    assert 'value="3/32"' in page
    assert 'value="61.50"' in page
    assert 'name="' + groups(kitchen_job)["birch plywood"].key + '-0-count" value="4"' in page


def test_prices_give_the_cost(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """With a price on every material the plan adds them up."""
    client = signed_in(office)
    make_plan(
        client, kitchen_job, birch__0_price="60", hard__0_price="40", frame__0_price="9.50",
        MDF__0_price="30",
    )  # fmt: skip
    finish(kitchen_job)

    assert "139.50 in all" in client.get(address(kitchen_job)).text


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

    assert "1 of 40 × 30 in" in client.get(address(kitchen_job)).text


def test_a_drawer_stack_is_cut_as_one_block(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """With the grain upright, the fronts of the stack lie on each other in their order."""
    make_plan(signed_in(office), kitchen_job, upright="on")
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


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"kerf": ""}, "Enter a length for “saw kerf”."),
        ({"kerf": "2"}, "No blade is that wide"),
        ({"kerf": "thin"}, "“thin” is not a length"),
        ({"trim": "1/0"}, "divides by zero"),
        ({"trim": "30"}, "The trim takes all of it"),
        ({"seconds": "86400"}, "Select a valid choice"),
        ({"birch__0_length": ""}, "Enter a length for “length”."),
        ({"birch__0_length": "0"}, "is nothing"),
        ({"birch__0_width": ""}, "Enter the sheet&#x27;s width."),
        ({"birch__0_width": "1e400"}, "is not a length"),
        ({"birch__0_length": "20", "birch__0_width": "20"}, "is larger than every size given"),
        ({"birch__1_width": "20"}, "Enter the length too."),
        ({"birch__0_count": "0"}, "greater than or equal to 1"),
        ({"birch__0_count": "some"}, "Enter a whole number"),
        ({"birch__0_count": "9" * 40}, "less than or equal to"),
        ({"birch__0_price": "-1"}, "greater than or equal to 0"),
        ({"birch__0_price": "1e99"}, "digits"),
        ({"birch__0_price": "dear"}, "Enter a number"),
        ({"birch__0_price": "60", "birch__1_length": "40", "birch__1_width": "30"},
         "Give every size a price, or none."),
        ({"birch__0_grain": "up"}, "Select a valid choice"),
        ({"frame__kind": "logs"}, "Select a valid choice"),
        ({"frame__0_length": "12"}, "is larger than every size given"),
    ],
)  # fmt: skip
def test_what_makes_no_plan_is_refused_at_its_field(
    changes: dict[str, str], said: str, kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """The message says what is wanted; what was typed stays; nothing is begun."""
    answer = make_plan(signed_in(office), kitchen_job, htmx=True, safe="2 1/2", **changes)

    assert answer.status_code == 422
    assert said in answer.text
    assert 'value="2 1/2"' in answer.text
    assert not CutPlan.objects.exists()


def test_a_second_press_begins_nothing(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """While a plan is at work, another is refused in words."""
    client = signed_in(office)
    make_plan(client, kitchen_job)

    answer = make_plan(client, kitchen_job)

    assert answer.status_code == 422
    assert "is being worked out already" in answer.text
    assert CutPlan.objects.count() == 1


def test_a_plan_that_died_with_its_server_says_so(
    kitchen_job: Job, office: Person, signed_in: SignIn
) -> None:
    """It does not look as if it were still at work, and another can be made."""
    client = signed_in(office)
    make_plan(client, kitchen_job)
    CutPlan.objects.update(due_at=timezone.now() - timedelta(seconds=1))

    page = client.get(address(kitchen_job)).text

    assert "The server was stopped" in page
    assert "Make the plan" in page
    assert "materials worked out" not in page
    assert make_plan(client, kitchen_job).status_code == 302


def test_the_installer_sees_the_plan_but_makes_none(
    kitchen_job: Job, installer: Person, signed_in: SignIn
) -> None:
    """Making a plan is the owner's and the office's."""
    client = signed_in(installer)

    assert "Make the plan" not in client.get(address(kitchen_job)).text
    assert make_plan(client, kitchen_job).status_code == 403


def test_another_shop_sees_nothing(kitchen_job: Job, stranger: Person, signed_in: SignIn) -> None:
    """Neither the list nor the plan of another shop exists."""
    client = signed_in(stranger)

    assert client.get(address(kitchen_job)).status_code == 404
    assert make_plan(client, kitchen_job).status_code == 404


def test_other_methods_are_refused(kitchen_job: Job, office: Person, signed_in: SignIn) -> None:
    """The page is read and posted to."""
    assert signed_in(office).patch(address(kitchen_job)).status_code == 405


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

    with django_assert_max_num_queries(20):
        client.get(address(kitchen_job))


def test_a_job_without_a_kitchen_says_what_comes_here(
    job: Job, office: Person, signed_in: SignIn
) -> None:
    """The empty page leads to where it is filled; a plan of nothing is not begun."""
    client = signed_in(office)

    assert "Nothing to cut yet" in client.get(address(job)).text
    assert make_plan(client, job).status_code == 422
    assert not CutPlan.objects.exists()
