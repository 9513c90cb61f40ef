"""What openings and fronts are called."""

import pytest

from fronts.rules.kinds import ClosedBy
from fronts.rules.labels import front_labels, labels_taken
from tests.rules.small_kitchens import opening

LABELS: list[tuple[ClosedBy, int, tuple[str, ...]]] = [
    ("open", 1, ()),
    ("door", 1, ("B1.a",)),
    ("fixed", 1, ("B1.a",)),
    ("pair", 1, ("B1.a.1", "B1.a.2")),
    ("drawers", 3, ("B1.a.1", "B1.a.2", "B1.a.3")),
    ("drawers", 1, ("B1.a",)),
]
IDS = [f"{closed_by} {count}" for closed_by, count, _ in LABELS]


@pytest.mark.parametrize(("closed_by", "count", "labels"), LABELS, ids=IDS)
def test_fronts_are_numbered_where_there_are_several(
    closed_by: ClosedBy, count: int, labels: tuple[str, ...]
) -> None:
    """Cabinet, opening, and a number for each of several; a stack of one is a drawer."""
    of = opening(closed_by, count=count)

    assert front_labels("B1", of) == labels
    assert len(of.fronts) == len(labels)


@pytest.mark.parametrize(("closed_by", "count", "labels"), LABELS, ids=IDS)
def test_an_openings_own_name_is_always_taken(
    closed_by: ClosedBy, count: int, labels: tuple[str, ...]
) -> None:
    """A finding may be about the opening, so nothing else is called as it is."""
    taken = labels_taken("B1", "a", len(labels))

    assert set(taken) == {"B1.a", *labels}
    assert len(taken) == len(set(taken))
