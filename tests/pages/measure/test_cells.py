"""A wall's table: each cell saved as it is left, a block of them in one step."""

import json
from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Cabinet, Opening, Thing
from fronts.rules.practice import inches
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.factories import CabinetFactory, OpeningFactory, overlaid
from tests.pages.kitchens import HTMX, furnish

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """The owner at the desk."""
    return signed_in(owner)


@pytest.fixture
def base(job: Job) -> Cabinet:
    """A cabinet of 18 in with a door, its members 1 1/2 in wide."""
    overlaid(job)
    return OpeningFactory.create(cabinet=CabinetFactory.create(job=job)).cabinet


def key(row: Cabinet | Opening | Thing, fact: str) -> str:
    """The name of a cell."""
    return f"{type(row).__name__.lower()}-{row.pk}-{fact}"


def send(desk: Client, job: Job, cells: dict[str, str], **headers: str) -> Any:
    """Send what was typed, with what the cells showed."""
    page = dom(desk.get(f"/jobs/{job.pk}/"))
    seen = {name: page.one(f"[name='{name}']").value for name in cells}
    body = {**cells, "seen": json.dumps(seen)}
    return desk.post(f"/jobs/{job.pk}/cells/", body, headers=headers or HTMX)


def test_a_cell_is_saved_and_nothing_else(base: Cabinet, job: Job, desk: Client) -> None:
    """A depth, as a sum; what the form does not send stays as it is."""
    answer = send(desk, job, {key(base, "depth"): "54+24"})

    assert answer.status_code == 200
    assert "job-drawn" in answer["HX-Trigger-After-Settle"]
    assert dom(answer).has("[id='elevations'][hx-swap-oob='true']")
    base.refresh_from_db()
    assert (base.depth, base.width, base.label) == (inches(78), inches(18), "B1")


def test_openings_follow_their_cabinet(base: Cabinet, job: Job, desk: Client) -> None:
    """18 to 15: the door's opening is 3 in narrower, and comes back with Undo."""
    assert send(desk, job, {key(base, "width"): "15"}).status_code == 200

    assert Opening.objects.get().width == inches(12)
    form = dom(desk.get(f"/jobs/{job.pk}/")).one("#undo-bar form")
    desk.post(form.attribute("action"), {f.attribute("name"): f.value for f in form.all("input")})
    base.refresh_from_db()
    assert (base.width, Opening.objects.get().width) == (inches(18), inches(15))


@pytest.mark.parametrize(
    ("face", "fact", "typed", "message"),
    [
        ("door left 12 wide beside pair", "width", "17",
         "B1, width: 17 in leaves opening B1.b 1/2 in wide; 1 in is the least, "
         "so 17 1/2 in would do."),
        ("drawer 6 over pair", "height", "10",
         "B1, height: 10 in leaves no room for opening B1.b; 11 1/2 in would do."),
        ("pair", "width", "2", "B1, width: 2 in leaves no room for opening B1.a; 4 in would do."),
    ],
)  # fmt: skip
def test_a_size_too_small_for_the_openings_says_what_would_do(
    face: str, fact: str, typed: str, message: str, job: Job, desk: Client
) -> None:
    """At the size that was typed, in the sizes that it is about; and what would do does."""
    overlaid(job)
    wide = {"wall": "North", "kind": "base", "width": "36", "height": "30", "depth": "24", "y": "4"}
    desk.post(f"/jobs/{job.pk}/rows/new/", {**wide, "face": face}, headers=HTMX)
    cabinet = Cabinet.objects.get()

    answer = send(desk, job, {key(cabinet, fact): typed})

    assert answer.status_code == 422
    assert dom(answer).one(f"[id='{key(cabinet, fact)}-fault']").words == message
    *_, would_do = message.removesuffix(" would do.").replace("so ", "; ").split("; ")
    assert send(desk, job, {key(cabinet, fact): would_do}).status_code == 200


def test_of_a_block_with_a_mistake_nothing_is_saved(job: Job, desk: Client) -> None:
    """It is said so, and which cell is wrong; the other rows' cells are none the less typed."""
    furnish(job)
    first, second = Cabinet.objects.order_by("position")

    answer = send(desk, job, {key(first, "depth"): "20", key(second, "depth"): "2 x"})

    assert answer.status_code == 422
    assert "None of the 2 rows is saved: something in them is marked." in dom(answer).words
    assert dom(answer).has(f"[id='{key(second, 'depth')}-fault']")
    assert {one.depth for one in Cabinet.objects.all()} == {inches(24)}


def test_a_block_is_one_step_back(job: Job, desk: Client) -> None:
    """Two cabinets and a thing changed together are undone together."""
    furnish(job)
    first, second = Cabinet.objects.order_by("position")
    cells = {key(first, "depth"): "20", key(second, "depth"): "21", key(second, "label"): "B7"}

    answer = send(desk, job, cells)

    assert "2 rows are saved." in dom(answer).words
    told = Revision.objects.filter(job=job).order_by("-pk")[0]
    assert told.text == "B1: depth 24 → 20; B7: label B2 → B7, depth 24 → 21"


@pytest.mark.parametrize(
    ("fact", "said", "message"),
    [
        ("width", "18 1/0", "divides by zero"),
        ("width", "", "enter the width"),
        ("label", "", "enter a label"),
        ("face", "drawer 6 besde pair", "found “besde”"),
        ("face", "drawer 60 over pair", "B1, "),
    ],
)
def test_a_mistake_is_marked_at_its_cell(
    fact: str, said: str, message: str, base: Cabinet, job: Job, desk: Client
) -> None:
    """With what it wants; nothing is saved, and without scripts all stays typed."""
    cells = {key(base, fact): said, key(base, "depth"): "20"}
    answer = send(desk, job, cells)
    assert answer.status_code == 422
    assert message in dom(answer).one(f"[id='{key(base, fact)}-fault']").words

    page = send(desk, job, cells, **{"X-Plain": "browser"})
    assert page.status_code == 422
    cell = dom(page).one(f"[name='{key(base, fact)}']")
    assert (cell.value, cell.attribute("aria-invalid")) == (said, "true")
    assert dom(page).one(f"[name='{key(base, 'depth')}']").value == "20"
    base.refresh_from_db()
    assert base.depth == inches(24)


def test_a_face_in_words_becomes_openings(base: Cabinet, job: Job, desk: Client) -> None:
    """The door that was there stays a door, with what is decided about it."""
    Opening.objects.get().fronts.update(material="cherry")

    send(desk, job, {key(base, "face"): "drawer 6 over door right"})

    told = {each.label: (each.closed_by, each.height) for each in Opening.objects.all()}
    assert told == {"a": ("door", inches(20)), "b": ("drawer", inches(6))}
    door = Opening.objects.get(label="a").fronts.get()
    assert (door.material, door.hinged) == ("cherry", "right")
    page = dom(desk.get(f"/jobs/{job.pk}/"))
    assert page.one(f"[name='{key(base, 'face')}']").value == "drawer 6 over door right"


def test_two_people_in_one_cell(base: Cabinet, job: Job, desk: Client) -> None:
    """Who typed over what another saved meanwhile is told; another cell of the row goes along."""
    Cabinet.objects.update(width=inches(20))
    width, depth = key(base, "width"), key(base, "depth")

    clash = desk.post(
        f"/jobs/{job.pk}/cells/",
        {width: "19", "seen": json.dumps({width: "18"})},
        headers=HTMX,
    )
    assert clash.status_code == 422
    assert "made this “20” while you were typing" in dom(clash).words

    desk.post(
        f"/jobs/{job.pk}/cells/", {depth: "22", "seen": json.dumps({depth: "24"})}, headers=HTMX
    )
    base.refresh_from_db()
    assert (base.width, base.depth) == (inches(20), inches(22))


@pytest.mark.parametrize("seen", ["", "[]", "{", '{"x": 1}', '{"cabinet-1-width": null}'])
def test_what_was_seen_may_be_anything(seen: str, base: Cabinet, job: Job, desk: Client) -> None:
    """What no page of ours says is as good as nothing: what is there is told first."""
    cells = {key(base, "depth"): "20", "seen": seen}

    answer = desk.post(f"/jobs/{job.pk}/cells/", cells, headers=HTMX)

    assert answer.status_code == 422
    assert "made this “24”" in dom(answer).words


def test_rows_of_another_job_do_not_exist(base: Cabinet, desk: Client, shop: object) -> None:
    """Nor do keys that are none."""
    other = CabinetFactory.create(job__shop=shop)
    address = f"/jobs/{base.job_id}/cells/"

    assert desk.post(address, {key(other, "width"): "1"}, headers=HTMX).status_code == 404
    assert desk.post(address, {f"cabinet-{'9' * 18}-width": "1"}).status_code == 404


def test_the_installer_types_in_no_cell(
    base: Cabinet, job: Job, installer: Person, signed_in: SignIn
) -> None:
    """And sees the sizes as text."""
    client = signed_in(installer)

    assert client.post(f"/jobs/{job.pk}/cells/", {key(base, "width"): "1"}).status_code == 403
    table = dom(client.get(f"/jobs/{job.pk}/")).one("#cabinets")
    assert not table.has("input")
    assert "30 1/2" in table.words


def test_a_row_is_saved_without_scripts(base: Cabinet, job: Job, desk: Client) -> None:
    """Its own form sends its cells with what they showed, and leads back to the wall."""
    page = dom(desk.get(f"/jobs/{job.pk}/"))
    form = page.one(f"#cabinet-{base.pk}-cells")
    body = {field.attribute("name"): field.value for field in form.all("input")}
    body |= {name: page.one(f"[name='{name}']").value for name in json.loads(body["seen"])}

    answer = desk.post(form.attribute("action"), body | {key(base, "depth"): "22"})

    assert answer["Location"] == f"/jobs/{job.pk}/?wall=North"
    base.refresh_from_db()
    assert base.depth == inches(22)


def test_a_width_and_a_face_together_are_taken_back_at_once(job: Job, desk: Client) -> None:
    """An opening that followed its cabinet and then went comes back, and nothing is asked."""
    overlaid(job)
    lines = "wall N\nbase 30 high 24 deep 4 up\nB1 18 drawer 6 over pair"
    desk.post(f"/jobs/{job.pk}/lines/", {"lines": lines})
    before = kitchen_of(job)
    cabinet = Cabinet.objects.get()
    typed = {key(cabinet, "width"): "25", key(cabinet, "face"): "door left"}
    assert send(desk, job, typed).status_code == 200
    assert [one.closed_by for one in Opening.objects.all()] == ["door"]

    last = Revision.objects.filter(job=job).latest("pk")
    assert desk.post(f"/jobs/{job.pk}/undo/", {"revision": last.pk}).status_code == 302
    assert kitchen_of(job) == before


def test_a_size_is_held_against_the_face_that_comes_with_it(job: Job, desk: Client) -> None:
    """10 in high leave a drawer over doors no room, and are enough for the drawer alone."""
    overlaid(job)
    lines = "wall N\nbase 30 high 24 deep 4 up\nB1 18 drawer 6 over pair"
    desk.post(f"/jobs/{job.pk}/lines/", {"lines": lines})
    cabinet = Cabinet.objects.get()

    assert send(desk, job, {key(cabinet, "height"): "10"}).status_code == 422
    both = {key(cabinet, "height"): "10", key(cabinet, "face"): "drawer"}
    assert send(desk, job, both).status_code == 200
    assert [one.closed_by for one in Opening.objects.all()] == ["drawer"]
    again = {key(cabinet, "height"): "10", key(cabinet, "face"): "drawer 6 over pair"}
    refused = send(desk, job, again)
    assert refused.status_code == 422
    assert [one.closed_by for one in Opening.objects.all()] == ["drawer"]


def test_what_another_saved_meanwhile_is_told_to_the_table(
    base: Cabinet, job: Job, desk: Client
) -> None:
    """So that the same words, sent again, take its place; however many, in no header's room."""
    depth = key(base, "depth")
    body = {depth: "20", "seen": json.dumps({depth: "23"})}

    answer = desk.post(f"/jobs/{job.pk}/cells/", body, headers=HTMX)

    assert (answer.status_code, "HX-Trigger" in answer) == (422, False)
    theirs = dom(answer).one("#cell-faults").attribute("data-theirs")
    assert json.loads(theirs) == {depth: "24"}
    body["seen"] = json.dumps({depth: "24"})
    assert desk.post(f"/jobs/{job.pk}/cells/", body, headers=HTMX).status_code == 200
    base.refresh_from_db()
    assert base.depth == inches(20)
