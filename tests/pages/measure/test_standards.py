"""The house standard at its levels, and a job's own stock."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Cabinet, JobStandard, Stock
from fronts.rules.practice import inches
from fronts.snapshot.standards import standard_of
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW, CabinetFactory, OpeningFactory, overlaid
from tests.pages.kitchens import HTMX, STOCK, posted_by, seen_in
from tests.saying import standard_set

SignIn = Callable[[Person], Client]
SIDES = ("left", "right", "top", "bottom")


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def test_what_is_inherited_says_from_where(job: Job, desk: Client) -> None:
    """Each level shows, greyed, what holds without it and whose word that is."""
    standard_set(owner=job.shop, at=NOW, gap_between=inches(3, 32))
    overlaid(job)
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))

    page = dom(desk.get(f"/jobs/{job.pk}/openings/{opening.pk}/standard/"))

    assert page.field("overlay_left").placeholder == "1/2, from the job"
    assert page.field("gap_between").placeholder == "3/32, from the shop"
    assert page.field("least_gap").placeholder == "1/16, common practice"
    assert page.field("reveal_left").placeholder == "not set"


@pytest.mark.parametrize("level", ["standard/", "cabinets/{c}/standard/", "openings/{o}/standard/"])
def test_a_level_is_set_and_let_go(level: str, job: Job, desk: Client) -> None:
    """What is typed holds from there on; emptied, the farther level holds again."""
    overlaid(job)
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    address = f"/jobs/{job.pk}/" + level.format(c=opening.cabinet_id, o=opening.pk)
    own = {f"overlay_{side}": "3/8" for side in SIDES}

    desk.post(address, own | seen_in(dom(desk.get(address))))
    assert "15 3/4" in dom(desk.get(f"/jobs/{job.pk}/")).one("table.fronts").words

    answer = desk.post(address, seen_in(dom(desk.get(address))), headers=HTMX)
    assert answer.status_code == 200
    assert "15 3/4" not in dom(desk.get(f"/jobs/{job.pk}/")).words


@pytest.mark.parametrize(
    ("typed", "message"),
    [
        ({"overlay_left": "1/2"}, "Give every part of the overlay, or none of it."),
        ({"least_gap": "thin"}, "“thin” is not a length"),
        ({"front_thickness": "0"}, "is nothing"),
        (
            {f"overlay_{s}": "1/2" for s in SIDES}
            | {f"reveal_{s}": "1/2" for s in (*SIDES, "between")},
            "Give the overlay or the reveal, not both.",
        ),
    ],
)
def test_half_a_standard_is_refused(
    typed: dict[str, str], message: str, job: Job, desk: Client
) -> None:
    """The message stands at what is missing or wrong, and nothing is kept."""
    answer = desk.post(f"/jobs/{job.pk}/standard/", typed, headers=HTMX)

    assert answer.status_code == 422
    assert message in dom(answer).words
    assert not JobStandard.objects.exists()


def test_a_cabinets_own_standard_shows_in_the_list(job: Job, desk: Client) -> None:
    """A cabinet that does otherwise says so in its line."""
    cabinet = CabinetFactory.create(job=job)
    address = f"/jobs/{job.pk}/cabinets/{cabinet.pk}/standard/"

    answer = desk.post(address, {"mount": "inset"} | seen_in(dom(desk.get(address))), headers=HTMX)

    assert "own standard" in dom(answer).words
    assert standard_of(Cabinet.objects.get()).mount == "inset"


def test_a_jobs_stock_is_its_own_until_it_is_let_go(job: Job, desk: Client) -> None:
    """The shop's stock is shown to start from; a press lets it hold again, another undoes that."""
    address = f"/jobs/{job.pk}/stock/"
    assert "As the shop's" in dom(desk.get(address)).words

    desk.post(address, STOCK | seen_in(dom(desk.get(address))))
    assert Stock.objects.get(job=job).screw_lengths == (inches(1), inches(5, 4))

    clear = dom(desk.get(address)).one("button[formaction]")
    assert clear.words == "Take the shop's"
    answer = dom(desk.post(clear.attribute("formaction"), headers=HTMX)).one("#job-stock")
    assert not Stock.objects.exists()

    assert answer.one(".gone li").words == "this job's own lengths"
    undo = answer.one(".gone form")
    desk.post(undo.attribute("action"), posted_by(undo))
    assert Stock.objects.get(job=job).screw_lengths == (inches(1), inches(5, 4))


def test_a_length_that_is_none_is_refused_in_its_list(job: Job, desk: Client) -> None:
    """One wrong length refuses the list; what was typed stays."""
    answer = desk.post(f"/jobs/{job.pk}/stock/", {**STOCK, "screw_lengths": "1, x"}, headers=HTMX)

    assert answer.status_code == 422
    assert "“x” is not a length" in dom(answer).words
    assert "1, x" in dom(answer).values
