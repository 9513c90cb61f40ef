"""The sheets for the saw: the plan on paper, and a sticker for each part."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.fingerprint import parts_fingerprint
from fronts.selectors.schedules import schedule_of
from fronts.services.cutting import Asked, plan_begin
from fronts.services.cutting_requests import usual_request
from shopjobs.models import Job, Person
from tests.factories import NOW, CabinetFactory, OpeningFactory, overlaid
from tests.pdf_text import words_of

SignIn = Callable[[Person], Client]


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """A plywood slab door and a five-piece maple door, both 16 in × 28 1/2 in."""
    overlaid(job)
    for material, build in (("birch plywood", "slab"), ("hard maple", "five-piece")):
        cabinet = CabinetFactory.create(job=job)
        OpeningFactory.create(cabinet=cabinet, front_material=material, front_build=build)
    return job


@pytest.fixture
def planned(kitchen_job: Job, office: Person) -> Job:
    """The job with a plan made from the usual stock."""
    parts = schedule_of(kitchen_job).parts
    asked = []
    for group in cutting_groups(parts):
        name = f"{group.material} {group.key}"
        asked.append(Asked(group.key, name, usual_request(group, "in")))
    plan_begin(
        job=kitchen_job, fingerprint=parts_fingerprint(parts), asked=asked, seconds=2,
        by=office, at=NOW,
    )  # fmt: skip
    return kitchen_job


def text_of(client: Client, path: str) -> str:
    """The words of a sheet, page after page, in one line."""
    answer = client.get(path)
    assert (answer.status_code, answer["Content-Type"]) == (200, "application/pdf")
    return words_of(answer.content)


def test_the_plan_on_paper(planned: Job, installer: Person, signed_in: SignIn) -> None:
    """Each layout with its cuts in order, what is proved, and the parts it was made from."""
    text = text_of(signed_in(installer), f"/jobs/{planned.pk}/sheets/cutting/")

    assert "Cutting plan" in text
    assert "proved least" in text
    assert "Sheet 1, 96 × 48 in" in text
    assert "Stick 1, 96 in" in text
    assert "Trim both ends, then stop at 28 1/2 (B2.a stile)" in text
    assert parts_fingerprint(schedule_of(planned).parts) in text
    assert "the parts have changed" not in text


def test_an_outdated_plan_says_so_on_paper(
    planned: Job, installer: Person, signed_in: SignIn
) -> None:
    """Nobody cuts from it by mistake."""
    OpeningFactory.create(cabinet=CabinetFactory.create(job=planned))

    text = text_of(signed_in(installer), f"/jobs/{planned.pk}/sheets/cutting/")

    assert "STOP — the parts have changed" in text


def test_without_a_plan_one_is_led_to_where_it_is_made(
    kitchen_job: Job, installer: Person, signed_in: SignIn
) -> None:
    """There is no sheet to print yet."""
    answer = signed_in(installer).get(f"/jobs/{kitchen_job.pk}/sheets/cutting/", follow=True)

    assert answer.redirect_chain == [(f"/jobs/{kitchen_job.pk}/cut/", 302)]
    assert "There is no cutting plan yet" in answer.text


def test_each_piece_has_its_label(kitchen_job: Job, installer: Person, signed_in: SignIn) -> None:
    """Label, size, cabinet, grain, and which edges are banded; two stiles have two labels."""
    text = text_of(signed_in(installer), f"/jobs/{kitchen_job.pk}/sheets/labels/")

    assert "B1.a 28 1/2 × 16" in text
    assert "cabinet B1, wall North" in text
    assert "grain ↑ along 28 1/2; band all 4 edges" in text
    assert "stile 1 of 2" in text
    assert "stile 2 of 2" in text
    assert text.count("B2.a") == 5  # two stiles, two rails, a panel
