"""Edge bands: entered, named in the house standard, followed when renamed, told when they go."""

from collections.abc import Callable
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from fronts.models import BandItem, Cabinet, HandleItem, Opening
from fronts.rules.items import NO_BAND
from fronts.rules.items import BandItem as BandFacts
from fronts.rules.items import HandleItem as HandleFacts
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Sides
from fronts.services.hardware import hardware_own, items_set
from fronts.services.history import revision_undo
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision, Shop
from tests.dom import dom
from tests.factories import NOW, JobFactory, door_and_drawer, overlaid
from tests.pages.kitchens import seen_in
from tests.saying import standard_set

SignIn = Callable[[Person], Client]
BANDS = "/shop/standard/edge-bands/"
PLAIN = "Plain, where the core shows, common practice"
SIDES = ("band_left", "band_right", "band_top", "band_bottom")


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def _all(code: str) -> dict[str, Any]:
    """The same band on every edge."""
    return dict.fromkeys(SIDES, code)


@pytest.fixture
def banded(shop: Shop, job: Job) -> Cabinet:
    """A door and a drawer front, in a shop with one band that is on all edges but two."""
    overlaid(job)
    items_set(owner=shop, kind=BandFacts, items=[BandFacts("E-1", Mm(1), "white")], at=NOW)
    standard_set(owner=shop, at=NOW, **_all("E-1"))
    cabinet = door_and_drawer(job)
    door = Opening.objects.get(cabinet=cabinet, position=0)
    own = _all("E-1") | {"band_top": NO_BAND, "band_bottom": NO_BAND}
    standard_set(owner=door, at=NOW, **own)
    return cabinet


def posted(client: Client, address: str, form: str, typed: dict[str, str]) -> int:
    """Open a page, type into one of its forms, and save; the answer's code."""
    page = dom(client.get(address)).one(form)
    return client.post(address, seen_in(page) | typed).status_code


def bands_of(job: Job) -> list[Sides[str] | None]:
    """What the job's standard and its openings say."""
    kitchen = kitchen_of(job)
    return [kitchen.standard.band, *(one.standard.band for one in kitchen.cabinets[0].openings)]


BAND = {"code": "W-1", "name": "white", "thickness": "1 mm"}
KNOB = {"code": "K-2", "door": "upright", "drawer": "across"}


def item_changed(client: Client, kind: str, row: Any, typed: dict[str, str]) -> int:
    """Change an item in its form; the answer's code."""
    return posted(client, f"/shop/hardware/{kind}/{row.pk}/", "form.editor", typed)


def test_a_band_is_entered_and_named_in_the_house_standard(
    desk: Client, shop: Shop, job: Job
) -> None:
    """Thickness typed in millimetres in an inch shop; each edge chooses among all bands."""
    typed = {"code": "E-1", "name": "white", "thickness": "1 mm", "width": "7/8"}
    assert posted(desk, "/shop/hardware/bands/new/", "form.editor", typed) == 302

    form = dom(desk.get(BANDS)).one("#shop-standard")
    assert [each.words for each in form.field("band_left").all("option")] == [
        PLAIN, "No band", "Plain, where the core shows", "E-1, white",
    ]  # fmt: skip
    sides = dict.fromkeys(SIDES, "E-1") | {"band_bottom": "none", "premill_left": "0.5 mm"}
    milled = {f"premill_{side}": "0" for side in ("right", "top", "bottom")}
    said = {**sides, **milled}
    assert posted(desk, BANDS, "#shop-standard", said) == 302

    standard = kitchen_of(job).standard
    assert standard.band == Sides("E-1", "E-1", "E-1", NO_BAND)
    assert standard.premill == Sides(Mm("0.5"), Mm(0), Mm(0), Mm(0))


def test_four_edges_are_said_together(desk: Client, shop: Shop) -> None:
    """What is missing is asked for at its field, and what was chosen stays."""
    items_set(owner=shop, kind=BandFacts, items=[BandFacts("E-1", Mm(1))], at=NOW)
    form = dom(desk.get(BANDS)).one("#shop-standard")

    answer = desk.post(BANDS, seen_in(form) | {"band_left": "E-1"})

    assert answer.status_code == 422
    field = dom(answer).one("#shop-standard").field("band_left")
    assert field.one("option[selected]").attribute("value") == "E-1"
    assert "Give every part of the edge band, or none of it." in dom(answer).words


def test_what_is_cut_and_ordered_says_its_bands(desk: Client, job: Job, banded: Cabinet) -> None:
    """The door has two of its edges banded: 2 mm off its width, and 2 × 20 in of band."""
    cut = dom(desk.get(f"/jobs/{job.pk}/cut/")).one("main").words
    order = dom(desk.get(f"/jobs/{job.pk}/order/")).one("main").words

    assert "band E-1 left, right" in cut
    assert "E-1 left, right; finished 20 × 16" in cut
    assert "edge band E-1, white" in order
    assert "B1.a: 3.4 ft" in order


def test_another_shop_s_bands_are_not_offered(
    banded: Cabinet, stranger: Person, signed_in: SignIn
) -> None:
    """A shop that has entered none has the plain ones."""
    page = dom(signed_in(stranger).get(BANDS)).one("#shop-standard")

    assert [each.words for each in page.field("band_left").all("option")] == [
        PLAIN, "No band", "Plain, where the core shows", "BAND-04, thin band", "BAND-1, band",
        "BAND-2, thick band",
    ]  # fmt: skip


def test_who_names_a_band_follows_its_new_code(
    desk: Client, owner: Person, job: Job, banded: Cabinet
) -> None:
    """At every level, as one step that Undo takes back."""
    before = bands_of(job)
    assert item_changed(desk, "bands", BandItem.objects.get(), BAND) == 302

    assert bands_of(job) == [
        Sides("W-1", "W-1", "W-1", "W-1"), Sides("W-1", "W-1", NO_BAND, NO_BAND), None,
    ]  # fmt: skip
    revision_undo(revision=Revision.objects.order_by("-pk")[0], at=NOW, by=owner)
    assert bands_of(job) == before
    assert BandItem.objects.get().code == "E-1"


def test_a_front_follows_its_handle_where_the_list_holds(
    desk: Client, shop: Shop, job: Job, banded: Cabinet
) -> None:
    """Not in a job that has a list of its own."""
    items_set(owner=shop, kind=HandleFacts, items=[HandleFacts("K-1")], at=NOW)
    elsewhere = JobFactory.create(shop=shop)
    door_and_drawer(elsewhere)
    hardware_own(job=elsewhere, at=NOW)
    for of in (job, elsewhere):
        front = Opening.objects.filter(cabinet__job=of).order_by("position")[0].fronts.get()
        front.handle = "K-1"
        front.save()
    row = HandleItem.objects.get(hardware__job=None)

    assert item_changed(desk, "handles", row, KNOB) == 302

    named = [kitchen_of(of).cabinets[0].openings[0].fronts[0].handle for of in (job, elsewhere)]
    assert named == ["K-2", "K-1"]


def test_a_band_that_goes_is_told_with_who_names_it(
    desk: Client, job: Job, banded: Cabinet
) -> None:
    """In the answer, in the diary, at the field, and as a stop at the fronts."""
    row = BandItem.objects.get()

    page = dom(desk.post(f"/shop/hardware/bands/{row.pk}/delete/", follow=True))

    told = f"in job {job.number} it is named by B1.a"
    assert told in page.words
    assert "the shop's house standard names it" in page.words
    assert told in " ".join(Revision.objects.order_by("-pk")[0].went)
    form = dom(desk.get(BANDS)).one("#shop-standard")
    assert "E-1, on no list" in form.field("band_left").words
    assert "Edge band E-1 is in the house standard, but not in the shop's list" in (
        dom(desk.get(f"/jobs/{job.pk}/")).words
    )


def test_a_file_that_leaves_a_band_out_says_so_too(desk: Client, job: Job, banded: Cabinet) -> None:
    """Its code may have been misspelt."""
    file = SimpleUploadedFile("bands.csv", b"code,thickness (mm)\nE-9,2\n")

    page = dom(desk.post("/shop/hardware/bands/file/", {"file": file}, follow=True))

    assert f"band E-1: in job {job.number} it is named by B1.a" in page.words
