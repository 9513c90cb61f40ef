"""What is decided about one front alone, and about all fronts of an opening together."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Opening
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import Answer, dom
from tests.factories import (
    BoxFactory,
    CabinetFactory,
    DoorOnHandFactory,
    JobFactory,
    OpeningFactory,
    overlaid,
)
from tests.pages.kitchens import HTMX, NEW_OPENING, no_rows, seen_in
from tests.saying import front_of

SignIn = Callable[[Person], Client]

FRONT = {
    "own_height": "", "thickness": "", "build": "", "material": "", "door_on_hand": "",
    "width": "", "height": "", "shift_x": "", "shift_y": "",
}  # fmt: skip
STACK = {**NEW_OPENING, "closed_by": "drawers", "count": "3"}


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


@pytest.fixture
def stack(job: Job) -> Opening:
    """Three drawers, 27 1/2 in high together."""
    overlaid(job)
    return OpeningFactory.create(
        cabinet=CabinetFactory.create(job=job), closed_by="drawers", count=3
    )


def way(opening: Opening, index: int = 0) -> str:
    """The page of one front."""
    return f"/jobs/{opening.cabinet.job_id}/openings/{opening.pk}/fronts/{index}/"


def bare(opening: Opening, index: int = 0) -> dict[str, str]:
    """A front's form in which nothing is typed, and whose table of places is empty."""
    return {**FRONT, **no_rows(f"handles-{opening.pk}-{index}")}


def change(client: Client, address: str, **typed: str) -> tuple[int, Answer]:
    """Open a form, type, and save; the answer's code and page."""
    page = dom(client.get(address))
    empty = FRONT if "/fronts/" in address else STACK
    known = seen_in(page) | {
        field.attribute("name"): field.value
        for field in page.all("form.editor input[type=hidden]")
        if field.attribute("name").endswith("_FORMS")
    }
    answer = client.post(address, empty | known | typed, headers=HTMX)
    return answer.status_code, dom(answer)


def kept(opening: Opening, name: str) -> list[object]:
    """What is decided about each front of the opening, from the top."""
    return list(opening.fronts.order_by("position").values_list(name, flat=True))


def test_one_front_is_decided_about_alone(stack: Opening, desk: Client) -> None:
    """Its line says what; the others stay as they are, and so does its box."""
    BoxFactory.create(opening=stack)
    typed = {
        "own_height": "6", "build": "slab", "thickness": "7/8", "material": "hard maple",
        "shift_x": "-1/8",
    }  # fmt: skip

    status, page = change(desk, way(stack), **typed)

    assert status == 200
    lines = [line.words for line in page.all(".boxes li") if line.words.startswith("Front ")]
    for words in ("6 high", "moved off its place", "slab", "hard maple", "7/8 thick"):
        assert words in lines[0]
    assert ["as usual" in line for line in lines] == [False, True, True]
    assert kept(stack, "own_height") == [inches(6), None, None]
    assert kept(stack, "build") == ["slab", "", ""]
    assert kept(stack, "shift_x") == [-inches(1, 8), Mm(0), Mm(0)]
    assert front_of(stack).box.rise == inches(1, 2)


def test_the_form_starts_with_what_was_decided(stack: Opening, desk: Client) -> None:
    """Only what is to be otherwise is typed."""
    change(desk, way(stack, 1), own_height="8", build="five-piece", material="cherry")

    page = dom(desk.get(way(stack, 1)))

    assert page.one("h1").words == "Front B1.a.2"
    named = ("own_height", "build", "material", "thickness")
    assert [page.field(name).value for name in named] == ["8", "five-piece", "cherry", ""]


def test_without_htmx_the_browser_is_led_back(stack: Opening, desk: Client) -> None:
    """The page leads back to the opening's line, and says what was done."""
    version = seen_in(dom(desk.get(way(stack, 2))))

    answer = desk.post(way(stack, 2), {**bare(stack, 2), **version, "material": "oak"})

    at = f"opening-{stack.pk}"
    assert answer["Location"] == f"/jobs/{stack.cabinet.job_id}/?at={at}#{at}"
    assert "Front B1.a.3 is saved." in dom(desk.get(answer["Location"])).words


def test_only_what_the_front_has_a_use_for_is_asked(job: Job, desk: Client) -> None:
    """A door is asked for its hinges, a drawer of a stack for its height."""
    cabinet = CabinetFactory.create(job=job)
    door = OpeningFactory.create(cabinet=cabinet, height=inches(12))
    drawers = OpeningFactory.create(cabinet=cabinet, y=inches(15), closed_by="drawers", count=2)

    for opening, asked in ((door, [True, False]), (drawers, [False, True])):
        page = dom(desk.get(way(opening)))
        assert [page.has(f'[name="{name}"]') for name in ("hinged", "own_height")] == asked


@pytest.mark.parametrize(
    ("typed", "field", "message"),
    [
        ({"own_height": "high"}, "own_height", "enter one like 23 5/8."),
        ({"thickness": "0"}, "thickness", "is nothing"),
        ({"build": "carved"}, "build", "Choose one from the list"),
        ({"material": "x" * 200}, "material", "characters"),
        ({"door_on_hand": "D9"}, "door_on_hand", "Choose one from the list"),
        ({"door_on_hand": "D1"}, "door_on_hand", "Choose one from the list"),
    ],
)
def test_a_fault_stands_at_its_field(
    typed: dict[str, str], field: str, message: str, stack: Opening, desk: Client
) -> None:
    """Nothing is kept; what was typed stays."""
    DoorOnHandFactory.create(job=stack.cabinet.job)

    status, page = change(desk, way(stack), **{"material": "ash", **typed})

    assert status == 422
    assert message in page.one(f"#front-{stack.pk}-0-{field}_error").words
    assert page.field(field).value in (typed[field], "")
    assert page.field("material").value == typed.get("material", "ash")
    assert kept(stack, "material") == ["", "", ""]


def test_a_door_becomes_the_front_of_an_opening(job: Job, desk: Client) -> None:
    """A single front is made from a door by its label, or from whichever fits."""
    door = DoorOnHandFactory.create(job=job)
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))

    change(desk, way(opening), door_on_hand="D1")
    assert front_of(opening).door == door
    change(desk, way(opening), door_on_hand="choose")
    assert (front_of(opening).door, front_of(opening).choose) == (None, True)


def test_what_is_not_there_is_not_found(
    stack: Opening, desk: Client, stranger: Person, signed_in: SignIn
) -> None:
    """A fourth front, the front by another job's address, and all of it for another shop."""
    other = JobFactory.create(shop=stack.cabinet.job.shop)
    elsewhere = way(stack).replace(f"/jobs/{stack.cabinet.job_id}/", f"/jobs/{other.pk}/")

    for client, address in (
        (desk, way(stack, 3)), (desk, elsewhere), (signed_in(stranger), way(stack)),
    ):  # fmt: skip
        assert client.get(address).status_code == 404
        assert client.post(address, {**FRONT, "material": "oak"}).status_code == 404
    assert kept(stack, "material") == ["", "", ""]


def test_the_installer_decides_about_no_front(
    stack: Opening, installer: Person, signed_in: SignIn
) -> None:
    """Fronts are the desk's; the installer sees what is decided, without the way to change it."""
    client = signed_in(installer)

    assert client.get(way(stack)).status_code == 403
    assert client.post(way(stack), FRONT).status_code == 403
    page = dom(client.get(f"/jobs/{stack.cabinet.job_id}/"))
    assert "Front 1 from the top" in page.words
    assert not [address for address in page.addresses if "/fronts/" in address]


@pytest.mark.parametrize("together", [False, True])
def test_a_stale_form_names_what_differs(
    together: bool, stack: Opening, desk: Client, office: Person, signed_in: SignIn
) -> None:
    """Who saved it, alone or with its opening, and each fact in words, theirs and the typed one."""
    stale, other = seen_in(dom(desk.get(way(stack)))), signed_in(office)
    if together:
        change(other, f"/jobs/{stack.cabinet.job_id}/openings/{stack.pk}/", front_material="oak")
    else:
        change(other, way(stack), material="oak")

    answer = desk.post(way(stack), {**bare(stack), **stale, "material": "ash", "shift_y": "1/8"})

    assert answer.status_code == 409
    told = dom(answer).one(".summary").words
    assert "otto, at " in told
    assert "made this “oak” while you were typing; yours is “ash”." in told
    assert "1/8" not in told
    assert front_of(stack).material == "oak"
    again = {**bare(stack), **seen_in(dom(answer)), "material": "ash"}
    assert desk.post(way(stack), again).status_code == 302
    assert front_of(stack).material == "ash"


def test_a_door_for_several_fronts_is_refused_at_its_field(stack: Opening, desk: Client) -> None:
    """The opening's form offers doors for what it may become; a stack can't be one door."""
    DoorOnHandFactory.create(job=stack.cabinet.job)
    address = f"/jobs/{stack.cabinet.job_id}/openings/{stack.pk}/"

    status, page = change(desk, address, front_door_on_hand="D1")

    assert status == 422
    fault = page.one(f"#opening-{stack.pk}-front_door_on_hand_error")
    assert "A named door serves a single front" in fault.words


def test_where_fronts_differ_silence_changes_none(stack: Opening, desk: Client) -> None:
    """The opening's form says that they differ; what is typed there is said of all."""
    address = f"/jobs/{stack.cabinet.job_id}/openings/{stack.pk}/"
    change(desk, way(stack), build="slab", material="oak")
    change(desk, way(stack, 1), build="five-piece", shift_x="1/8")
    page = dom(desk.get(address))
    assert page.field("front_build").all("option")[0].words == "They differ"
    for name in ("front_build", "front_material", "front_shift_x"):
        assert page.field(name).value == ""
    for name in ("front_material", "front_shift_x"):
        assert page.field(name).attribute("placeholder") == "they differ"
    assert page.one("details:has([name=front_build])").carries("open")

    status, _ = change(desk, address, front_thickness="1")
    assert status == 200
    assert kept(stack, "build") == ["slab", "five-piece", ""]
    assert kept(stack, "material") == ["oak", "", ""]
    assert kept(stack, "shift_x") == [Mm(0), inches(1, 8), Mm(0)]
    assert kept(stack, "thickness") == [inches(1)] * 3

    change(desk, address, front_thickness="1", front_build="slab", front_shift_x="0")
    assert kept(stack, "build") == ["slab"] * 3
    assert kept(stack, "shift_x") == [Mm(0)] * 3
