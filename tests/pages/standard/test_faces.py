"""Faces under names of the shop's own: saved, said where walls are entered, taken back."""

import json
from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Cabinet, Opening, SavedFace
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import CabinetFactory, OpeningFactory, overlaid
from tests.pages.kitchens import HTMX

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """The owner at the desk."""
    return signed_in(owner)


def save(desk: Client, name: str, words: str, key: int | None = None) -> Any:
    """Send the form."""
    address = "/shop/faces/" if key is None else f"/shop/faces/{key}/"
    return desk.post(address, {"name": name, "words": words})


def closed_by(label: str) -> list[str]:
    """What closes a cabinet, from the top."""
    rows = Opening.objects.filter(cabinet__label=label).order_by("-y", "x")
    return [row.closed_by for row in rows]


def test_a_name_stands_in_for_the_words(job: Job, desk: Client) -> None:
    """In a line, in the empty row and in a cell; in any case, and drawn in its list."""
    overlaid(job)
    assert save(desk, "Sink base", "tip-out 6 over pair").status_code == 302
    page = dom(desk.get("/shop/faces/"))
    assert page.one(".faces svg title").words.startswith("What closes it: tip-out")

    lines = "wall North\nbase 30 high 24 deep 4 up\nB1 36 sink base"
    assert desk.post(f"/jobs/{job.pk}/lines/", {"lines": lines}, headers=HTMX).status_code == 200
    body = {"wall": "North", "kind": "base", "width": "33", "face": "SINK  base"}
    assert desk.post(f"/jobs/{job.pk}/rows/new/", body, headers=HTMX).status_code == 200
    cabinet = CabinetFactory.create(job=job, label="B9", wall="North")
    OpeningFactory.create(cabinet=cabinet)
    cell = f"cabinet-{cabinet.pk}-face"
    sent = {cell: "sink base", "seen": json.dumps({cell: "door left"})}
    assert desk.post(f"/jobs/{job.pk}/cells/", sent, headers=HTMX).status_code == 200

    for label in ("B1", "B2", "B9"):
        assert closed_by(label) == ["tip-out", "pair"]


@pytest.mark.parametrize(
    ("name", "words", "message"),
    [
        ("sink", "tip out over pair", "Found “tip”"),
        ("", "pair", "Enter the name."),
        ("sink", "", "Say what closes it, like drawer 6 over pair."),
        *(
            (name, "pair", "This name would be read as sizes or as another face")
            for name in ("pair", "6 high", "30", "at 60 x", "drawer over door left", "a # b")
        ),
        ("BANK", "pair", "There is already a face called BANK."),
    ],
)
def test_what_can_not_be_understood_is_not_saved(
    name: str, words: str, message: str, desk: Client
) -> None:
    """It is said at its field, and what was typed stays."""
    save(desk, "bank", "3 drawers")
    answer = save(desk, name, words)
    assert answer.status_code == 422
    assert message in dom(answer).words
    assert (dom(answer).one("input[name=words]").attribute("value") or "") == words
    assert [face.name for face in SavedFace.objects.all()] == ["bank"]


def test_a_face_is_changed_and_deleted_and_taken_back(job: Job, desk: Client) -> None:
    """Cabinets keep what was entered by its name."""
    save(desk, "bank", "3 drawers")
    key = SavedFace.objects.get().pk
    assert save(desk, "bank of four", "4 drawers 5, , ,", key).status_code == 302
    assert SavedFace.objects.get().words == "4 drawers 5, , ,"

    assert desk.post(f"/shop/faces/{key}/delete/").status_code == 302
    assert not SavedFace.objects.exists()
    assert "None yet." in dom(desk.get("/shop/faces/")).words


def test_words_come_from_a_cabinet(job: Job, desk: Client) -> None:
    """Its row leads to the form with what closes it."""
    overlaid(job)
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    page = dom(desk.get(f"/jobs/{job.pk}/"))
    (link,) = [one for one in page.all("a") if one.words == "Save its face under a name"]
    form = dom(desk.get(link.attribute("href")))
    assert form.one("input[name=words]").attribute("value") == "door left"
    assert Cabinet.objects.count() == 1


def test_a_face_is_the_shops_own(
    job: Job, desk: Client, stranger: Person, signed_in: SignIn, installer: Person
) -> None:
    """Another shop's neither shows nor is understood; who may not set the standard has no page."""
    theirs = signed_in(stranger)
    save(theirs, "secret stack", "5 drawers")
    overlaid(job)
    assert "secret stack" not in dom(desk.get("/shop/faces/")).words
    lines = "wall North\nbase 30 high 24 deep 4 up\nB1 36 secret stack"
    answer = desk.post(f"/jobs/{job.pk}/lines/", {"lines": lines}, headers=HTMX)
    assert answer.status_code == 422
    assert "secret stack" not in dom(answer).one(".summary").words.replace("“secret", "")
    key = SavedFace.objects.get().pk
    assert desk.get(f"/shop/faces/{key}/").status_code == 404
    assert desk.post(f"/shop/faces/{key}/delete/").status_code == 404
    assert signed_in(installer).get("/shop/faces/").status_code == 403


def test_a_face_keeps_its_unit(desk: Client, shop: Shop) -> None:
    """Renamed after the shop changed its unit it is as high as it was; new words are in the new."""
    save(desk, "sink", "drawer 6 over pair")
    Shop.objects.filter(pk=shop.pk).update(unit="mm")
    key = SavedFace.objects.get().pk
    save(desk, "sink base", "drawer 6 over pair", key)
    assert SavedFace.objects.get().unit == "in"
    assert "sizes in in" in dom(desk.get("/shop/faces/")).one(".faces").words
    save(desk, "sink base", "drawer 150 over pair", key)
    assert SavedFace.objects.get().unit == "mm"


def test_names_that_are_read_alike_are_one(desk: Client) -> None:
    """Also beyond plain letters."""
    save(desk, "Épi", "pair")
    answer = save(desk, "épi", "door left")
    assert answer.status_code == 422
    assert "There is already a face called épi." in dom(answer).words
