"""Which caution is said first at a cabinet (common practice, no source)."""

import pytest

from fronts.figures.cautions import DRILLING, LAST, TALL, TIPPING, TRADES, WALL, most_at_hand


@pytest.mark.parametrize(
    ("cautions", "first"),
    [
        ((DRILLING, TIPPING, TRADES, LAST), TIPPING),
        ((DRILLING, TALL, LAST), TALL),
        ((DRILLING, WALL, LAST), WALL),
        ((DRILLING, TRADES, LAST), DRILLING),
    ],
)
def test_what_can_fall_on_somebody_comes_first(cautions: tuple[str, ...], first: str) -> None:
    """What is for the bench waits; where nothing can fall, the first stands."""
    assert most_at_hand(cautions) == first
