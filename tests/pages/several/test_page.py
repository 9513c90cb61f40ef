"""Rows that are chosen, and what is done to all of them in one step."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Box, Cabinet, Front, Opening, Thing
from fronts.rules.practice import inches
from fronts.rules.runs import runs_of
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.factories import BoxFactory, JobFactory, overlaid
from tests.pages.kitchens import HTMX

SignIn = Callable[[Person], Client]
WALL = """wall North
base 30 1/2 high 24 deep 4 up
B1 18 drawer 6 over door left
appliance 24 dishwasher
B2 36 3 drawers 6, ,
filler 3
wall cabinets 30 high 12 deep 54 up
W1 18 door left
W2 36 pair
"""


@pytest.fixture
def desk(owner: Person, signed_in: SignIn, job: Job) -> Client:
    """The owner at the desk, with a wall entered."""
    client = signed_in(owner)
    overlaid(job)
    client.post(f"/jobs/{job.pk}/lines/", {"lines": WALL})
    return client


def keys(job: Job, *labels: str) -> list[str]:
    """The keys of rows by their labels."""
    cabinets = {row.label: f"cabinet-{row.pk}" for row in Cabinet.objects.filter(job=job)}
    things = {row.label: f"thing-{row.pk}" for row in Thing.objects.filter(job=job)}
    return [(cabinets | things)[label] for label in labels]


def act(desk: Client, job: Job, do: str, *labels: str, **said: Any) -> Any:
    """Choose rows, and press a button."""
    body = {"rows": keys(job, *labels), "do": do, **said}
    return desk.post(f"/jobs/{job.pk}/several/", body)


def undo(desk: Client, job: Job) -> None:
    """Take back the last step."""
    last = Revision.objects.filter(job=job).latest("pk")
    assert desk.post(f"/jobs/{job.pk}/undo/", {"revision": last.pk}).status_code == 302


def order(job: Job, wall: str, run: str = "floor") -> list[str]:
    """The labels of a run."""
    return [one.what.label for one in runs_of(kitchen_of(job))[wall][run]]  # type: ignore[index]


def test_an_address_chooses_rows(desk: Client, job: Job) -> None:
    """A kind, on one wall or on all of them; without scripts it works the same."""

    def chosen(query: str) -> list[str]:
        boxes = dom(desk.get(f"/jobs/{job.pk}/several/{query}")).all("input[name=rows][checked]")
        return [box.attribute("value") for box in boxes]

    assert chosen("?only=wall") == keys(job, "W1", "W2")
    assert chosen("?only=all&wall=North") == keys(job, "B1", "A1", "B2", "F1", "W1", "W2")
    assert chosen("") == chosen("?only=tall") == []


def test_all_doors_of_what_is_chosen(desk: Client, job: Job) -> None:
    """Slab, in white oak; drawer fronts and cabinets that were not chosen stay. One step back."""
    before = Revision.objects.count()
    answer = act(
        desk, job, "fronts", "B1", "A1", "W2", which="door", build="slab", material="white oak"
    )

    assert answer.status_code == 302
    assert "3 fronts changed." in dom(desk.get(answer["Location"])).words
    said = Front.objects.filter(material="white oak").values_list(
        "opening__cabinet__label", "opening__closed_by", "build"
    )
    assert sorted(said) == [("B1", "door", "slab"), ("W2", "pair", "slab"), ("W2", "pair", "slab")]
    assert Revision.objects.count() == before + 1

    undo(desk, job)
    assert not Front.objects.filter(material="white oak").exists()


def test_fronts_are_left_to_the_standard_again(desk: Client, job: Job) -> None:
    """What is not said stays as it is."""
    act(desk, job, "fronts", "W1", build="slab", material="ash", made_by="bought")
    act(desk, job, "fronts", "W1", build="usual")
    front = Front.objects.get(opening__cabinet__label="W1")
    assert (front.build, front.material, front.made_by) == ("", "ash", "bought")


def test_a_run_is_copied_to_another_wall(desk: Client, job: Job) -> None:
    """Under labels that count on, in its order, with what stands between."""
    before = Revision.objects.count()
    made = act(desk, job, "copy", "B1", "A1", "B2", "F1", "W1", to=str(job.pk), new_wall="East")

    assert "Wall East is new." in dom(desk.get(made["Location"])).words
    assert order(job, "East") == ["B3", "A2", "B4", "F2"]
    assert order(job, "East", "upper") == ["W3"]
    assert order(job, "North") == ["B1", "A1", "B2", "F1"]
    assert Opening.objects.filter(cabinet__label="B4").get().fronts.count() == 3
    assert Revision.objects.count() == before + 1

    again = act(desk, job, "copy", "B1", to=str(job.pk), wall="East")
    said = dom(desk.get(again["Location"])).words
    assert "Copied to wall East: B5." in said
    assert "is new" not in said
    assert order(job, "East") == ["B3", "A2", "B4", "F2", "B5"]


def test_a_run_is_copied_as_in_a_mirror_to_another_job(desk: Client, job: Job) -> None:
    """The last comes first; a door that hung at the left hangs at the right."""
    other = JobFactory.create(shop=job.shop)
    drawer = Opening.objects.get(cabinet__label="B1", closed_by="drawer")
    BoxFactory.create(opening=drawer, side_clearance=inches(1), width=inches(13))
    answer = act(
        desk, job, "copy", "B1", "A1", "B2", "W1", to=str(other.pk), new_wall="Bay", turned="on"
    )

    assert answer["Location"] == f"/jobs/{other.pk}/?wall=Bay"
    assert order(other, "Bay") == ["B2", "A1", "B1"]
    assert order(other, "Bay", "upper") == ["W1"]
    door = Front.objects.get(opening__cabinet__job=other, opening__cabinet__label="W1")
    assert door.hinged == "right"
    box = Box.objects.get(front__opening__cabinet__job=other)
    assert box.side_clearance == drawer.width - inches(1) - inches(13)
    assert Cabinet.objects.filter(job=job).count() == 4


def test_walls_are_those_of_the_job_that_is_copied_to(desk: Client, job: Job) -> None:
    """They come along when another job is chosen; without scripts, when it is sent."""
    other = JobFactory.create(shop=job.shop)
    act(desk, job, "copy", "B1", to=str(other.pk), new_wall="Bay")

    def walls(page: Any) -> list[str]:
        return [option.words for option in dom(page).all("#several-wall option")]

    page = f"/jobs/{job.pk}/several/"
    assert walls(desk.get(page)) == ["Another wall", "North"]
    assert walls(desk.get(page, {"to": other.pk}, headers=HTMX)) == ["Another wall", "Bay"]
    refused = act(desk, job, "copy", "B2", to=str(other.pk), wall="North")
    assert (refused.status_code, walls(refused)) == (422, ["Another wall", "Bay"])
    assert act(desk, job, "copy", "B2", to=str(other.pk), wall="Bay").status_code == 302
    assert order(other, "Bay") == ["B1", "B2"]
    assert act(desk, job, "mirror", "B2", to=str(other.pk), wall="North").status_code == 302


def test_cabinets_are_mirrored_where_they_stand(desk: Client, job: Job) -> None:
    """Doors change hands, and back again; things are not changed."""
    for hand in ("right", "left"):
        assert act(desk, job, "mirror", "B1", "W1", "W2", "F1").status_code == 302
        hands = Front.objects.filter(opening__closed_by="door").values_list("hinged", flat=True)
        assert list(hands) == [hand, hand]
    assert order(job, "North") == ["B1", "A1", "B2", "F1"]


def test_rows_are_deleted(desk: Client, job: Job) -> None:
    """What followed them follows what is left; all of it comes back in one step."""
    act(desk, job, "delete", "A1", "B2", "W1")
    assert (order(job, "North"), order(job, "North", "upper")) == (["B1", "F1"], ["W2"])
    undo(desk, job)
    assert order(job, "North") == ["B1", "A1", "B2", "F1"]


@pytest.mark.parametrize(
    ("do", "said", "message"),
    [
        ("fronts", {}, "Say what their fronts are to be."),
        ("fronts", {"build": "slob"}, "Choose one from the list."),
        ("copy", {"to": "0", "wall": "East"}, "Choose one from the list."),
        ("copy", {"wall": "East"}, "Choose a job."),
        ("copy", {"to": "THIS", "wall": ""}, "Name the wall that the copies stand on"),
        ("copy", {"to": "THIS", "wall": "Nroth"}, "Choose one of the walls of that job"),
        ("sand", {}, "Press one of the buttons."),
    ],
)
def test_what_is_missing_is_said(
    do: str, said: dict[str, str], message: str, desk: Client, job: Job
) -> None:
    """At its field; what was chosen stays chosen, and nothing is done."""
    before = Revision.objects.count()
    if said.get("to") == "THIS":
        said = {**said, "to": str(job.pk)}
    answer = act(desk, job, do, "W1", **said)
    assert answer.status_code == 422
    assert message in dom(answer).words
    (box,) = dom(answer).all("input[name=rows][checked]")
    assert box.attribute("value") == keys(job, "W1")[0]
    assert Revision.objects.count() == before


def test_no_rows_no_change(desk: Client, job: Job) -> None:
    """It is said; and what is another job's is no row of this one."""
    assert "Choose at least one row." in dom(act(desk, job, "delete")).words
    other = JobFactory.create(shop=job.shop)
    body = {"rows": keys(job, "B1"), "do": "delete"}
    assert desk.post(f"/jobs/{other.pk}/several/", body).status_code == 422
    assert Cabinet.objects.filter(job=job).count() == 4


def test_no_copy_goes_to_another_shop(desk: Client, job: Job, stranger: Person) -> None:
    """Its jobs are not offered, and not taken."""
    theirs = JobFactory.create(shop=stranger.shop, number="SECRET-7")
    assert "SECRET-7" not in dom(desk.get(f"/jobs/{job.pk}/several/")).words
    answer = act(desk, job, "copy", "B1", to=str(theirs.pk), wall="East")
    assert answer.status_code == 422
    assert not Cabinet.objects.filter(job=theirs).exists()


def test_only_who_may_edit(job: Job, installer: Person, signed_in: SignIn) -> None:
    """The installer measures what there is."""
    assert signed_in(installer).get(f"/jobs/{job.pk}/several/").status_code == 403


@pytest.mark.parametrize("do", ["fronts", "copy", "mirror", "delete"])
def test_a_form_that_is_sent_twice_is_done_once(do: str, desk: Client, job: Job) -> None:
    """A double click, or a browser that tries again."""
    key = dom(desk.get(f"/jobs/{job.pk}/several/")).one("#several").field("form_key").value
    body = {
        "rows": keys(job, "W1"), "do": do, "form_key": key, "build": "slab",
        "to": str(job.pk), "new_wall": "East",
    }  # fmt: skip
    before = Revision.objects.count()
    answers = [desk.post(f"/jobs/{job.pk}/several/", body) for _ in range(2)]
    assert [answer.status_code for answer in answers] == [302, 302]
    assert Revision.objects.count() == before + 1
    assert "It is done already." in dom(desk.get(f"/jobs/{job.pk}/")).words


def test_a_mirrored_cabinets_own_standard_is_mirrored_too(desk: Client, job: Job) -> None:
    """As in a copy that is turned."""
    half = inches(1, 2)
    Cabinet.objects.filter(label="W1").update(
        overlay_left=inches(1, 4), overlay_right=inches(3, 4), overlay_top=half,
        overlay_bottom=half,
    )  # fmt: skip
    act(desk, job, "copy", "W1", to=str(job.pk), new_wall="East", turned="on")
    act(desk, job, "mirror", "W1")
    for label in ("W1", "W3"):
        sides = Cabinet.objects.filter(label=label).values_list("overlay_left", "overlay_right")
        assert sides.get() == (inches(3, 4), inches(1, 4))
