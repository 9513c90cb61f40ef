"""Openings entered, changed and measured."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Opening
from fronts.rules.kinds import CLOSINGS
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches
from fronts.rules.validity import belongs
from shopjobs.models import Job, Person
from tests.dom import Answer, dom
from tests.factories import (
    CabinetFactory,
    DoorOnHandFactory,
    OpeningFactory,
)
from tests.pages.kitchens import HTMX, NEW_OPENING, seen_in
from tests.saying import front_of

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def change(client: Client, opening: Opening, **typed: str) -> tuple[int, Answer]:
    """Open the form of an opening, type, and save; the answer's code and page."""
    address = f"/jobs/{opening.cabinet.job_id}/openings/{opening.pk}/"
    version = seen_in(dom(client.get(address)))
    answer = client.post(address, {**NEW_OPENING, **version, **typed}, headers=HTMX)
    return answer.status_code, dom(answer)


def own_heights(opening: Opening) -> list[Mm | None]:
    """The heights in the stack that somebody gave, from the top."""
    return list(opening.fronts.order_by("position").values_list("own_height", flat=True))


def test_the_first_opening_starts_as_the_whole_face(job: Job, desk: Client) -> None:
    """An empty cabinet offers what its members leave."""
    cabinet = CabinetFactory.create(job=job)

    page = dom(desk.get(f"/jobs/{job.pk}/cabinets/{cabinet.pk}/openings/new/"))

    assert page.field("label").value == "a"
    assert [page.field(name).value for name in ("x", "y", "width", "height")] == [
        "1 1/2", "1 1/2", "15", "27 1/2",
    ]  # fmt: skip


def test_the_next_opening_starts_as_what_is_left(job: Job, desk: Client) -> None:
    """Under a drawer's opening the rest is offered, with members like the others."""
    cabinet = CabinetFactory.create(job=job)
    OpeningFactory.create(cabinet=cabinet, y=inches(24), height=inches(5), closed_by="drawer")

    page = dom(desk.get(f"/jobs/{job.pk}/cabinets/{cabinet.pk}/openings/new/"))

    assert page.field("label").value == "b"
    assert [page.field(name).value for name in ("x", "y", "width", "height")] == [
        "1 1/2", "1 1/2", "15", "21",
    ]  # fmt: skip


def test_an_opening_is_entered_in_its_cabinet(job: Job, desk: Client) -> None:
    """htmx gets the way to the next one; the opening's row comes with the table."""
    cabinet = CabinetFactory.create(job=job)

    answer = desk.post(
        f"/jobs/{job.pk}/cabinets/{cabinet.pk}/openings/new/", NEW_OPENING, headers=HTMX
    )

    assert answer["HX-Retarget"] == f"#opening-new-{cabinet.pk}"
    assert "job-changed" in answer["HX-Trigger-After-Settle"]
    assert "Door, hinged left" in dom(desk.get(f"/jobs/{job.pk}/")).one("#cabinets").words
    assert dom(answer).one(".adds a").carries("autofocus")
    assert Opening.objects.get().cabinet == cabinet


def test_an_opening_stays_in_its_cabinet(job: Job, desk: Client) -> None:
    """What goes past the cabinet is refused at the size that does."""
    cabinet = CabinetFactory.create(job=job)

    answer = desk.post(
        f"/jobs/{job.pk}/cabinets/{cabinet.pk}/openings/new/", {**NEW_OPENING, "width": "17"}
    )

    assert answer.status_code == 422
    assert "The opening ends 1/2 in past cabinet B1." in dom(answer).words


def test_drawers_take_a_count_and_heights(job: Job, desk: Client) -> None:
    """Heights run from the top; an empty place shares the rest."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))

    status, page = change(desk, opening, closed_by="drawers", count="3", heights="6,,")

    assert status == 200
    assert own_heights(opening) == [inches(6), None, None]
    assert "3 drawers" in page.words


def test_heights_that_are_left_out_share_the_rest(job: Job, desk: Client) -> None:
    """One height alone is the top drawer's."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))

    status, _ = change(desk, opening, closed_by="drawers", count="3", heights="6 1/2")

    assert status == 200
    assert own_heights(opening) == [inches(13, 2), None, None]


def test_a_stack_starts_with_three_drawers(job: Job, desk: Client) -> None:
    """Whatever closed the opening before, or the opening above it."""
    cabinet = CabinetFactory.create(job=job)
    opening = OpeningFactory.create(cabinet=cabinet, closed_by="pair", height=inches(10))

    here = f"/jobs/{job.pk}"
    assert dom(desk.get(f"{here}/openings/{opening.pk}/")).field("count").value == "3"
    assert dom(desk.get(f"{here}/cabinets/{cabinet.pk}/openings/new/")).field("count").value == "3"


@pytest.mark.parametrize(
    ("typed", "field", "message"),
    [
        ({"closed_by": "drawers", "count": ""}, "count", "Enter how many drawers"),
        ({"closed_by": "drawers", "count": "0"}, "count", "Give 1 or more"),
        (
            {"closed_by": "drawers", "count": "2", "heights": "6,6,6"},
            "heights",
            "These are 3 heights for 2 drawers",
        ),
        ({"width": "wide"}, "width", "enter one like 23 5/8."),
        ({"front_shift_x": "far"}, "front_shift_x", "enter one like 1/2."),
        (
            {"measured_diagonal_1": "31"},
            "measured_diagonal_2",
            "Give both diagonals, or neither.",
        ),
        ({"front_door_on_hand": "D9"}, "front_door_on_hand", "Choose one from the list"),
        ({"measured_width_top": "0"}, "measured_width_top", "is nothing"),
        ({"closed_by": "curtain"}, "closed_by", "Choose one from the list"),
    ],
)
def test_a_fault_stands_at_its_field(
    typed: dict[str, str], field: str, message: str, job: Job, desk: Client
) -> None:
    """Nothing is kept, and a folded part with a fault in it is open."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))

    status, page = change(desk, opening, **typed)

    assert status == 422
    assert page.has(f"[id='opening-{opening.pk}-{field}_error']")
    assert message in page.words
    for folded in page.all(f"details:has([name='{field}'])"):
        assert folded.carries("open")


def test_what_a_door_has_no_use_for_is_no_fault(job: Job, desk: Client) -> None:
    """The count of a stack that is now a door is dropped, whatever it says."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))

    status, _ = change(desk, opening, closed_by="door", count="none", heights="x")

    assert status == 200


@pytest.mark.parametrize("choose", [True, False])
def test_a_door_on_hand_becomes_the_front(choose: bool, job: Job, desk: Client) -> None:
    """The list offers each door by its label, and whichever fits best."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    door = DoorOnHandFactory.create(job=job)

    _, page = change(desk, opening, front_door_on_hand="choose" if choose else "D1")

    front = front_of(opening)
    assert (front.choose, front.door) == (choose, None if choose else door)
    assert ("a door on hand that fits" if choose else "door D1") in page.words
    shown = dom(desk.get(f"/jobs/{job.pk}/openings/{opening.pk}/"))
    assert shown.field("front_door_on_hand").value == ("choose" if choose else "D1")


def test_the_installer_enters_what_was_measured(
    job: Job, installer: Person, signed_in: SignIn
) -> None:
    """Measured sizes are the installer's; nothing else of the opening changes with them."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    client, address = signed_in(installer), f"/jobs/{job.pk}/openings/{opening.pk}/measured/"
    page = dom(client.get(address))
    assert page.field("measured_width_top").attribute("placeholder") == "planned 15"

    answer = client.post(
        address,
        {"measured_width_top": "14 15/16", "width": "3", "closed_by": "open"} | seen_in(page),
    )

    assert answer.status_code == 302
    opening.refresh_from_db()
    assert opening.measured_width_top == inches(239, 16)
    assert (opening.width, opening.closed_by) == (inches(15), "door")
    everything = f"/jobs/{job.pk}/openings/{opening.pk}/"
    assert client.get(everything).status_code == 403
    assert client.post(everything, NEW_OPENING).status_code == 403


def test_what_is_measured_meanwhile_stays(
    job: Job, desk: Client, installer: Person, signed_in: SignIn
) -> None:
    """What the installer measured meanwhile is not lost to a form that didn't know of it."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    address = f"/jobs/{job.pk}/openings/{opening.pk}/"
    stale = seen_in(dom(desk.get(address)))
    site = signed_in(installer)
    fresh = seen_in(dom(site.get(address + "measured/")))
    site.post(address + "measured/", {"measured_height_left": "27", **fresh})

    answer = desk.post(address, {**NEW_OPENING, "width": "14", **stale})

    assert answer.status_code == 302
    opening.refresh_from_db()
    assert (opening.measured_height_left, opening.width) == (inches(27), inches(14))


@pytest.mark.parametrize(
    ("field", "fact"),
    [("front_hinged", "hinged"), ("count", "count"), ("heights", "own_height")],
)
def test_a_field_says_which_ways_of_closing_have_a_use_for_it(
    field: str, fact: str, job: Job, desk: Client
) -> None:
    """The page puts a field away by the rule by which a file with its fact is refused."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))

    page = dom(desk.get(f"/jobs/{job.pk}/openings/{opening.pk}/"))

    cell = page.one(f".cell:has([name='{field}'])")
    uses = [name for name, closing in CLOSINGS.items() if belongs(fact, closing)]
    assert cell.attribute("data-when") == f"closed_by: {' '.join(uses)}"
