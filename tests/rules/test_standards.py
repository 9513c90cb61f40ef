"""Which level's word holds: opening, cabinet, job; overlay and reveal replace each other."""

import pytest

from fronts.rules.job_facts import Stock
from fronts.rules.standard_keys import Reveal, Standard
from fronts.rules.standards import COMMON_STOCK, DEFAULTS, merge, settled
from tests.rules.small_kitchens import all_round, inch, inches

HALF, QUARTER = all_round("1/2"), all_round("1/4")
REVEAL = Reveal(inch("1/8"), QUARTER)


def test_the_defaults() -> None:
    """Common practice, no source; a level that says nothing leaves them."""
    assert settled(Standard(), Standard()) == DEFAULTS
    assert DEFAULTS.gap_between == inch("1/8")
    assert DEFAULTS.least_gap == inch("1/16")
    assert all_round("3/32") == DEFAULTS.inset_gap
    assert DEFAULTS.trim_limit == inch("1")
    assert DEFAULTS.least_stile == inch("1 3/4")
    assert (DEFAULTS.skin, DEFAULTS.bite) == (inch("1/8"), inch("3/8"))
    assert DEFAULTS.hinge_end == inch("3 1/2")
    assert (DEFAULTS.overlay, DEFAULTS.reveal) == (None, None)


def test_what_lies_on_the_shelf_where_nobody_says() -> None:
    """Common practice, no source."""
    assert (
        Stock(
            screw_lengths=inches("3/4", "1", "1 1/4", "1 1/2"),
            knob_screw_lengths=inches("1", "1 3/4"),
            knob_thread="8-32",
            knob_thread_depth=inch("1/2"),
            slide_lengths=inches("12", "14", "16", "18", "20", "22", "24"),
        )
        == COMMON_STOCK
    )


def test_default_front_is_as_thick_as_a_door_must_be() -> None:
    """Source: Architectural Woodwork Standards, 1st ed. 2009, stile-and-rail doors: >= 3/4 in."""
    assert DEFAULTS.front_thickness >= inch("3/4")


@pytest.mark.parametrize(
    ("levels", "overlay", "reveal"),
    [
        ([Standard(), Standard(overlay=HALF)], HALF, None),
        ([Standard(overlay=QUARTER), Standard(overlay=HALF)], QUARTER, None),
        ([Standard(reveal=REVEAL), Standard(overlay=HALF)], None, REVEAL),
        ([Standard(overlay=HALF), Standard(reveal=REVEAL)], HALF, None),
        ([Standard(), Standard(reveal=REVEAL), Standard(overlay=HALF)], None, REVEAL),
        ([Standard(mount="inset"), Standard(overlay=HALF)], HALF, None),
    ],
    ids=[
        "job's overlay falls through",
        "nearer overlay wins",
        "nearer reveal replaces overlay",
        "nearer overlay replaces reveal",
        "cabinet between",
        "inset leaves it standing",
    ],
)  # fmt: skip
def test_overlay_and_reveal(levels: list[Standard], overlay: object, reveal: object) -> None:
    """The nearest level that gives either has the word over both."""
    found = settled(*levels)

    assert (found.overlay, found.reveal) == (overlay, reveal)


def test_other_keys_fall_through_one_by_one() -> None:
    """An opening that says its gap still takes its cabinet's skin and the job's bite."""
    near = Standard(gap_between=inch("3/32"), overlay=QUARTER)
    middle = Standard(skin=inch("1/16"), gap_between=inch("1/4"))
    far = Standard(bite=inch("1/2"), skin=inch("1/4"), least_gap=inch("1/32"))

    found = settled(near, middle, far)

    assert found.gap_between == inch("3/32")
    assert found.skin == inch("1/16")
    assert found.bite == inch("1/2")
    assert found.least_gap == inch("1/32")


def test_nothing_said_is_not_zero() -> None:
    """A gap of zero is a word like any other."""
    assert settled(Standard(gap_between=inch("0"))).gap_between == 0


def test_merging_is_the_same_in_any_grouping() -> None:
    """Two levels merged first say what all three say."""
    a, b, c = (
        Standard(overlay=HALF),
        Standard(reveal=REVEAL, skin=inch("1")),
        Standard(bite=inch("1")),
    )

    assert merge(a, merge(b, c)) == merge(merge(a, b), c) == merge(a, b, c)
