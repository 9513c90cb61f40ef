"""Cutting plans in the tests of pages: made to be seen, by the whole way that they go."""

import pytest

from fronts.cutting import plan


@pytest.fixture(autouse=True)
def no_search_for_offcuts(monkeypatch: pytest.MonkeyPatch) -> None:
    """The largest offcut is sought for, a second a material, in the tests of plans alone."""
    monkeypatch.setattr(plan, "OFFCUT_SECONDS", 0.0)
