"""Which way a front that hangs is to be moved, worked out by hand beside each row."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.fits import FitFacts, Gaps, RecordedFit, hung_as
from fronts.rules.kinds import ClosedBy, Hinged
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE
from fronts.rules.schedule import schedule
from fronts.rules.truing import Truing, truing_of, truings
from tests.rules.small_kitchens import BOX, cabinet, inch, kitchen, opening

WHEN = datetime(2027, 3, 12, 10, tzinfo=UTC)
DRAWER = kitchen(cabinet(opening("pull-out", boxes=[BOX])))
"""Its front, 16 × 28 1/2 on 18 × 30 1/2, shows 1 in at every side; its screws have 0.043 in."""


def gaps(**said: str) -> Gaps:
    """Gaps in inches."""
    return Gaps(**{name: inch(figure) for name, figure in said.items()})


def fit(measured: Gaps, planned: Gaps = Gaps(), **said: object) -> RecordedFit:  # noqa: B008
    """A record of the only front."""
    facts = FitFacts("B1.a", measured, planned=planned)
    return replace(RecordedFit("B1.a", WHEN, "Ines", facts), **said)  # type: ignore[arg-type]


def trued(record: RecordedFit, of: Kitchen = DRAWER) -> Truing:
    """What the record says of the kitchen's only front."""
    planned = schedule(of)
    (front,) = planned.fronts
    return truing_of(record, front, planned.fitting(front.label), of)


# Each: what was measured; shift right, shift up, too wide by, too high by, tilt, within play.
# Geometry (common practice, no source): shift = (low − high)/2, too large by −(low + high).
WORKED = [
    ("as planned", gaps(left="1", right="1", top="1", bottom="1"), "0", "0", "0", "0", None, True),
    # 1/32 too much at the left, 1/32 too little at the right: half of 1/16.
    ("to the right", gaps(left="1 1/32", right="31/32", top="1", bottom="1"),
     "1/32", "0", "0", "0", None, True),
    # (1/16 + 1/16)/2 = 0.0625 in, and a #8 screw has (0.25 − 0.164)/2 = 0.043 in.
    ("too far to the left", gaps(left="15/16", right="1 1/16", top="1", bottom="1"),
     "-1/16", "0", "0", "0", None, False),
    ("too wide", gaps(left="15/16", right="15/16", top="1", bottom="1"),
     "0", "0", "1/8", "0", None, True),
    ("too low", gaps(left="1", right="1", top="1 1/32", bottom="31/32"),
     "0", "-1/32", "0", "0", None, True),
    ("too short, and up", gaps(left="1", right="1", top="1", bottom="1 1/32"),
     "0", "1/64", "0", "-1/32", None, True),
    # 1/16 at the top, nothing at the bottom: 1/32 in the mean.
    ("leaning to the right", gaps(left_top="1 1/16", left_bottom="1", right_top="15/16",
     right_bottom="1", top="1", bottom="1"), "1/32", "0", "0", "0", "1/16", True),
    # Means of both ends: −1/16 and (3/16 + 1/8)/2 = 5/32 more; one figure says no tilt.
    ("one side at both ends", gaps(left="15/16", right_top="1 3/16", right_bottom="1 1/8",
     top="1", bottom="1"), "-7/64", "0", "-3/32", "0", None, False),
    ("above and below at both ends", gaps(left="1", right="1", top_left="1 1/16", top_right="1",
     bottom_left="1", bottom_right="1"), "0", "-1/64", "0", "-1/32", None, True),
    ("only the left", gaps(left="1 1/32", top="1", bottom="1"), None, "0", None, "0", None, True),
    ("nothing but a note", gaps(), None, None, None, None, None, None),
]  # fmt: skip


@pytest.mark.parametrize(
    ("measured", "right", "up", "wide", "high", "tilt", "within"),
    [row[1:] for row in WORKED], ids=[row[0] for row in WORKED],
)  # fmt: skip
def test_worked_by_hand(
    measured: Gaps,
    right: str | None,
    up: str | None,
    wide: str | None,
    high: str | None,
    tilt: str | None,
    within: bool | None,
) -> None:
    found = trued(fit(measured))

    wanted = [None if one is None else inch(one) for one in (right, up, wide, high, tilt)]
    assert [found.shift_right, found.shift_up, found.wide_by, found.high_by, found.tilt] == wanted
    assert found.within_play is within


def test_it_is_held_against_what_was_planned_then() -> None:
    """The schedule's gap of 1 in stands in where nobody noted it: here for the top alone."""
    planned = gaps(left="1/8", right_top="1/8", right_bottom="1/4", bottom="1/8")
    measured = gaps(left="1/16", right="1/4", top="1", bottom="1/8")

    found = trued(fit(measured, planned))

    assert found.planned == replace(planned, top=inch("1"))
    # −1/16 against 1/4 − 3/16.
    assert (found.shift_right, found.wide_by) == (inch("-1/16"), inch("0"))
    assert (found.shift_up, found.tilt) == (inch("0"), None)


HUNG = [
    # 2 mm each way (common practice, no source): 5/64 in is 1.98 mm, 3/32 in is 2.38 mm.
    ("door", "left", "5/64", "0", True),
    ("door", "left", "3/32", "0", False),
    ("door", "right", "0", "3/32", False),
    ("fixed", None, "1/64", "0", None),
    ("pull-out", None, "1/64", "0", None),  # its box is not measured yet
]


@pytest.mark.parametrize(("closed_by", "hinged", "right", "up", "within"), HUNG)
def test_what_adjusts_it(
    closed_by: ClosedBy, hinged: Hinged | None, right: str, up: str, within: bool | None
) -> None:
    """A hinge's screws, or nothing."""
    one, other = inch(right), inch(up)
    full = inch("1")
    moved = Gaps(full + one, full - one, full - other, full + other)

    found = trued(fit(moved), kitchen(cabinet(opening(closed_by, hinged=hinged))))

    assert (found.shift_right, found.shift_up) == (one, other)
    assert found.within_play is within


@pytest.mark.parametrize(("hinged", "within"), [("left", True), ("top", False)])
def test_a_hinges_side_is_the_side_that_it_is_on(hinged: Hinged, within: bool) -> None:
    """With 3 mm to the side and 1 mm along it, 2.38 mm sideways is within the one alone."""
    practice = replace(PRACTICE, hinge_adjust_side=Mm(3), hinge_adjust_height=Mm(1))
    of = kitchen(cabinet(opening("door", hinged=hinged)), practice=practice)
    measured = gaps(left="1 3/32", right="29/32", top="1", bottom="1")

    assert trued(fit(measured), of).within_play is within


LENGTHS = st.fractions(min_value=0, max_value=80, max_denominator=128)
ANY_GAPS = st.builds(Gaps, left=LENGTHS, right=LENGTHS, top=LENGTHS, bottom=LENGTHS)


@given(ANY_GAPS, ANY_GAPS)
def test_mirrored_gaps_mirror_the_shift(measured: Gaps, planned: Gaps) -> None:
    """Left for right, top for bottom: it hangs off the other way, and is as much too large."""
    one, other = (trued(fit(mirrored(measured, by), mirrored(planned, by))) for by in (1, -1))

    assert (one.shift_right, one.shift_up) == (-(other.shift_right or 0), -(other.shift_up or 0))
    assert (one.wide_by, one.high_by) == (other.wide_by, other.high_by)
    assert one.within_play == other.within_play


def mirrored(of: Gaps, by: int) -> Gaps:
    """As they are, or with both pairs of sides exchanged."""
    return of if by > 0 else Gaps(of.right, of.left, of.bottom, of.top)


@given(ANY_GAPS, LENGTHS)
def test_equal_errors_at_both_sides_shift_nothing(planned: Gaps, error: Mm) -> None:
    """The front is too small by both of them."""
    wider = Gaps(*((figure or 0) + error for figure in
                   (planned.left, planned.right, planned.top, planned.bottom)))  # fmt: skip

    found = trued(fit(wider, planned))

    assert found.shift_right == found.shift_up == 0
    assert found.within_play
    assert (found.wide_by, found.high_by) == (-2 * error, -2 * error)


def test_the_latest_record_of_each_front_counts() -> None:
    """Whatever its place among them; one of a front that has gone, or hangs no longer, does not."""
    planned = schedule(DRAWER)
    (front,) = planned.fronts
    off, true = gaps(left="1 1/8", right="7/8"), gaps(left="1", right="1")
    later = WHEN + timedelta(hours=1)
    first, last = fit(off), fit(true, at=later, hung=hung_as(front))

    for fits in ([first, last], [last, first], [last, replace(first, at=later, gone=True)]):
        (found,) = truings(fits, planned, DRAWER)
        assert found.shift_right == 0
    assert truings([fit(off), fit(true, at=later, hung="another")], planned, DRAWER) == []
    assert truings([replace(first, gone=True)], planned, DRAWER) == []
