"""How a front that hangs off is brought to hang as planned, and what is left where it can't be.

It is moved by what it hangs off, as far as its screws in their holes or its hinges' screws let
it. What is too large or past that is trimmed off the side whose gap would stay under the least
one; a door that is to go farther from its hinges than their screws move it has its plates
packed. What is too small stays as wide a gap, or is made again. Past what a front may be
trimmed by it is made again too.

Plain geometry (common practice, no source): a front that moves right by m has m more at its
left and m less at its right. Where both upright sides are measured at both their ends, each
end has its own shift; a hinge between them has what a straight line between the ends gives.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, TypeAlias

from fronts.rules.fits import Gaps
from fronts.rules.fitting_results import Fitting
from fronts.rules.kinds import SIDES, Side
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.practice import Practice
from fronts.rules.results import Front
from fronts.rules.truing import Truing, end_shifts, errors_at, play_of

Where: TypeAlias = Literal["", "at the top", "at the bottom", "upper hinge", "lower hinge"]


@dataclass(frozen=True, slots=True)
class Move:
    """One movement: `right` or, where not `sideways`, up, by so much; less than 0: left, down.

    `wanted` would bring it to the plan, `by` is what the play allows, `left` how much of that
    play remains, None where nothing adjusts it: it is unscrewed and set anew. `turns` of its
    hinges' screws make it, None where it has none or their pitch is not known.
    """

    sideways: bool
    where: Where
    wanted: Mm
    by: Mm
    left: Mm | None
    turns: Fraction | None


@dataclass(frozen=True, slots=True)
class Mending:
    """What brings one front right: in this order.

    `gaps` are what is then left at each side of which something is known, `trims` what is sawn
    off a side, `packing` goes under the plates of its hinges. `small` is how much too narrow
    and too low it is. `make_again`: it is past what may be trimmed.
    """

    moves: tuple[Move, ...]
    gaps: Mapping[Side, Mm]
    trims: Mapping[Side, Mm]
    packing: Mm
    narrow_by: Mm
    low_by: Mm
    make_again: bool


def mending_of(
    truing: Truing,
    measured: Gaps,
    front: Front,
    fitting: Fitting | None,
    practice: Practice,
    *,
    least_gap: Mm,
    trim_limit: Mm,
) -> Mending:
    """What the measured gaps round a front ask for; `truing` says how far it hangs off."""
    play = play_of(front, fitting, practice)
    moves = tuple(_moves(truing, measured, front, play))
    gaps = _gaps_after(truing, measured, moves)
    trims = {
        side: planned - gap
        for side, gap in gaps.items()
        if gap < least_gap and (planned := truing.planned.mean(side)) is not None and gap < planned
    }
    return Mending(
        moves=moves,
        gaps=gaps,
        trims=trims,
        packing=_packing(front, moves),
        narrow_by=_small(truing.wide_by),
        low_by=_small(truing.high_by),
        make_again=any(trim > trim_limit for trim in trims.values()),
    )


def _moves(
    truing: Truing, measured: Gaps, front: Front, play: tuple[Mm, Mm] | None
) -> Iterator[Move]:
    across, upright = play or (None, None)
    turn = front.hinge.turn if front.hinge else None
    for where, shift in _sideways(truing, measured, front):
        yield from _move(-shift, across, turn, where, sideways=True)
    if truing.shift_up is not None:
        yield from _move(-truing.shift_up, upright, turn, "", sideways=False)


def _move(
    wanted: Mm, play: Mm | None, turn: Mm | None, where: Where, *, sideways: bool
) -> Iterator[Move]:
    if not wanted:
        return
    if play is None:
        yield Move(sideways, where, wanted, wanted, None, None)
        return
    by = max(-play, min(play, wanted))
    turns = abs(by) / turn if turn else None
    yield Move(sideways, where, wanted, by, play - abs(by), turns)


def _sideways(truing: Truing, measured: Gaps, front: Front) -> Iterator[tuple[Where, Mm]]:
    """How far it hangs off to the right: all of it alike, or where it is held."""
    if truing.shift_right is None:
        return
    left, right = (errors_at(measured, truing.planned, side) for side in ("left", "right"))
    ends = end_shifts(left, right)
    if ends is None or ends[0] == ends[1]:
        yield "", truing.shift_right
        return
    top, bottom = ends
    centres = front.hinge_centres
    if front.hinged in ("left", "right") and len(centres) > 1:
        low, high = (
            bottom + (top - bottom) * at / front.height for at in (centres[0], centres[-1])
        )
        yield "upper hinge", high
        yield "lower hinge", low
    else:
        yield "at the top", top
        yield "at the bottom", bottom


def _gaps_after(truing: Truing, measured: Gaps, moves: tuple[Move, ...]) -> dict[Side, Mm]:
    """The gap in the middle of each side once it is moved."""
    right = _mean_move(moves, sideways=True)
    up = _mean_move(moves, sideways=False)
    added: Mapping[Side, Mm] = {"left": right, "right": -right, "bottom": up, "top": -up}
    return {side: gap + added[side] for side in SIDES if (gap := measured.mean(side)) is not None}


def _mean_move(moves: tuple[Move, ...], *, sideways: bool) -> Mm:
    made = [move.by for move in moves if move.sideways == sideways]
    return sum(made, NOTHING) / len(made) if made else NOTHING


def _packing(front: Front, moves: tuple[Move, ...]) -> Mm:
    """How much is wanting of a move away from the hinges, which their plates can be packed by."""
    if front.hinged not in ("left", "right"):
        return NOTHING
    away = 1 if front.hinged == "left" else -1
    past = [(move.wanted - move.by) * away for move in moves if move.sideways]
    return max([NOTHING, *past])


def _small(over: Mm | None) -> Mm:
    return NOTHING if over is None or over > 0 else -over
