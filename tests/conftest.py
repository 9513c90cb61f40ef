"""People with fixed meanings, for every test: a shop's three, and a stranger's shop."""

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from django.test import Client

from shopjobs.models import Job, Person, Role, Shop
from shopjobs.services.jobs import job_create
from shopjobs.services.people import person_create
from shopjobs.services.shops import shop_create

PASSWORD = "spokeshave and sawdust 9"
NOW = datetime(2027, 3, 1, 9, 30, tzinfo=UTC)


@pytest.fixture
def shop(db: None) -> Shop:
    """A shop that works in inches."""
    return shop_create(name="Alder Row Cabinets")


@pytest.fixture
def owner(shop: Shop) -> Person:
    """The shop's owner."""
    return person_create(
        shop=shop, username="ada", role=Role.OWNER, password=PASSWORD, at=NOW, first_name="Ada"
    )


@pytest.fixture
def office(shop: Shop) -> Person:
    """The shop's office."""
    return person_create(shop=shop, username="otto", role=Role.OFFICE, password=PASSWORD, at=NOW)


@pytest.fixture
def installer(shop: Shop) -> Person:
    """The shop's installer."""
    return person_create(shop=shop, username="ines", role=Role.INSTALLER, password=PASSWORD, at=NOW)


@pytest.fixture
def stranger(db: None) -> Person:
    """The owner of another shop."""
    other = shop_create(name="Birch Lane Joiners")
    return person_create(shop=other, username="boris", role=Role.OWNER, password=PASSWORD, at=NOW)


@pytest.fixture
def job(shop: Shop) -> Job:
    """A job of the shop, without a kitchen."""
    return job_create(shop=shop, number="K-1", client="Lindqvist", site="12 Hill Road", at=NOW)


@pytest.fixture
def signed_in() -> Callable[[Person], Client]:
    """Return a browser in which a person is signed in."""

    def client_of(person: Person) -> Client:
        client = Client()
        client.force_login(person)
        return client

    return client_of
