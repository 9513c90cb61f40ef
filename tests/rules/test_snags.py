"""When a snag is late, and how open ones are counted in words (common practice, no source)."""

from datetime import date

import pytest

from fronts.rules.snags import NO_SNAGS, OpenSnags, is_late, open_snags

TODAY = date(2027, 3, 12)


@pytest.mark.parametrize(
    ("due", "late"),
    [(None, False), (date(2027, 3, 13), False), (TODAY, False), (date(2027, 3, 11), True)],
)
def test_late(due: date | None, *, late: bool) -> None:
    """From the day after on; one without a day never is."""
    assert is_late(due, TODAY) == late


@pytest.mark.parametrize(
    ("dues", "words"),
    [
        ([], ""),
        ([None], "1 snag"),
        ([TODAY, None], "2 snags"),
        ([date(2027, 3, 1), None, date(2026, 3, 1)], "3 snags, 2 late"),
        ([date(2027, 3, 1)], "1 snag, 1 late"),
    ],
)
def test_how_many_in_words(dues: list[date | None], words: str) -> None:
    """All of them, and those that are late."""
    assert open_snags(dues, TODAY).words == words
    assert open_snags([], TODAY) == NO_SNAGS == OpenSnags(0, 0)
