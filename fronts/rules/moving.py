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
from fronts.rules.truing import Truing, end_shifts, errors_at, play_left

Where: TypeAlias = Literal["", "at the top", "at the bottom", "upper hinge", "lower hinge"]


@dataclass(frozen=True, slots=True)
class Move:
    """One movement: `right` or, where not `sideways`, up, by so much; less than 0: left, down.

    `wanted` would bring it to the plan, `by` is what the play allows, `left` how much of that
    play remains, None where nothing adjusts it: it is unscrewed and set anew. `turns` of its
    hinges' screws make it, None where it has none or their pitch is not known. `packing` goes
    under the plate of the hinge, where it is to go farther away from that than its screws move it.
    `height` is where it is made, from the front's bottom.
    """

    sideways: bool
    where: Where
    wanted: Mm
    by: Mm
    left: Mm | None
    turns: Fraction | None
    packing: Mm
    height: Mm

    @property
    def made(self) -> Mm:
        """How far it goes, screws and packing together."""
        return self.by + (self.packing if self.wanted > 0 else -self.packing)


@dataclass(frozen=True, slots=True)
class Mending:
    """What brings one front right: in this order.

    `gaps` are what is then left at each side of which something is known, `trims` what is sawn
    off a side. `leans`: it hangs askew on hinges at its top or bottom, and is set square on them
    first. `make_again`: it is past what may be trimmed.
    """

    moves: tuple[Move, ...]
    gaps: Mapping[Side, Mm]
    trims: Mapping[Side, Mm]
    leans: bool
    make_again: bool


@dataclass(frozen=True, slots=True)
class _Held:
    """How a front is held along one axis: its play, a turn of its screws, which way is away."""

    play: Mm | None
    turn: Mm | None
    away: int


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
    """What the measured gaps round a front ask for; `truing` says how far it hangs off.

    A side is trimmed only where the gap across from it is known too: else a move may be enough.
    """
    across, upright = _held(front, fitting, practice)
    ends = _ends(truing, measured)
    at_hinges = front.hinged in ("top", "bottom")
    leans = ends is not None and ends[0] != ends[1] and at_hinges
    moves = (
        *_sideways(truing, None if at_hinges else ends, front, across),
        *_move(truing.shift_up, upright, "", NOTHING, sideways=False),
    )
    gaps = _gaps_after(measured, moves, front.height / 2)
    known = [
        *(("left", "right") if truing.shift_right is not None else ()),
        *(("top", "bottom") if truing.shift_up is not None else ()),
    ]
    trims = {
        side: planned - gaps[side]
        for side in SIDES
        if side in known
        and (planned := truing.planned.mean(side)) is not None
        and gaps[side] < min(least_gap, planned)
    }
    return Mending(
        moves=moves,
        gaps=gaps,
        trims=trims,
        leans=leans,
        make_again=any(trim > trim_limit for trim in trims.values()),
    )


def _held(front: Front, fitting: Fitting | None, practice: Practice) -> tuple[_Held, _Held]:
    """Sideways and upright; a hinge that is set off to make its lap has so much less to give."""
    across, upright = play_left(front, fitting, practice) or (None, None)
    turn = front.hinge.turn if front.hinge and fitting is None else None
    away = {"left": (1, 0), "right": (-1, 0), "bottom": (0, 1), "top": (0, -1)}
    right, up = away.get(front.hinged or "", (0, 0)) if fitting is None else (0, 0)
    return _Held(across, turn, right), _Held(upright, turn, up)


def _ends(truing: Truing, measured: Gaps) -> tuple[Mm, Mm] | None:
    left, right = (errors_at(measured, truing.planned, side) for side in ("left", "right"))
    return end_shifts(left, right)


def _sideways(
    truing: Truing, ends: tuple[Mm, Mm] | None, front: Front, held: _Held
) -> Iterator[Move]:
    """All of it alike, or at the two places by which it is held."""
    if ends is None or ends[0] == ends[1]:
        yield from _move(truing.shift_right, held, "", front.height / 2, sideways=True)
        return
    top, bottom = ends
    places: tuple[tuple[Where, Mm], ...] = (
        ("at the top", front.height), ("at the bottom", NOTHING),
    )  # fmt: skip
    if front.hinged and len(front.hinge_centres) > 1:
        places = (
            ("upper hinge", front.hinge_centres[-1]), ("lower hinge", front.hinge_centres[0]),
        )  # fmt: skip
    for where, height in places:
        shift = bottom + (top - bottom) * height / front.height
        yield from _move(shift, held, where, height, sideways=True, always=True)


def _move(
    shift: Mm | None,
    held: _Held,
    where: Where,
    height: Mm,
    *,
    sideways: bool,
    always: bool = False,
) -> Iterator[Move]:
    """Nothing where it need not move; of two places that belong together `always` both."""
    if shift is None or not (shift or always):
        return
    wanted, play = -shift, held.play
    if play is None:
        yield Move(sideways, where, wanted, wanted, None, None, NOTHING, height)
        return
    by = max(-play, min(play, wanted))
    turns = abs(by) / held.turn if held.turn else None
    past = abs(wanted - by)
    packing = past if held.away * wanted > 0 else NOTHING
    yield Move(sideways, where, wanted, by, play - abs(by), turns, packing, height)


def _gaps_after(measured: Gaps, moves: tuple[Move, ...], middle: Mm) -> dict[Side, Mm]:
    """The gap in the middle of each side once it is moved."""
    aside = [move for move in moves if move.sideways]
    right = _at(aside, middle)
    up = sum((move.made for move in moves if not move.sideways), NOTHING)
    added: Mapping[Side, Mm] = {"left": right, "right": -right, "bottom": up, "top": -up}
    return {side: gap + added[side] for side in SIDES if (gap := measured.mean(side)) is not None}


def _at(moves: list[Move], height: Mm) -> Mm:
    """How far a front goes aside at this height, by one move or on the line between two."""
    if len(moves) < 2:
        return sum((move.made for move in moves), NOTHING)
    high, low = moves
    part = (height - low.height) / (high.height - low.height)
    return low.made + (high.made - low.made) * part
