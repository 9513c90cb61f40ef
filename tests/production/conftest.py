"""What all tests of the lines in README start from."""

from pathlib import Path

import pytest

from tests.production.running import copy_site


@pytest.fixture
def site(tmp_path: Path) -> Path:
    """A copy of the project that nobody has used yet."""
    return copy_site(tmp_path / "site")
