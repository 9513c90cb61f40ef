"""The empty row at the end of a wall's table: what is typed there stands behind all the rest."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Cabinet, Opening, Thing
from fronts.rules.practice import inches
from fronts.rules.runs import stood
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import CabinetFactory, OpeningFactory, overlaid
from tests.pages.kitchens import HTMX

SignIn = Callable[[Person], Client]
FIRST: dict[str, Any] = {"kind": "base", "width": "18", "height": "30 1/2", "depth": "24", "y": "4"}


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """The owner at the desk."""
    return signed_in(owner)


def enter(desk: Client, job: Job, *, htmx: bool = True, **typed: Any) -> Any:
    """Send the row."""
    body = {"wall": "North", "kind": "base", **typed}
    return desk.post(f"/jobs/{job.pk}/rows/new/", body, headers=HTMX if htmx else {})


def placeholders(page: Any) -> dict[str, str]:
    """What the row shows where it is empty, by the names of its cells."""
    return {
        field.attribute("name"): field.attribute("placeholder")
        for field in page.all("#row-new [data-new-cell]")
        if field.attribute("placeholder")
    }


@pytest.mark.parametrize("htmx", [True, False])
def test_what_is_left_empty_is_as_in_the_last_of_its_kind(
    htmx: bool, job: Job, desk: Client
) -> None:
    """A label that counts on, sizes, and what closes it: all of it is shown before."""
    overlaid(job)
    cabinet = CabinetFactory.create(job=job, wall="North", height=inches(29), depth=inches(21))
    OpeningFactory.create(cabinet=cabinet, x=inches(3, 2), y=inches(3, 2), width=inches(15),
                          height=inches(26), closed_by="pair")  # fmt: skip
    page = dom(desk.get(f"/jobs/{job.pk}/?wall=North"))
    shown = placeholders(page)
    assert shown == {"label": "B2", "face": "pair", "height": "29", "depth": "21", "y": "4"}

    answer = enter(desk, job, width="33-12", htmx=htmx)

    assert answer.status_code == (200 if htmx else 302)
    added = Cabinet.objects.get(label="B2")
    assert (added.width, added.height, added.depth) == (inches(21), inches(29), inches(21))
    assert (added.wall, added.x) == ("North", None)
    opening = Opening.objects.get(cabinet=added)
    assert (opening.closed_by, opening.width) == ("pair", inches(18))
    if htmx:
        page = dom(answer)
        assert "B2 is entered." in page.words
        assert placeholders(page)["label"] == "B3"
        assert page.one("#row-new [name=width]").attribute("autofocus") is not None


def test_the_first_of_a_kind_tells_its_sizes(job: Job, desk: Client) -> None:
    """Each that is missing is said at its cell, and what was typed stays."""
    overlaid(job)
    answer = enter(desk, job, width="30", face="pair")

    assert answer.status_code == 422
    page = dom(answer)
    for asked in ("the height", "the depth", "how far above the floor it begins"):
        assert f"Enter {asked}: it is the first of its kind." in page.words
    assert page.one("#row-new [name=face]").attribute("value") == "pair"
    assert enter(desk, job, **FIRST, face="door left").status_code == 200
    assert Cabinet.objects.get().label == "B1"


@pytest.mark.parametrize(
    ("typed", "message"),
    [
        ({"width": ""}, "Enter the width"),
        ({"width": "18", "label": "b1"}, "There is already a b1 in this job."),
        ({"width": "18", "face": "dor left"}, "Found “dor”"),
        ({"width": "18", "face": "drawer 40 over pair"}, "Found"),
        ({"width": "18", "kind": "base"}, "Say what closes it"),
        ({"width": "18", "kind": "shelf"}, "Choose one from the list."),
        ({"width": "2 x"}, "“2 x” is not a length"),
    ],
)
def test_a_mistake_stays_in_its_row(
    typed: dict[str, Any], message: str, job: Job, desk: Client
) -> None:
    """Nothing is entered; with and without scripts it is said where it was typed."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North")
    for htmx in (True, False):
        answer = enter(desk, job, htmx=htmx, **typed)
        assert answer.status_code == 422
        assert message in dom(answer).words
        for name in typed.keys() - {"kind"}:
            assert (dom(answer).one(f"#row-new [name={name}]").attribute("value") or "") == (
                typed[name]
            )
    assert Cabinet.objects.count() == 1


def test_things_stand_between_by_their_names(job: Job, desk: Client) -> None:
    """Labels count on by kind; one above hangs; a label that is typed is its own."""
    overlaid(job)
    enter(desk, job, **FIRST, face="door left")
    enter(desk, job, kind="appliance", width="24", face="dishwasher")
    enter(desk, job, kind="appliance-above", width="30", face="hood", y="60", label="Hood")
    enter(desk, job, kind="filler", width="3")

    things = [(one.label, one.kind, one.after, one.run, one.name) for one in
              Thing.objects.order_by("position")]  # fmt: skip
    assert things == [
        ("A1", "appliance", "B1", "", "dishwasher"),
        ("Hood", "appliance", "A1", "upper", "hood"),
        ("F1", "filler", "Hood", "", ""),
    ]
    assert Thing.objects.get(label="Hood").y == inches(60)


def test_another_kind_shows_what_it_has(job: Job, desk: Client) -> None:
    """What was typed already stays in the row."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North")
    CabinetFactory.create(job=job, wall="East", kind="wall", label="W4", height=inches(30),
                          depth=inches(12), y=inches(54))  # fmt: skip
    page = dom(
        desk.get(
            f"/jobs/{job.pk}/rows/new/",
            {"wall": "North", "kind": "wall", "width": "21"},
            headers=HTMX,
        )
    )
    assert placeholders(page)["label"] == "W5"
    assert placeholders(page)["y"] == "54"
    assert page.one("#row-new [name=width]").attribute("value") == "21"
    assert page.one("#row-new option[selected]").words == "Wall cabinet"


def test_a_row_that_is_sent_twice_is_entered_once(job: Job, desk: Client) -> None:
    """A double click, or an answer that got lost."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North")
    key = dom(desk.get(f"/jobs/{job.pk}/")).one("#row-new").field("form_key").value
    for _ in range(2):
        assert enter(desk, job, width="20", face="pair", form_key=key).status_code == 200
    assert [one.label for one in stood(kitchen_of(job)).cabinets] == ["B1", "B2"]


def test_only_who_may_edit_has_the_row(job: Job, installer: Person, signed_in: SignIn) -> None:
    """The installer measures what there is."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North")
    client = signed_in(installer)
    assert not dom(client.get(f"/jobs/{job.pk}/")).all("#row-new")
    assert enter(client, job, width="20", face="pair").status_code == 403


@pytest.mark.parametrize("htmx", [True, False])
@pytest.mark.parametrize(
    ("typed", "message"),
    [
        ({"label": "North"}, "There is already a wall North."),
        ({"label": "north", "width": "120"}, "There is already a wall north."),
        ({"label": "two words"}, "Name the wall in one word, like North."),
        ({"label": ""}, "Name the wall in one word, like North."),
    ],
)
def test_a_wall_is_named_once(
    typed: dict[str, Any], message: str, htmx: bool, job: Job, desk: Client
) -> None:
    """Its length is changed where walls are listed."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North")
    answer = enter(desk, job, htmx=htmx, **{**typed, "kind": "new-wall"})
    assert answer.status_code == 422
    assert message in dom(answer).words


def test_a_new_wall_is_gone_on_with(job: Job, desk: Client) -> None:
    """It is shown with its length, and what is entered next stands on it."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North")
    answer = enter(desk, job, kind="new-wall", label="East", width="120")
    assert "Wall East is entered." in dom(answer).words
    assert answer["HX-Push-Url"].endswith("?wall=East")
    enter(desk, job, wall="East", width="20", face="pair")
    assert Cabinet.objects.get(label="B2").wall == "East"


def test_a_label_that_is_offered_is_free(job: Job, desk: Client) -> None:
    """Also of what is no cabinet, however it is written."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North", label="F0")
    Thing.objects.create(
        job=job, label="f1", kind="filler", wall="North", width=inches(3), after="F0", position=0
    )
    assert enter(desk, job, width="20", face="pair").status_code == 200
    assert Cabinet.objects.latest("pk").label == "F2"


def test_what_would_hang_below_the_floor_is_asked_about(job: Job, desk: Client) -> None:
    """A hung cabinet keeps its kind's top line, but for one that is too high for that."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North", kind="wall", height=inches(30), y=inches(54))
    high: dict[str, Any] = {"kind": "wall", "width": "20", "face": "pair"}
    answer = enter(desk, job, **high, height="90")
    assert answer.status_code == 422
    assert "So high it would stand below the floor" in dom(answer).words
    assert enter(desk, job, **high, height="42").status_code == 200
    assert Cabinet.objects.latest("pk").y == inches(42)


def test_all_walls_are_no_wall_to_enter_on(job: Job, desk: Client) -> None:
    """What is sent from there stands on the first; a wall may even be called by a star."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North")
    enter(desk, job, wall=" *", width="20", face="pair")
    assert Cabinet.objects.latest("pk").wall == "North"
    desk.post(f"/jobs/{job.pk}/lines/", {"wall": "North", "lines": "wall *\nB9 20 pair"})
    page = dom(desk.get(f"/jobs/{job.pk}/?wall=*"))
    assert page.all(f"#cabinet-{Cabinet.objects.get(label='B9').pk}")
