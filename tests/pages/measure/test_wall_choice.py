"""Walls are chosen in forms, not spelled."""

from collections.abc import Callable

from django.test import Client

from fronts.models import Cabinet, Wall
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import CabinetFactory, JobFactory, overlaid
from tests.pages.kitchens import HTMX

SignIn = Callable[[Person], Client]


def test_walls_of_the_job_are_offered(job: Job, owner: Person, signed_in: SignIn) -> None:
    """Those that were measured, and those that anything stands on; another job's are not."""
    overlaid(job)
    Wall.objects.create(job=job, label="North", length=inches(150), position=0)
    cabinet = CabinetFactory.create(job=job, wall="East")
    CabinetFactory.create(job=JobFactory.create(shop=job.shop), wall="Elsewhere")
    desk = signed_in(owner)

    def offered(path: str, name: str = "wall") -> list[str]:
        options = dom(desk.get(f"/jobs/{job.pk}/{path}", headers=HTMX)).all(
            f"select[name={name}] option"
        )
        return [option.attribute("value") for option in options]

    assert offered(f"cabinets/{cabinet.pk}/") == ["North", "East"]
    assert offered("cabinets/new/?kind=base&wall=East") == ["North", "East"]
    assert offered("things/new/") == ["North", "East"]
    wall = Wall.objects.get()
    assert offered(f"walls/{wall.pk}/", "left_wall") == ["", "East"]


def test_the_first_wall_is_named(job: Job, owner: Person, signed_in: SignIn) -> None:
    """There is nothing to choose from yet; its name may be typed over."""
    page = dom(signed_in(owner).get(f"/jobs/{job.pk}/"))
    assert page.one("#first-cabinet input[name=wall]").attribute("value") == "A"
    assert not Cabinet.objects.exists()
