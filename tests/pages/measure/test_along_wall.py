"""The order along a wall, changed from its table."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Cabinet, Thing
from fronts.rules.runs import runs_of
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.factories import overlaid
from tests.pages.kitchens import HTMX

SignIn = Callable[[Person], Client]
WALL = """wall North
base 30 1/2 high 24 deep 4 up
B1 18 door left
appliance 24 dishwasher
B2 36 pair
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


def order(job: Job, run: str = "floor", wall: str = "North") -> list[str]:
    """The labels of a run."""
    return [one.what.label for one in runs_of(kitchen_of(job))[wall][run]]  # type: ignore[index]


def move(desk: Client, job: Job, label: str, to: str, **headers: str) -> Any:
    """Press a row's button."""
    row = (
        Cabinet.objects.filter(job=job, label=label).first()
        or Thing.objects.filter(job=job, label=label).first()
    )
    key = f"{'cabinet' if isinstance(row, Cabinet) else 'thing'}-{row.pk if row else 0}"
    body = {"to": to, "wall": "North"}
    return desk.post(f"/jobs/{job.pk}/rows/{key}/move/", body, headers=headers)


def test_a_row_goes_past_its_neighbour(desk: Client, job: Job) -> None:
    """A cabinet past an appliance and the reverse; the other run stays; at the end it stays."""
    assert move(desk, job, "B2", "earlier").status_code == 302
    assert order(job) == ["B1", "B2", "A1"]
    assert move(desk, job, "A1", "earlier", **HTMX).status_code == 200
    assert order(job) == ["B1", "A1", "B2"]
    assert order(job, "upper") == ["W1", "W2"]

    before = Revision.objects.count()
    answer = move(desk, job, "B1", "earlier", **HTMX)
    assert "B1 is the first of its run already." in dom(answer).words
    assert Revision.objects.count() == before


def test_what_follows_comes_with_the_answer(desk: Client, job: Job) -> None:
    """The drawing; the table asks for itself, so that what is typed in it stays."""
    answer = move(desk, job, "W2", "earlier", **HTMX)
    assert "W2 stands one place earlier." in dom(answer).words
    assert dom(answer).has("[id='elevations'][hx-swap-oob='true']")
    assert not dom(answer).all("[id='cabinets']")
    assert answer["HX-Reswap"] == "none"


@pytest.mark.parametrize("key", ["cabinet-99999", "opening-1", "thing-99999", "cabinet"])
def test_what_does_not_stand_there_is_not_found(desk: Client, job: Job, key: str) -> None:
    """Nor what is another job's."""
    assert desk.post(f"/jobs/{job.pk}/rows/{key}/move/", {"to": "later"}).status_code == 404


def test_lines_before_a_row(desk: Client, job: Job) -> None:
    """The form says where they go; what is entered stands there, in one step."""
    form = dom(desk.get(f"/jobs/{job.pk}/lines/?before=B2", headers=HTMX))
    assert "Write a line that goes before B2" in form.words
    before = Revision.objects.count()

    body = {"wall": "North", "before": "B2", "lines": "base\nB7 15 pull-out\nfiller 2"}
    answer = desk.post(f"/jobs/{job.pk}/lines/", body, headers=HTMX)

    assert "2 lines entered." in dom(answer).words
    assert order(job) == ["B1", "A1", "B7", "F1", "B2"]
    assert order(job, "upper") == ["W1", "W2"]
    assert Revision.objects.count() == before + 1
    assert not dom(answer).all("#lines [name=before]")


def test_lines_before_what_is_gone_stand_at_the_end(desk: Client, job: Job) -> None:
    """Somebody deleted it meanwhile."""
    body = {"wall": "North", "before": "B9", "lines": "base\nB7 15 pull-out"}
    desk.post(f"/jobs/{job.pk}/lines/", body, headers=HTMX)
    assert order(job) == ["B1", "A1", "B2", "B7"]
