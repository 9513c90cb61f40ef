"""Signing in and out."""

from django.test import Client

from shopjobs.models import Person
from tests.conftest import PASSWORD


def test_a_person_signs_in_and_sees_the_jobs(owner: Person) -> None:
    """Name and password lead to the jobs of the shop."""
    client = Client()

    answer = client.post("/sign-in/", {"username": "ada", "password": PASSWORD}, follow=True)

    assert answer.status_code == 200
    assert [("/jobs/", 302)] == answer.redirect_chain
    assert "Alder Row Cabinets" in answer.text
