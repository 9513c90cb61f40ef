"""A shop with two jobs that want the same days, seen on a fixed day."""

from collections.abc import Callable, Iterator
from datetime import date, datetime, timedelta
from typing import Any
from unittest import mock
from zoneinfo import ZoneInfo

import pytest
from django.test import Client

from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import JobFactory

SignIn = Callable[[Person], Client]
TODAY = date(2027, 3, 1)
"""A Monday."""


@pytest.fixture(autouse=True)
def _a_monday() -> Iterator[None]:
    """It is Monday, 1 March 2027, at noon."""
    noon = datetime(2027, 3, 1, 12, tzinfo=ZoneInfo("UTC"))
    with mock.patch("django.utils.timezone.now", return_value=noon):
        yield


@pytest.fixture
def fitted_first(shop: Shop) -> Job:
    """A job that is fitted on Monday 5 April: cutting from 22 March, finishing from the 26th."""
    return JobFactory.create(
        shop=shop, number="K-1", client="Lindqvist", site="12 Hill Road", fit_on=date(2027, 4, 5)
    )


@pytest.fixture
def fitted_next(shop: Shop, fitted_first: Job) -> Job:
    """A job that is fitted two working days later."""
    later = fitted_first.fit_on + timedelta(days=2) if fitted_first.fit_on else None
    return JobFactory.create(shop=shop, number="K-2", client="Okafor", fit_on=later)


def send(client: Client, path: str, form: str, **typed: Any) -> Any:
    """Send a form of the page as it stands there but for what is typed; None leaves a box empty."""
    shown = dom(client.get(path)).one(f"#{form}")
    fields = shown.all("input:not([type=checkbox]), input[checked], select, textarea")
    said = {
        field.attribute("name"): field.value or "on" * (field.attribute("type") == "checkbox")
        for field in fields
    }
    sent = {name: value for name, value in (said | typed).items() if value is not None}
    return client.post(shown.attribute("action"), sent)
