"""What follows from a size that is mended on site, front by front, before and after."""

from collections.abc import Callable
from typing import Any

import pytest
from django.test import Client

from fronts.models import Opening
from shopjobs.models import Job, Person
from tests.dom import Answer, dom
from tests.factories import BoxFactory, door_and_drawer, overlaid
from tests.pages.kitchens import HTMX
from tests.pages.on_site.test_sizes import at, take

SignIn = Callable[[Person], Client]


@pytest.fixture
def drawer(job: Job) -> Opening:
    """An opening 15 × 7 with a box behind its drawer front, laps of 1/2 all round."""
    overlaid(job)
    opening = Opening.objects.get(cabinet=door_and_drawer(job), label="b")
    BoxFactory.create(opening=opening)
    return opening


@pytest.fixture
def phone(installer: Person, signed_in: SignIn) -> Client:
    """The installer's."""
    return signed_in(installer)


def told(answer: Any) -> dict[str, list[str]]:
    """What is told of each front."""
    page: Answer = dom(answer)
    names = [part.words for part in page.all(".follows dt")]
    figures = [[line.words for line in part.all("li")] for part in page.all(".follows dd")]
    return dict(zip(names, figures, strict=True))


@pytest.mark.parametrize("headers", [{}, HTMX], ids=["plain", "htmx"])
def test_a_wider_opening_makes_a_wider_front(
    headers: dict[str, str], drawer: Opening, phone: Client
) -> None:
    """With a script and without: 15 1/8 with laps of 1/2 is 16 1/8; 1/16 more past each side of
    the box, which stands in the middle; the other front stays and is not told."""
    answer = take(phone, at(drawer, "width-top"), "15 1/8", headers=headers, follow=True)

    found = told(answer)
    assert list(found) == ["B1.b"]
    assert "width 16 → 16 1/8" in found["B1.b"]
    offset = next(each for each in found["B1.b"] if each.startswith("side offset"))
    assert " → " in offset
    assert "more: weight, holes and the like" in found["B1.b"][-1]


def test_a_size_as_planned_changes_nothing(drawer: Opening, phone: Client) -> None:
    """There is nothing to tell, and nothing is told."""
    answer = take(phone, at(drawer, "width-top"), "15", headers=HTMX)
    assert not dom(answer).has(".follows")
    assert "What follows" not in dom(answer).words
