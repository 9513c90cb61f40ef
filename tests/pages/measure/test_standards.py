"""The house standard at its levels, and a job's own stock."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from django.test import Client

from fronts.models import Cabinet, JobStandard, Stock
from fronts.models import HingeItem as HingeRow
from fronts.rules.items import HingeItem
from fronts.rules.practice import inches
from fronts.services.hardware import item_change, items_set
from fronts.services.named_items import named_by
from fronts.snapshot import kitchen_of
from fronts.snapshot.standards import standard_of
from shopjobs.models import Job, Person, Shop
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


def test_a_kind_of_cabinet_has_a_standard_of_its_own(job: Job, desk: Client) -> None:
    """Said once for all of them: shown in their forms, in the front schedule, beside the way."""
    overlaid(job)
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    address = f"/jobs/{job.pk}/standard/base/"
    assert dom(desk.get(address)).one("h1").words == "Standard of base cabinets"

    typed = {"front_material": "white oak", "front_build": "five-piece"}
    desk.post(address, typed | seen_in(dom(desk.get(address))))

    page = dom(desk.get(f"/jobs/{job.pk}/"))
    said = "fronts are built as five-piece, material of fronts white oak"
    assert f"Base cabinets alone {said}" in page.one("#job-standard").words
    assert f"white oak own: {said}" in page.one("table.fronts").words
    front = dom(desk.get(f"/jobs/{job.pk}/openings/{opening.pk}/fronts/0/"))
    assert front.field("material").placeholder == "white oak, from base cabinets"
    assert "Five-piece, from base cabinets" in front.field("build").words
    whole = dom(desk.get(f"/jobs/{job.pk}/openings/{opening.pk}/"))
    assert whole.field("front_material").placeholder == "white oak, from base cabinets"
    own = dom(desk.get(f"/jobs/{job.pk}/cabinets/{opening.cabinet_id}/standard/"))
    assert own.field("front_material").placeholder == "white oak, from base cabinets"


def test_there_are_three_kinds_of_cabinet(job: Job, desk: Client) -> None:
    """Any other is no page."""
    assert desk.get(f"/jobs/{job.pk}/standard/corner/").status_code == 404


def test_a_hinge_that_a_standard_names_follows_its_new_code(
    shop: Shop, job: Job, desk: Client
) -> None:
    """And can be chosen from the list of the job."""
    hinges = [HingeItem("H-1", "overlay", overlays=(inches(1, 2),))]
    items_set(owner=shop, kind=HingeItem, items=hinges, at=NOW)
    address = f"/jobs/{job.pk}/standard/tall/"
    form = dom(desk.get(address))
    assert "H-1" in form.field("front_hinge").words
    desk.post(address, {"front_hinge": "H-1"} | seen_in(form))

    item_change(row=HingeRow.objects.get(), item=replace(hinges[0], code="H-7"), at=NOW)

    assert kitchen_of(job).standard_of("tall").front_hinge == "H-7"
    assert named_by(shop, HingeRow.objects.get()) == ["in job K-1 it is named by tall cabinets"]
