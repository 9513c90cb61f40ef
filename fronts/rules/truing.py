"""Which way to move a front that hangs: what its measured gaps say against the planned ones.

An error is a measured gap less the planned one. A front that hangs off to the right has too
much at its left and as much too little at its right, so that sideways shift = (error left −
error right)/2; one that is too wide has too little at both, so that it is too wide by −(error
left + error right). Up and down alike. Where a side is measured at both its ends, their mean
counts; where both upright sides are, the shift of the top less that of the bottom is the tilt.

Plain geometry of a rectangle in its opening (common practice, no source): equal errors at
both sides shift nothing, opposite ones change no size. Whether a front can be moved so far is
another matter: on a box, by the play of its screws in their holes; on hinges, by their screws.
"""

from collections.abc import Iterable
from dataclasses import asdict, dataclass

from fronts.rules.fits import Gaps, RecordedFit, hangs_still, latest_fits, mean_of
from fronts.rules.fitting_results import Fitting
from fronts.rules.kinds import Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.planned_gap import planned_gaps
from fronts.rules.practice import Practice
from fronts.rules.results import Front, Schedule


@dataclass(frozen=True, slots=True)
class HangsOff:
    """How far a front hangs off, + to the right and up, and is too large; None: not known."""

    shift_right: Mm | None
    shift_up: Mm | None
    wide_by: Mm | None
    high_by: Mm | None
    tilt: Mm | None


@dataclass(frozen=True, slots=True)
class Truing(HangsOff):
    """How far one front hangs off, and whether it can be moved into place as it hangs.

    `planned` is what it was measured against. `within_play` is None where nothing adjusts or
    no shift is known.
    """

    front: str
    planned: Gaps
    within_play: bool | None


def truings(fits: Iterable[RecordedFit], schedule: Schedule, kitchen: Kitchen) -> list[Truing]:
    """What the latest record of each front says, as long as that front still hangs."""
    latest = latest_fits(fits)
    return [
        truing_of(latest[front.label], front, schedule.fitting(front.label), kitchen)
        for front in schedule.fronts
        if front.label in latest and hangs_still(latest[front.label].hung, front)
    ]


def truing_of(fit: RecordedFit, front: Front, fitting: Fitting | None, kitchen: Kitchen) -> Truing:
    """What one record says of its front; what was not planned then is as planned now."""
    planned = fit.facts.planned.filled_from(planned_gaps(front, kitchen))
    off = hangs_off(fit.facts.gaps, planned)
    play = play_of(front, fitting, kitchen.practice)
    return Truing(
        **asdict(off),
        front=front.label,
        planned=planned,
        within_play=_within((off.shift_right, off.shift_up), play),
    )


def hangs_off(measured: Gaps, planned: Gaps) -> HangsOff:
    """What gaps say that were measured against planned ones."""
    left, right, top, bottom = (
        errors_at(measured, planned, side) for side in ("left", "right", "top", "bottom")
    )
    return HangsOff(
        shift_right=_shift(left, right),
        shift_up=_shift(bottom, top),
        wide_by=_over(left, right),
        high_by=_over(bottom, top),
        tilt=_tilt(left, right),
    )


def errors_at(measured: Gaps, planned: Gaps, side: Side) -> tuple[Mm, ...]:
    """How much too wide the gap is along a side, or at each of its ends; nothing: not known."""
    found, wanted = measured.figures(side), planned.figures(side)
    if not found or not wanted:
        return ()
    if len(found) == len(wanted):
        return tuple(one - other for one, other in zip(found, wanted, strict=True))
    return tuple(figure - mean_of(wanted) for figure in found)


def play_of(front: Front, fitting: Fitting | None, practice: Practice) -> tuple[Mm, Mm] | None:
    """How far a front that hangs can be moved each way, sideways and upright; None: not at all.

    Hinges have a screw for the side that they are on and one for the height along it.
    """
    if fitting is not None:
        return fitting.play, fitting.play
    across, along = practice.hinge_adjust_side, practice.hinge_adjust_height
    if front.hinge is not None:
        across, along = front.hinge.side, front.hinge.height
    match front.hinged:
        case None:
            return None
        case "left" | "right":
            return across, along
        case _:
            return along, across


def play_left(front: Front, fitting: Fitting | None, practice: Practice) -> tuple[Mm, Mm] | None:
    """Sideways and upright; a hinge that is set off to make its lap has so much less one way."""
    play = play_of(front, fitting, practice)
    if play is None:
        return None
    across, along = play
    taken = NOTHING if fitting is not None or front.hinge is None else abs(front.hinge.shift)
    if front.hinged in ("left", "right"):
        across -= taken
    else:
        along -= taken
    return max(across, NOTHING), max(along, NOTHING)


def _shift(low: tuple[Mm, ...], high: tuple[Mm, ...]) -> Mm | None:
    """How far it hangs towards the high side, from the errors at both."""
    return (mean_of(low) - mean_of(high)) / 2 if low and high else None


def _over(low: tuple[Mm, ...], high: tuple[Mm, ...]) -> Mm | None:
    return -(mean_of(low) + mean_of(high)) if low and high else None


def end_shifts(left: tuple[Mm, ...], right: tuple[Mm, ...]) -> tuple[Mm, Mm] | None:
    """How far the top and the bottom hang off to the right, from the errors at both sides.

    One figure says nothing of a side's ends: both sides must be measured at both.
    """
    if len(left) < 2 or len(right) < 2:
        return None
    at_top, at_bottom = ((one - other) / 2 for one, other in zip(left, right, strict=True))
    return at_top, at_bottom


def _tilt(left: tuple[Mm, ...], right: tuple[Mm, ...]) -> Mm | None:
    ends = end_shifts(left, right)
    return None if ends is None else ends[0] - ends[1]


def _within(shifts: tuple[Mm | None, Mm | None], play: tuple[Mm, Mm] | None) -> bool | None:
    known = [shift is not None for shift in shifts]
    if play is None or not any(known):
        return None
    return all(
        abs(shift) <= room for shift, room in zip(shifts, play, strict=True) if shift is not None
    )
