"""What a front weighs, and how it lies in an opening that tapers, at the wall."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Cabinet
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW, CabinetFactory, OpeningFactory, door_and_drawer
from tests.saying import standard_set

SignIn = Callable[[Person], Client]


def address(cabinet: Cabinet) -> str:
    """The page of the cabinet."""
    return f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/"


@pytest.mark.parametrize(("width", "two"), [(20, False), (70, True)])
def test_a_front_says_what_it_weighs_and_whether_two_lift_it(
    *, width: int, two: bool, job: Job, installer: Person, signed_in: SignIn
) -> None:
    """Over 20 kg (44 lb), where the hand is: MDF 3/4 in thick weighs about 14 kg/m²."""
    standard_set(owner=job, at=NOW, mount="inset")
    box = CabinetFactory.create(job=job, width=inches(width), height=inches(70))
    OpeningFactory.create(cabinet=box, width=inches(width - 3), height=inches(60))
    page = dom(signed_in(installer).get(address(box)))

    (front,) = page.all(".front-to-fit")
    assert " lb" in front.one(".big").words
    assert ("two people" in front.one(".big").words) is two


def test_an_opening_that_tapers_says_both_ends_of_each_side(
    job: Job, installer: Person, signed_in: SignIn
) -> None:
    """An inset door in an opening 1/8 in wider at the bottom."""
    standard_set(owner=job, at=NOW, mount="inset", hinge_end=inches(3, 2))
    box = door_and_drawer(job, measured_width_top=inches(15), measured_width_bottom=inches(121, 8))
    page = dom(signed_in(installer).get(address(box)))

    hint = page.one(".front-to-fit > .hint").words
    assert "gaps left 3/32 at the top, 5/32 at the bottom; right" in hint
