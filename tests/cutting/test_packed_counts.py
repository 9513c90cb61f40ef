"""Multisets in a few whole numbers: sums are sums, and what is too many is noticed."""

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.cutting.sheets.packed_counts import PackedCounts

DEMAND = st.lists(st.integers(1, 5), min_size=1, max_size=80)


@settings(max_examples=200, deadline=None)
@given(DEMAND, st.data())
def test_two_multisets_together_are_within_the_demand_or_not(
    demand: list[int], data: st.DataObject
) -> None:
    """As counting each item by itself says."""
    packed = PackedCounts(demand)
    both = [[data.draw(st.integers(0, most)) for most in demand] for _ in range(2)]
    one, other = (
        sum((n * packed.single(item) for item, n in enumerate(counts)), np.zeros(packed.words, int))
        for counts in both
    )
    enough = all(a + b <= most for a, b, most in zip(*both, demand, strict=True))

    assert [enough] == packed.within((one + other)[None, :]).tolist()
