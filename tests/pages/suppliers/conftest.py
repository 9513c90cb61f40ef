"""Who looks at suppliers and prices."""

from collections.abc import Callable

import pytest
from django.test import Client

from shopjobs.models import Person


@pytest.fixture
def desk(office: Person, signed_in: Callable[[Person], Client]) -> Client:
    """A browser in which the office is signed in."""
    return signed_in(office)
