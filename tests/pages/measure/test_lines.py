"""Lines of a notebook, typed or pasted, become rows of the wall's table."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Cabinet, Opening, Thing, Wall
from fronts.rules.practice import inches
from fronts.rules.runs import stood
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import CabinetFactory, overlaid
from tests.pages.kitchens import HTMX

SignIn = Callable[[Person], Client]
LINES = """wall North 150 1/4
base 30 1/2 high 24 deep 4 up
B1 18 door left
B2 36 fixed 6 over pair   # the sink
appliance 24 dishwasher
B3 18 4 drawers 5, , 7, 8
"""


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """The owner at the desk."""
    return signed_in(owner)


def test_a_notebook_becomes_a_wall(job: Job, desk: Client) -> None:
    """Cabinets with their openings, what stands between them, the wall's length: one step."""
    overlaid(job)

    answer = desk.post(f"/jobs/{job.pk}/lines/", {"lines": LINES}, headers=HTMX)

    assert answer.status_code == 200
    assert "5 lines entered. Wall North is new." in dom(answer).words
    assert dom(answer).one("textarea").words == ""
    placed = [(one.label, one.x) for one in stood(kitchen_of(job)).cabinets]
    assert placed == [("B1", 0), ("B2", inches(18)), ("B3", inches(78))]
    assert Wall.objects.get().length == inches(601, 4)
    assert (Thing.objects.get().after, Thing.objects.get().name) == ("B2", "dishwasher")
    sink = Opening.objects.filter(cabinet__label="B2").order_by("label")
    assert [(one.closed_by, one.height) for one in sink] == [
        ("fixed", inches(6)), ("pair", inches(20)),
    ]  # fmt: skip


def test_a_line_goes_on_from_what_stands_on_the_wall(job: Job, desk: Client) -> None:
    """Kind, sizes and build are those of the last cabinet; labels are counted on."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North", height=inches(30), depth=inches(22))
    for lines in ("filler 3", "B7 20 pair", "filler 2"):
        desk.post(f"/jobs/{job.pk}/lines/", {"lines": lines, "wall": "North"}, headers=HTMX)

    page = dom(desk.get(f"/jobs/{job.pk}/?wall=North"))
    assert "A line below goes on with base cabinets 30 high 22 deep 4 up, until" in page.words
    added = Cabinet.objects.get(label="B7")
    assert (added.height, added.depth, added.wall) == (inches(30), inches(22), "North")
    assert [(one.label, one.after) for one in Thing.objects.order_by("position")] == [
        ("F1", "B1"), ("F2", "B7"),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("lines", "message"),
    [
        ("", "Write a line"),
        ("B2 36 dor left", "Line 1: found “dor”"),
        ("\n\nB1 18 door left", "Line 3: found “B1”, wanted a label of its own: the kitchen has"),
        ("base 30 high", "Line 1: "),
    ],
)
def test_a_line_that_is_not_understood_stays(
    lines: str, message: str, job: Job, desk: Client
) -> None:
    """With its number and what may stand there; nothing of the rest is entered."""
    overlaid(job)
    CabinetFactory.create(job=job, wall="North", kind="wall", y=inches(54))
    body = {"lines": f"{lines}\nB9 20 pair" if lines else "", "wall": "North"}

    for headers in (HTMX, {}):
        answer = desk.post(f"/jobs/{job.pk}/lines/", body, headers=headers)
        assert answer.status_code == 422
        assert message in dom(answer).words
        assert dom(answer).one("textarea").words.split() == body["lines"].split()
    assert Cabinet.objects.count() == 1


def test_the_same_lines_sent_twice_are_entered_once(job: Job, desk: Client) -> None:
    """A double click, or an answer that got lost."""
    overlaid(job)
    form_key = dom(desk.get(f"/jobs/{job.pk}/")).one("#lines").field("form_key").value
    body = {"lines": LINES, "form_key": form_key, "wall": ""}

    answers = [desk.post(f"/jobs/{job.pk}/lines/", body, headers=HTMX) for _ in range(2)]

    assert [answer.status_code for answer in answers] == [200, 200]
    assert Cabinet.objects.count() == 3


def test_one_wall_is_shown_at_a_time(job: Job, desk: Client) -> None:
    """Its own, by its name or by what stands on it; all of them when they are asked for."""
    overlaid(job)
    north, east = (CabinetFactory.create(job=job, label=f"B{n}", wall=wall)
                   for n, wall in enumerate(("North", "East"), 1))  # fmt: skip

    def rows(query: str) -> list[str]:
        page = dom(desk.get(f"/jobs/{job.pk}/{query}"))
        return [row.attribute("id") for row in page.all("#cabinets [role=rowgroup]")]

    assert rows("") == rows("?wall=North") == rows("?wall=none") == [f"cabinet-{north.pk}"]
    assert rows("?wall=East") == rows(f"?at=cabinet-{east.pk}") == [f"cabinet-{east.pk}"]
    assert len(dom(desk.get(f"/jobs/{job.pk}/?wall=+*")).all("#elevations svg")) == 2
