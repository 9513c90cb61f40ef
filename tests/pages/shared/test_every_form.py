"""What holds for every form of the site that somebody types in."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.rules.date_facts import STAGES
from shopjobs.models import Job, Person
from tests.dom import Part, dom
from tests.every_page import every_page
from tests.pages.kitchens import furnish

SignIn = Callable[[Person], Client]
TYPED = 'input:not([type="hidden"], [type="file"], [type="password"]), select, textarea'
ONLY_CHANGES = {
    "job-form", "shop-form", "person-form", "client-form", "merge-form", "fit-day", "job-days",
    "shop-dates", "closed", "currency", *(f"mark-{stage}" for stage in STAGES),
}  # fmt: skip
"""Forms of what is there already: sent twice, they still say the same."""


@pytest.fixture
def forms(job: Job, owner: Person, signed_in: SignIn) -> dict[str, list[Part]]:
    """The forms that one types in, by the names of their pages."""
    furnish(job)
    shown = {
        name: [form for form in dom(answer).all('form[method="post"]') if form.has(TYPED)]
        for name, _, answer in every_page(signed_in(owner), job, owner)
    }
    return {name: found for name, found in shown.items() if found}


CHANGES = (
    "-edit",
    "-measured",
    "job-standard",
    "kind-standard",
    "cabinet-standard",
    "opening-standard",
    "-stock",
    "job-boxes",
    "what-if",
)
"""What the addresses of forms end in that change what is there."""


def test_each_is_known_by_its_id(forms: dict[str, list[Part]]) -> None:
    """A draft is kept under it, and so no page has the same one twice."""
    assert len(forms) > 15
    assert [name for name, found in forms.items() if "" in [form.id for form in found]] == []
    assert [
        name for name, found in forms.items() if len({form.id for form in found}) < len(found)
    ] == []


def test_each_that_makes_something_has_its_key(forms: dict[str, list[Part]]) -> None:
    """By which it is known when it is sent twice; a change is known by its values."""
    assert [
        f"{name}: {form.id}"
        for name, found in forms.items()
        for form in found
        if form.has('input[name="form_key"]') == (form.id in ONLY_CHANGES or name.endswith(CHANGES))
    ] == []
