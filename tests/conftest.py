"""People with fixed meanings, for every test: a shop's three, and a stranger's shop.

Property tests try the same examples each time, so that nothing fails by chance; new ones
are tried when they are asked for.
"""

import logging
from collections.abc import Callable, Iterator
from typing import Any

import pytest
from django.test import Client
from hypothesis import HealthCheck, Phase, settings
from hypothesis.internal.conjecture import providers
from hypothesis.internal.constants_ast import Constants

from shopjobs.models import Job, Person, Shop
from tests.factories import JobFactory, PersonFactory, ShopFactory
from tests.jsonlog import JsonLog
from tests.tried import pytest_terminal_summary, tally

__all__ = ["pytest_terminal_summary", "tally"]

# Examples must not depend on which modules happen to be loaded: without this, hypothesis draws
# numbers that stand in their source, and a test by itself tries others than within the suite.
providers._get_local_constants = Constants

BUSY: dict[str, Any] = {"deadline": None, "suppress_health_check": [HealthCheck.too_slow]}
"""However busy the machine is: how long an example takes says nothing of what is tried."""
settings.register_profile("fixed", derandomize=True, **BUSY)
settings.register_profile("explore", derandomize=False, print_blob=True, **BUSY)
settings.register_profile(
    "unshrunk", derandomize=True, phases=(Phase.explicit, Phase.generate)
)  # for trials that only ask whether a test fails
settings.load_profile("fixed")


def pytest_report_header(config: pytest.Config) -> str | None:
    """Say how the same examples are tried again."""
    seed = config.getoption("--hypothesis-seed")
    return None if seed is None else f"property tests explore: manage.py test --explore={seed}"


OF_A_DATABASE = {"db", "transactional_db", "live_server"}


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Mark what may ask the database: on another one all the rest would be as it was.

    Whoever asks for `request` may take any fixture later on.
    """
    for item in items:
        assert isinstance(item, pytest.Function)
        asked_for = OF_A_DATABASE & {*item.fixturenames} or "request" in item._fixtureinfo.argnames
        if asked_for or item.get_closest_marker("django_db"):
            item.add_marker("database")


@pytest.fixture
def shop(db: None) -> Shop:
    """A shop that works in inches."""
    return ShopFactory.create(name="Alder Row Cabinets")


@pytest.fixture
def owner(shop: Shop) -> Person:
    """The shop's owner."""
    return PersonFactory.create(shop=shop, owner=True, username="ada", first_name="Ada")


@pytest.fixture
def office(shop: Shop) -> Person:
    """The shop's office."""
    return PersonFactory.create(shop=shop, office=True, username="otto")


@pytest.fixture
def installer(shop: Shop) -> Person:
    """The shop's installer."""
    return PersonFactory.create(shop=shop, installer=True, username="ines")


@pytest.fixture
def stranger(db: None) -> Person:
    """The owner of another shop."""
    return PersonFactory.create(owner=True, username="boris", shop__name="Birch Lane Joiners")


@pytest.fixture
def job(shop: Shop) -> Job:
    """A job of the shop, without a kitchen."""
    return JobFactory.create(shop=shop, number="K-1", client="Lindqvist", site="12 Hill Road")


@pytest.fixture
def signed_in() -> Callable[[Person], Client]:
    """Return a browser in which a person is signed in."""

    def client_of(person: Person) -> Client:
        client = Client()
        client.force_login(person)
        return client

    return client_of


@pytest.fixture
def json_log() -> Iterator[JsonLog]:
    """The log as a site behind HTTPS writes it, a line for each request."""
    log = JsonLog()
    root, ours = logging.getLogger(), logging.getLogger("shopjobs")
    level = ours.level
    ours.setLevel(logging.INFO)
    root.addHandler(log)
    yield log
    root.removeHandler(log)
    ours.setLevel(level)
