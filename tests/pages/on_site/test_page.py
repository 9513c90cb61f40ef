"""All openings of a job, wall by wall, as they are measured on site."""

from collections.abc import Callable

import pytest
from django.test import Client
from pytest_django.fixtures import DjangoAssertNumQueries

from fronts.models import Opening
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import CabinetFactory, JobFactory, OpeningFactory, door_and_drawer

SignIn = Callable[[Person], Client]
ALL = {
    "measured_width_top": inches(15), "measured_width_bottom": inches(15),
    "measured_height_left": inches(19), "measured_height_right": inches(19),
    "measured_diagonal_1": inches(24), "measured_diagonal_2": inches(24),
}  # fmt: skip


@pytest.fixture
def door(job: Job) -> Opening:
    """The door's opening of a cabinet with a drawer; another wall has one more."""
    cabinet = door_and_drawer(job)
    wall_cabinet = CabinetFactory.create(job=job, label="W1", wall="East", kind="wall", x=inches(0))
    OpeningFactory.create(cabinet=wall_cabinet)
    return Opening.objects.get(cabinet=cabinet, label="a")


def address(job: Job) -> str:
    """The page."""
    return f"/jobs/{job.pk}/measuring/"


def test_openings_stand_by_wall(
    job: Job, door: Opening, installer: Person, signed_in: SignIn
) -> None:
    """With their planned sizes, and where to begin."""
    page = dom(signed_in(installer).get(address(job)))

    assert [part.words for part in page.all("section.wall h2")] == ["Wall North", "Wall East"]
    assert [part.words for part in page.all(".openings .name")] == ["B1.a", "B1.b", "W1.a"]
    assert "15 × 19 in planned not measured" in page.words
    assert "0 of 3 openings measured" in page.words
    go_on = page.one(".go-on")
    assert go_on.words == "Begin with B1.a"
    assert go_on.attribute("href") == f"{address(job)}{door.pk}/width-top/"


def test_one_goes_on_where_one_left(
    job: Job, door: Opening, installer: Person, signed_in: SignIn
) -> None:
    """At what is missing of the opening that is begun; what is measured counts."""
    drawer = Opening.objects.filter(label="b")
    Opening.objects.filter(pk=door.pk).update(**ALL)
    drawer.update(measured_width_top=inches(15), measured_height_left=inches(7))

    page = dom(signed_in(installer).get(address(job)))

    assert "1 of 3 openings measured" in page.words
    assert "2 of 6; missing: width at the bottom, height at the right" in page.words
    go_on = page.one(".go-on")
    assert go_on.words == "Go on with B1.b"
    assert go_on.attribute("href") == f"{address(job)}{drawer.get().pk}/width-bottom/"


def test_all_that_is_measured_leaves_nothing_to_go_on_with(
    job: Job, door: Opening, installer: Person, signed_in: SignIn
) -> None:
    """Each opening still leads to its sizes, to be taken again."""
    Opening.objects.update(**ALL)

    page = dom(signed_in(installer).get(address(job)))

    assert not page.has(".go-on")
    assert page.all(".openings .state")[0].words == "measured"
    assert f"{address(job)}{door.pk}/width-top/" in page.addresses


def test_an_empty_kitchen_says_what_comes_here(
    job: Job, installer: Person, signed_in: SignIn
) -> None:
    """And where it is entered."""
    page = dom(signed_in(installer).get(address(job)))

    assert "There are no openings yet" in page.words
    assert f"/jobs/{job.pk}/" in page.addresses


def test_fit_leads_here(job: Job, door: Opening, installer: Person, signed_in: SignIn) -> None:
    """An installer has it at hand."""
    assert address(job) in dom(signed_in(installer).get(f"/jobs/{job.pk}/fit/")).addresses


def test_another_shop_and_another_job_see_nothing(
    job: Job, door: Opening, installer: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Neither the list nor an opening exists for them."""
    way = f"{address(job)}{door.pk}/width-top/"
    for path in (address(job), way):
        assert signed_in(stranger).get(path).status_code == 404
    assert signed_in(stranger).post(way, {"measured_width_top": "15"}).status_code == 404

    other = JobFactory.create(shop=job.shop)
    client = signed_in(installer)
    assert client.get(f"{address(other)}{door.pk}/width-top/").status_code == 404
    assert client.get(f"{address(job)}{door.pk}/depth/").status_code == 404
    assert client.post(address(job)).status_code == 405


def test_the_pages_take_few_queries(
    job: Job,
    door: Opening,
    installer: Person,
    signed_in: SignIn,
    django_assert_max_num_queries: DjangoAssertNumQueries,
) -> None:
    """However many openings there are."""
    client = signed_in(installer)

    for path in (address(job), f"{address(job)}{door.pk}/width-top/"):
        with django_assert_max_num_queries(28):
            client.get(path)
