"""Which edges are banded: common practice, no source."""

import pytest

from fronts.rules.edge_banding import banding_lengths, is_banded
from tests.rules.parts_to_cut import part
from tests.rules.small_kitchens import inch

BANDED = [
    ("slab", "birch plywood", True),
    ("slab", "white melamine", True),
    ("slab", "chipboard", True),
    ("slab", "MDF", False),
    ("slab", "hard maple", False),
    ("slab", "glass", False),
    ("slab", "moonstone", False),
    ("panel", "birch plywood", False),
]


@pytest.mark.parametrize(
    ("kind", "material", "banded"), BANDED, ids=[f"{m} {k}" for k, m, _ in BANDED]
)
def test_what_is_banded(kind: str, material: str, banded: bool) -> None:
    """Slabs whose core would show; a panel's edges lie in its frame's groove."""
    assert is_banded(part(kind, material, "28 1/2", "16")) is banded


def test_how_much_banding() -> None:
    """Twice length and width for each piece: 89 in for 28 1/2 × 16, and two of 12 × 6 take 72."""
    parts = [
        part("slab", "birch plywood", "28 1/2", "16"),
        part("slab", "birch plywood", "12", "6", front="B1.b", count=2),
        part("slab", "white melamine", "12", "6"),
        part("slab", "MDF", "12", "6"),
    ]

    assert banding_lengths(parts) == {
        ("birch plywood", inch("3/4")): inch("161"),
        ("white melamine", inch("3/4")): inch("36"),
    }
