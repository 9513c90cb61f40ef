"""How a front that hangs off is brought to hang as planned, and what is left where it can't be.

It is moved by what it hangs off, as far as its screws in their holes or its hinges' screws let
it. What is too large or past that is trimmed off the side whose gap would stay under the least
one; a door that is to go farther from its hinges than their screws move it has its plates
packed. What is too small stays as wide a gap, or is made again. Past what a front may be
trimmed by it is made again too.

Plain geometry (common practice, no source): a front that moves right by m has m more at its
left and m less at its right. One that is turned by t, its top to the right, hangs t·h farther to
the right h above its middle, and t·x lower x to the right of that. Hinges stand along one edge:
each is moved by itself as far across that edge as the front is off there, which turns the front
about that edge; along it all hinges are moved alike, as far as the front is off at that edge.
So it is for doors hinged at a side, and turned by 90° for those hinged at the top or bottom.
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

Where: TypeAlias = Literal[
    "", "at the top", "at the bottom", "at the left", "at the right",
    "upper hinge", "lower hinge", "left hinge", "right hinge",
]  # fmt: skip


@dataclass(frozen=True, slots=True)
class Move:
    """One movement: `right` or, where not `sideways`, up, by so much; less than 0: left, down.

    `wanted` would bring it to the plan, `by` is what the play allows, `left` how much of that
    play remains, None where nothing adjusts it: it is unscrewed and set anew. `turns` of its
    hinges' screws make it, None where it has none or their pitch is not known. `packing` goes
    under the plate of the hinge, where it is to go farther away from that than its screws move it.
    `at` is where along the front it is made: from its bottom where it is moved `sideways`, else
    from its left.
    """

    sideways: bool
    where: Where
    wanted: Mm
    by: Mm
    left: Mm | None
    turns: Fraction | None
    packing: Mm
    at: Mm

    @property
    def made(self) -> Mm:
        """How far it goes, screws and packing together."""
        return self.by + (self.packing if self.wanted > 0 else -self.packing)


@dataclass(frozen=True, slots=True)
class Mending:
    """What brings one front right: in this order.

    `gaps` are what is then left at each side of which something is known, `trims` what is sawn
    off a side. `make_again`: it is past what may be trimmed.
    """

    moves: tuple[Move, ...]
    gaps: Mapping[Side, Mm]
    trims: Mapping[Side, Mm]
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
    held = dict(zip((True, False), _held(front, fitting, practice), strict=True))
    moves = tuple(_moves(truing, _turned(truing, measured, front), front, held))
    gaps = _gaps_after(measured, moves, front)
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
        make_again=any(trim > trim_limit for trim in trims.values()),
    )


def _held(front: Front, fitting: Fitting | None, practice: Practice) -> tuple[_Held, _Held]:
    """Sideways and upright; a hinge that is set off to make its lap has so much less to give."""
    across, upright = play_left(front, fitting, practice) or (None, None)
    turn = front.hinge.turn if front.hinge and fitting is None else None
    away = {"left": (1, 0), "right": (-1, 0), "bottom": (0, 1), "top": (0, -1)}
    right, up = away.get(front.hinged or "", (0, 0)) if fitting is None else (0, 0)
    return _Held(across, turn, right), _Held(upright, turn, up)


def _turned(truing: Truing, measured: Gaps, front: Front) -> Fraction:
    """How far it is turned, its top to the right, for each mm; 0 where nobody can tell.

    The sides along which its hinges stand tell it best, the others as well as they can.
    """
    errors = {side: errors_at(measured, truing.planned, side) for side in SIDES}
    upright = end_shifts(errors["left"], errors["right"])
    level = end_shifts(errors["bottom"], errors["top"])
    by_upright = None if upright is None else (upright[0] - upright[1]) / front.height
    by_level = None if level is None else (level[0] - level[1]) / front.width
    told = (by_level, by_upright) if _is_flap(front) else (by_upright, by_level)
    return next((turned for turned in told if turned is not None), NOTHING)


def _is_flap(front: Front) -> bool:
    return front.hinged in ("top", "bottom")


def _moves(
    truing: Truing, turned: Fraction, front: Front, held: Mapping[bool, _Held]
) -> Iterator[Move]:
    """Sideways, then up: all of it alike, or across its hinges' edge at the two outermost."""
    off_at_edge = _at_edge(turned, front)
    for sideways, shift in ((True, truing.shift_right), (False, truing.shift_up)):
        if turned and sideways != _is_flap(front):
            slope, middle = (turned, front.height / 2) if sideways else (-turned, front.width / 2)
            for where, at in _places(front):
                off = (shift or NOTHING) + slope * (at - middle)
                yield from _move(off, held[sideways], where, at, sideways=sideways, always=True)
        elif shift is not None:
            off = shift + off_at_edge[sideways]
            yield from _move(off, held[sideways], "", NOTHING, sideways=sideways)


def _places(front: Front) -> tuple[tuple[Where, Mm], ...]:
    """Where it is held along the edge of its hinges, or up and down: the two outermost places."""
    hinges = front.hinge_centres if front.hinged and len(front.hinge_centres) > 1 else ()
    if _is_flap(front):
        if hinges:
            return ("left hinge", hinges[0]), ("right hinge", hinges[-1])
        return ("at the left", NOTHING), ("at the right", front.width)
    if hinges:
        return ("upper hinge", hinges[-1]), ("lower hinge", hinges[0])
    return ("at the top", front.height), ("at the bottom", NOTHING)


def _at_edge(turned: Fraction, front: Front) -> Mapping[bool, Mm]:
    """How much farther than its middle its hinges' edge is off, `sideways` and up."""
    across, along = turned * front.width / 2, turned * front.height / 2
    more = {"left": (NOTHING, across), "right": (NOTHING, -across),
            "top": (along, NOTHING), "bottom": (-along, NOTHING)}  # fmt: skip
    right, up = more.get(front.hinged or "", (NOTHING, NOTHING))
    return {True: right, False: up}


def _move(
    shift: Mm, held: _Held, where: Where, at: Mm, *, sideways: bool, always: bool = False
) -> Iterator[Move]:
    """Nothing where it need not move; of two places that belong together `always` both."""
    if not (shift or always):
        return
    wanted, play = -shift, held.play
    if play is None:
        yield Move(sideways, where, wanted, wanted, None, None, NOTHING, at)
        return
    by = max(-play, min(play, wanted))
    turns = abs(by) / held.turn if held.turn else None
    past = abs(wanted - by)
    packing = past if held.away * wanted > 0 else NOTHING
    yield Move(sideways, where, wanted, by, play - abs(by), turns, packing, at)


def _gaps_after(measured: Gaps, moves: tuple[Move, ...], front: Front) -> dict[Side, Mm]:
    """The gap in the middle of each side once it is moved."""
    at_edge = _at_edge(_turned_by(moves), front)
    made = {True: NOTHING, False: NOTHING}
    for sideways, middle in ((True, front.height / 2), (False, front.width / 2)):
        ours = [move for move in moves if move.sideways == sideways]
        made[sideways] = _at(ours, middle) - at_edge[sideways]
    right, up = made[True], made[False]
    added: Mapping[Side, Mm] = {"left": right, "right": -right, "bottom": up, "top": -up}
    return {side: gap + added[side] for side in SIDES if (gap := measured.mean(side)) is not None}


def _turned_by(moves: tuple[Move, ...]) -> Fraction:
    """How far two moves at two places turn it, its top to the right."""
    both = [move for move in moves if move.where]
    if not both:
        return NOTHING
    one, other = both
    slope = (one.made - other.made) / (one.at - other.at)
    return slope if one.sideways else -slope


def _at(moves: list[Move], middle: Mm) -> Mm:
    """How far its middle goes, by one move or on the line between two."""
    if len(moves) < 2:
        return sum((move.made for move in moves), NOTHING)
    one, other = moves
    return one.made + (other.made - one.made) * (middle - one.at) / (other.at - one.at)
