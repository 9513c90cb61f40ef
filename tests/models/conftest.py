"""What tests of migrations share."""

from collections.abc import Iterator
from typing import Any

import pytest

from tests.models.steps import in_steps, newest


@pytest.fixture
def now(transactional_db: None) -> Iterator[Any]:
    """The tables as they are; they are so again after the test whatever happened."""
    yield in_steps().loader.project_state().apps.get_model
    newest()
