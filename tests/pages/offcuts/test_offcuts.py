"""The rack: pieces found, entered, changed, thrown away; each shop sees its own."""

from collections.abc import Callable

import pytest
from django.test import Client
from django.urls import reverse

from fronts.models import Offcut
from fronts.rules.lengths import INCH
from fronts.rules.offcuts import OffcutFacts
from fronts.services.offcuts import offcut_enter
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import NOW, JobFactory, ShopFactory

SignIn = Callable[[Person], Client]
PAGE, NEW = "/shop/offcuts/", "/shop/offcuts/new/"
TYPED = {
    "material": "birch  plywood", "thickness": "3/4", "kind": "board", "length": "40 1/2",
    "width": "30", "grain": "on", "job": "",
}  # fmt: skip


def entered(shop: Shop, material: str = "birch plywood", laid_by: Job | None = None) -> Offcut:
    facts = OffcutFacts(material, 3 * INCH / 4, 40 * INCH, 30 * INCH)
    return offcut_enter(shop=shop, facts=facts, job=laid_by, by=None, at=NOW)


def test_pieces_stand_by_material_with_their_jobs(
    shop: Shop, job: Job, installer: Person, signed_in: SignIn
) -> None:
    entered(shop)
    entered(shop, "hard maple", laid_by=job)
    page = dom(signed_in(installer).get(PAGE))
    assert [each.words for each in page.all("h2")][:2] == [
        "birch plywood 3/4", "hard maple 3/4",
    ]  # fmt: skip
    assert "R1 40 × 30 in grain along its length free" in page.words
    assert f"laid by for {job.number}" in page.words
    assert len(page.all("svg.drawing-offcut")) == 2
    assert not page.has(f'a[href="{NEW}"]')


@pytest.mark.parametrize(
    ("asked", "found"),
    [("MAPLE", ["R2"]), ("r1", ["R1"]), ("birch hard", []), ("R99999999999", []), ("%00", [])],
)
def test_what_is_looked_for_is_found(
    shop: Shop, office: Person, signed_in: SignIn, asked: str, found: list[str]
) -> None:
    entered(shop)
    entered(shop, "hard maple")
    page = dom(signed_in(office).get(f"{PAGE}?q={asked}"))
    labels = [each.words for each in page.all(".rack .label")]
    assert labels == (found or (["R1", "R2"] if asked == "%00" else []))


def test_a_piece_is_entered_once_and_then_changed(
    shop: Shop, job: Job, office: Person, signed_in: SignIn
) -> None:
    client = signed_in(office)
    answer = client.post(NEW, TYPED, follow=True)
    row = Offcut.objects.get()
    assert "R1 is entered. Write that on it." in dom(answer).words
    assert (row.material, row.length, row.made_by) == ("birch plywood", 81 * INCH / 2, office)
    address = reverse("fronts:shop-offcut", args=[row.pk])
    form = dom(client.get(address))
    assert form.field("length").value == "40 1/2"
    seen = {"seen": form.field("seen").value}
    answer = client.post(address, {**TYPED, **seen, "job": job.number, "width": "29"}, follow=True)
    row.refresh_from_db()
    assert (row.job, row.width, row.by_plan) == (job, 29 * INCH, False)


@pytest.mark.parametrize(
    ("changes", "field", "says"),
    [
        ({"material": ""}, "material", "Enter the material, as in the cut list."),
        ({"length": "long"}, "length", "like 23 5/8"),
        ({"width": "0"}, "width", ""),
        ({"thickness": "9" * 400}, "thickness", ""),
        ({"job": "K-404"}, "job", "There is no job K-404."),
        ({"kind": "tree"}, "kind", ""),
        ({"material": "\0"}, "material", ""),
    ],
)
def test_what_can_not_be_is_said_at_its_field(
    shop: Shop, office: Person, signed_in: SignIn, changes: dict[str, str], field: str, says: str
) -> None:
    answer = signed_in(office).post(NEW, {**TYPED, **changes})
    assert answer.status_code == 422
    assert answer.context["form"].errors[field]
    assert says in dom(answer).words
    assert not Offcut.objects.exists()


def test_a_piece_is_thrown_away_with_a_reason(
    shop: Shop, office: Person, signed_in: SignIn
) -> None:
    row = entered(shop)
    client = signed_in(office)
    away = reverse("fronts:shop-offcut-away", args=[row.pk])
    assert client.post(away, {"why": " "}).status_code == 422
    page = dom(client.post(away, {"why": "split"}, follow=True))
    assert not page.has(".rack")
    assert "R1 birch plywood, split" in page.words
    assert "has gone: split" in dom(client.get(reverse("fronts:shop-offcut", args=[row.pk]))).words
    assert client.post(away, {"why": "again"}).status_code == 422


def test_another_shop_s_pieces_are_nobody_s(shop: Shop, office: Person, signed_in: SignIn) -> None:
    theirs = ShopFactory.create()
    row = entered(theirs, "their walnut")
    client = signed_in(office)
    assert "their walnut" not in client.get(PAGE).content.decode()
    assert "their walnut" not in client.get(NEW).content.decode()
    for name in ("shop-offcut", "shop-offcut-away"):
        address = reverse(f"fronts:{name}", args=[row.pk])
        assert client.post(address, TYPED).status_code == 404
    job = JobFactory.create(shop=theirs, number="T-9")
    assert "There is no job T-9." in dom(client.post(NEW, {**TYPED, "job": job.number})).words


def test_an_installer_enters_none(shop: Shop, installer: Person, signed_in: SignIn) -> None:
    client = signed_in(installer)
    assert client.get(NEW).status_code == 403
    assert client.post(NEW, TYPED).status_code == 403


def test_many_pieces_are_shown_a_page_at_a_time(
    shop: Shop, office: Person, signed_in: SignIn
) -> None:
    for _ in range(62):
        entered(shop)
    client = signed_in(office)
    assert len(dom(client.get(PAGE)).all(".rack li")) == 60
    assert len(dom(client.get(f"{PAGE}?page=2")).all(".rack li")) == 2
