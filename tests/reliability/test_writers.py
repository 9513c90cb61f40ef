"""Two people post at the same moment, on every form of what others change too.

Each has a browser of their own, and a thread with a connection to the database of its own.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from itertools import count
from typing import Any

import pytest
from django.test import Client

from fronts.models import DoorOnHand, Opening
from shopjobs.models import Job, Person
from tests.dom import Part, dom
from tests.factories import PersonFactory
from tests.pages.kitchens import furnish
from tests.pages.shared.sending import as_sent, together
from tests.tried import Tally

pytestmark = [pytest.mark.django_db(transaction=True), pytest.mark.thorough]
SignIn = Callable[[Person], Client]
ROUNDS = (3, pytest.param(15, marks=pytest.mark.reliability))
VALUES = (1, 3, 5, 7, 9, 11, 13)
"""Sixteenths that nothing reduces, so that a form shows them again as they were typed."""


@dataclass(frozen=True)
class Form:
    """A form, and two facts of it with what is typed there: a number stands in it, or a choice."""

    path: str
    selector: str
    facts: tuple[tuple[str, str], tuple[str, str]]
    turns: Iterator[int] = field(default_factory=count)

    def typed(self, fact: int) -> tuple[str, str]:
        """A fact's name, and another value than it has."""
        name, words = self.facts[fact]
        turn = next(self.turns)
        choices = words.split("|")
        return name, choices[turn // 2 % len(choices)].format(VALUES[turn % len(VALUES)])


_STANDARD = (("front_thickness", "{}/16"), ("skin", "{}/16"))
_STOCK = (("knob_thread", "M{}"), ("knob_thread_depth", "{}/16"))
_JOB, _OPENING, _WAYS = "/jobs/{job}/", "/jobs/{job}/openings/{opening}/", "/shop/standard/"
FORMS: dict[str, tuple[str, str, tuple[tuple[str, str], tuple[str, str]]]] = {
    "job settings": (_JOB + "settings/", "#job-form", (("client", "C{}"), ("site", "S{}"))),
    "shop page": ("/shop/", "#shop-form", (("name", "Shop {}"), ("paper", "a4|letter"))),
    "shop's standard": (
        _WAYS + "screws/", "#shop-standard", (("bite", "{}/16"), ("skin", "{}/16"))
    ),
    "shop's stock": ("/shop/hardware/stock/", "#shop-stock", _STOCK),
    "shop's numbers": (
        _WAYS + "five-piece/", "#shop-standard", (("rail", "2 {}/16"), ("stile", "2 {}/16"))
    ),
    "shop's tables": (
        _WAYS + "materials/", "#shop-standard", (("material", "M{}"), ("frame_material", "F{}"))
    ),
    "cabinet": (_JOB + "cabinets/{cabinet}/", ".editor", (("wall", "W{}"), ("depth", "23 {}/16"))),
    "opening": (_OPENING, ".editor", (("width", "10 {}/16"), ("height", "20 {}/16"))),
    "front": (_OPENING + "fronts/0/", ".editor", (("material", "M{}"), ("thickness", "{}/16"))),
    "box": (_OPENING + "boxes/0/", ".editor", (("width", "12 {}/16"), ("height", "4 {}/16"))),
    "door on hand": (
        _JOB + "doors/{door}/", ".editor", (("width", "15 {}/16"), ("height", "25 {}/16"))
    ),
    "job's standard": (_JOB + "standard/", ".editor", _STANDARD),
    "cabinet's standard": (_JOB + "cabinets/{cabinet}/standard/", ".editor", _STANDARD),
    "opening's standard": (_OPENING + "standard/", ".editor", _STANDARD),
    "job's stock": (_JOB + "stock/", ".editor", _STOCK),
}  # fmt: skip


@pytest.fixture
def desks(owner: Person, job: Job, signed_in: SignIn) -> list[Client]:
    """Two browsers of two owners of the shop, beside a small kitchen."""
    furnish(job)
    other = PersonFactory.create(shop=owner.shop, owner=True, username="olga")
    return [signed_in(owner), signed_in(other)]


@pytest.fixture(params=FORMS)
def form(request: pytest.FixtureRequest, desks: list[Client], job: Job) -> Form:
    """Each of the forms, in the small kitchen."""
    path, selector, facts = FORMS[request.param]
    drawer = Opening.objects.get(closed_by="drawer")
    door = DoorOnHand.objects.get().pk
    keys = {"job": job.pk, "opening": drawer.pk, "cabinet": drawer.cabinet_id, "door": door}
    return Form(path.format(**keys), selector, facts)


def shown(form: Form, desk: Client) -> Part:
    """The form as its page shows it now."""
    return dom(desk.get(form.path)).one(form.selector)


def both_type(form: Form, desks: list[Client], typed: list[tuple[str, str]]) -> list[Any]:
    """What the two are answered, who opened the same form and save it at the same moment."""
    page = shown(form, desks[0])

    def sending(name: str, value: str) -> Callable[[Client], Any]:
        return lambda browser: browser.post(form.path, as_sent(page, **{name: value}))

    return together(*[(desk, sending(*fact)) for desk, fact in zip(desks, typed, strict=True)])


@pytest.mark.parametrize("rounds", ROUNDS)
def test_different_facts_are_both_kept(
    form: Form, desks: list[Client], rounds: int, tally: Tally
) -> None:
    """Whoever is second writes only what was touched."""
    for _ in range(rounds):
        typed = [form.typed(0), form.typed(1)]
        answers = both_type(form, desks, typed)
        page = shown(form, desks[0])
        statuses = [answer.status_code for answer in answers]
        lost = [f"{name} {value} lost" for name, value in typed if page.field(name).value != value]
        tally.of(*lost, *([] if statuses == [302, 302] else [f"answered {statuses}"]))
    tally.check()


@pytest.mark.parametrize("rounds", ROUNDS)
def test_of_the_same_fact_one_is_kept_and_the_other_is_asked(
    form: Form, desks: list[Client], rounds: int, tally: Tally
) -> None:
    """The second is shown both values; what the first saved stays until somebody chooses."""
    for _ in range(rounds):
        typed = [form.typed(0), form.typed(0)]
        answers = both_type(form, desks, typed)
        statuses = [answer.status_code for answer in answers]
        if sorted(statuses) != [302, 409]:
            tally.of(f"answered {statuses}")
            continue
        first, second = (typed[statuses.index(status)][1] for status in (302, 409))
        said = dom(answers[statuses.index(409)]).words
        held = shown(form, desks[0]).field(typed[0][0]).value
        faults = [] if held == first else [f"{first} was saved, {held} is held"]
        if not (f"“{first}” while you were typing" in said and f"yours is “{second}”" in said):
            faults.append("the second was not told both")
        tally.of(*faults)
    tally.check()
