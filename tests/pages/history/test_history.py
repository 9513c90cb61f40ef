"""History on its pages: read, filtered, taken back, and the kitchen as it was."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Cabinet
from fronts.rules.practice import inches
from fronts.services.cabinets import cabinet_delete
from fronts.services.doors import door_delete
from shopjobs.models import Job, Person, Revision
from tests.dom import Part, dom
from tests.factories import NOW, CabinetFactory, DoorOnHandFactory, OpeningFactory, overlaid
from tests.pages.kitchens import HTMX, posted_by
from tests.saying import cabinet_change, standard_set

SignIn = Callable[[Person], Client]


@pytest.fixture
def cabinet(job: Job, owner: Person) -> Cabinet:
    """A cabinet with a door, resized once."""
    overlaid(job)
    cabinet = CabinetFactory.create(job=job, by=owner)
    OpeningFactory.create(cabinet=cabinet, by=owner)
    return cabinet_change(cabinet=cabinet, width=inches(20), at=NOW, by=owner)


def press(client: Client, page: Part, which: str) -> Part:
    """Press Undo or Redo in the bar; the page that follows."""
    form = page.one(f"form[data-step='{which}']")
    posted = posted_by(form)
    return dom(client.post(form.attribute("action"), posted, follow=True))


def test_undo_and_redo_stand_on_every_page_of_a_job(
    job: Job, cabinet: Cabinet, owner: Person, signed_in: SignIn
) -> None:
    """What was done last is taken back and done again, and one is where one was."""
    client = signed_in(owner)
    for end in ("", "cut/", "order/", "fit/", "history/"):
        page = dom(client.get(f"/jobs/{job.pk}/{end}"))
        assert "Undo: B1: width 18 → 20" in page.one(".undo-bar").words

    back = press(client, page, "undo")
    cabinet.refresh_from_db()
    assert cabinet.width == inches(18)
    assert "Undid: B1: width 18 → 20; B1.a: width 15 → 17." in back.words
    assert back.one("h1").words == "History"

    again = press(client, back, "redo")
    cabinet.refresh_from_db()
    assert cabinet.width == inches(20)
    assert "Did again: B1: width 18 → 20; B1.a: width 15 → 17." in again.words


def test_the_bar_follows_a_change(
    job: Job, cabinet: Cabinet, owner: Person, signed_in: SignIn
) -> None:
    """Asked again by the page, it leads back to that page, and nowhere else."""
    client = signed_in(owner)
    address = f"/jobs/{job.pk}/undo/bar/"
    bar = dom(client.get(f"{address}?back=/jobs/{job.pk}/fit/", headers=HTMX))
    assert bar.one("[name='back']").attribute("value") == f"/jobs/{job.pk}/fit/"

    away = dom(client.get(f"{address}?back=https://elsewhere.example/", headers=HTMX))
    assert away.one("[name='back']").attribute("value") == f"/jobs/{job.pk}/history/"


def test_what_another_changed_since_is_asked_about(
    job: Job, cabinet: Cabinet, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """Who, when and what; then it is done all the same."""
    client = signed_in(owner)
    page = dom(client.get(f"/jobs/{job.pk}/history/"))
    cabinet_change(cabinet=cabinet, width=inches(22), at=NOW, by=office)
    form = page.one("form[data-step='undo']")
    posted = posted_by(form)

    answer = client.post(f"/jobs/{job.pk}/undo/", posted)
    asked = dom(answer)
    assert answer.status_code == 422
    assert f"B1, width: by {office.shown_name}" in asked.words
    cabinet.refresh_from_db()
    assert cabinet.width == inches(22)

    client.post(f"/jobs/{job.pk}/undo/", posted | {"confirmed": "on"})
    cabinet.refresh_from_db()
    assert cabinet.width == inches(18)


def test_a_deleted_cabinet_is_brought_back_from_the_list(
    job: Job, cabinet: Cabinet, owner: Person, signed_in: SignIn
) -> None:
    """However long ago, and whatever was done since."""
    cabinet_delete(cabinet=Cabinet.objects.get(), at=NOW, by=owner)
    CabinetFactory.create(job=job, label="B7", by=owner)
    client = signed_in(owner)
    page = dom(client.get(f"/jobs/{job.pk}/history/"))
    (line,) = (item for item in page.all(".history > li") if "Deleted cabinet B1" in item.words)
    assert "Bring back" in line.words
    form = line.one("form")
    client.post(form.attribute("action"), posted_by(form))

    back = Cabinet.objects.get(label="B1")
    assert back.openings.count() == 1
    assert back.width == inches(20)


def test_history_is_filtered(
    job: Job, cabinet: Cabinet, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """By person, by cabinet, by day; what can't be read as a day shows all."""
    other = CabinetFactory.create(job=job, label="B2", by=office)
    client = signed_in(owner)

    def lines(**asked: str) -> list[str]:
        page = dom(client.get(f"/jobs/{job.pk}/history/", asked))
        return [each.words for each in page.all(".history .what")]

    assert len(lines()) >= 4
    assert lines(person=str(office.pk)) == ["Entered cabinet B2"]
    assert lines(about=f"cabinet {other.pk}") == ["Entered cabinet B2"]
    assert lines(day="2027-03-01") == lines()
    assert lines(day="2027-03-02") == []
    assert lines(day="soon") == lines()


def test_the_kitchen_as_it_was(
    job: Job, cabinet: Cabinet, owner: Person, signed_in: SignIn
) -> None:
    """Drawn from the rows of that day; what is otherwise since, front by front; nothing changes."""
    before = Revision.objects.filter(text__startswith="Entered opening").get()
    standard_set(owner=job, overlay_left=inches(3, 4), at=NOW, by=owner)
    rows = list(Cabinet.objects.values())

    page = dom(signed_in(owner).get(f"/jobs/{job.pk}/history/{before.pk}/"))

    assert "As it was on 1 March 2027" in page.one("h1").words
    assert page.has("figure svg")
    assert "width 16 → 18 1/4" in page.words
    between = signed_in(owner).get(f"/jobs/{job.pk}/history/{before.pk}/?after={before.pk}")
    assert "Nothing: every front and every item is as it was." in dom(between).words
    unread = signed_in(owner).get(f"/jobs/{job.pk}/history/{before.pk}/?after=soon")
    assert "width 16 → 18 1/4" in dom(unread).words
    assert list(Cabinet.objects.values()) == rows


def test_the_shops_own_history(job: Job, owner: Person, office: Person, signed_in: SignIn) -> None:
    """Its standard is taken back by who may set it."""
    standard_set(owner=job.shop, gap_between=inches(3, 32), at=NOW, by=owner)
    client = signed_in(owner)
    page = dom(client.get("/shop/history/"))
    assert "3/32" in page.words
    revision = Revision.objects.get(job=None, can_undo=True)

    assert signed_in(office).get("/shop/history/").status_code == 403
    client.post("/shop/undo/", {"revision": revision.pk})
    assert not type(job)._meta.apps.get_model("fronts.ShopStandard").objects.exists()


def test_nobody_takes_back_what_is_another_shops(
    job: Job, cabinet: Cabinet, stranger: Person, installer: Person, signed_in: SignIn
) -> None:
    """Nor what they may not change themselves."""
    revision = Revision.objects.filter(job=job).order_by("-pk").first()
    assert revision is not None
    client = signed_in(stranger)

    assert client.get(f"/jobs/{job.pk}/history/").status_code == 404
    assert client.post(f"/jobs/{job.pk}/undo/", {"revision": revision.pk}).status_code == 404
    own = client.post("/shop/undo/", {"revision": revision.pk})
    assert own.status_code == 404
    hands = signed_in(installer).post(f"/jobs/{job.pk}/undo/", {"revision": revision.pk})
    assert hands.status_code == 403
    cabinet.refresh_from_db()
    assert cabinet.width == inches(20)


def test_the_shops_pages_have_its_undo(
    job: Job, owner: Person, installer: Person, signed_in: SignIn
) -> None:
    """Its standard and its people; pressed on a page, one is on that page again."""
    standard_set(owner=job.shop, gap_between=inches(3, 32), at=NOW, by=owner)
    client = signed_in(owner)
    client.post(f"/people/{installer.pk}/close/")
    pages = ("/shop/", "/shop/standard/", "/people/", f"/people/{installer.pk}/", "/shop/history/")
    for address in pages:
        page = dom(client.get(address))
        assert "Undo: Closed the account of ines" in page.one(".undo-bar").words, address
        assert page.one(".undo-bar [name='back']").attribute("value") == address

    back = press(client, dom(client.get("/people/")), "undo")
    installer.refresh_from_db()
    assert installer.is_active
    assert back.one("h1").words == "People"
    assert "Redo: Closed the account of ines" in back.one(".undo-bar").words
    assert "/shop/history/" in dom(client.get("/shop/")).one("main").addresses


def test_what_went_is_told_in_the_list(
    job: Job, cabinet: Cabinet, owner: Person, signed_in: SignIn
) -> None:
    """As it was said when the cabinet was deleted."""
    cabinet_delete(cabinet=cabinet, at=NOW, by=owner)
    page = dom(signed_in(owner).get(f"/jobs/{job.pk}/history/"))

    assert page.all(".went")[0].words == "With it: opening B1.a."


def test_a_door_that_went_keeps_its_name_beside_its_front(
    job: Job, cabinet: Cabinet, owner: Person, signed_in: SignIn
) -> None:
    """A front was made from D1 until that was deleted."""
    door = DoorOnHandFactory.create(job=job, by=owner)
    OpeningFactory.create(cabinet=cabinet, label="b", front_door=door, by=owner)
    door_delete(row=door, at=NOW, by=owner)
    page = dom(signed_in(owner).get(f"/jobs/{job.pk}/history/"))

    rows = [row.words for row in page.all("tr")]
    assert "Front 1 of B1.b door on hand D1 nothing" in rows
