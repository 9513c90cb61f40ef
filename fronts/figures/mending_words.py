"""What to do with a front that hangs off, in words: a line for each thing, in its order."""

from collections.abc import Iterator
from fractions import Fraction

from fronts.rules.fitting_results import Fitting
from fronts.rules.kinds import OPPOSITE, SIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.moving import Mending, Move
from fronts.rules.results import Front
from fronts.rules.truing import Truing

_FINEST = 32
_NOTHING = {"0": "nothing", "≈0": "almost nothing"}
_QUARTER = Fraction(1, 4)
_PARTS = {0: "", 1: "1/4", 2: "1/2", 3: "3/4"}


def mending_lines(
    mending: Mending, truing: Truing, front: Front, fitting: Fitting | None, kitchen: Kitchen
) -> list[str]:
    """The moves, what they do to the neighbours, what is sawn off or packed, or made again."""
    unit = kitchen.job.unit
    lines = [
        *_size(truing, unit),
        *_moves(mending, front, fitting, unit),
        *_neighbours(mending, front, truing, unit),
        *_past(mending, unit),
        *_set_anew(mending, fitting, unit),
    ]
    if lines or not mending.gaps:
        return lines
    return [*_one_sided(mending, truing, unit)] or ["It hangs as planned."]


def _one_sided(mending: Mending, truing: Truing, unit: str) -> Iterator[str]:
    """What a gap says by itself, whose other side was not measured, or is not planned."""
    for side, gap in mending.gaps.items():
        planned, across = truing.planned.mean(side), OPPOSITE[side]
        if planned is None or not _shows(gap - planned, unit) or across in mending.gaps:
            continue
        if truing.planned.mean(across) is None:
            more = "wider" if gap > planned else "narrower"
            yield f"Its {side} gap is {_said(abs(gap - planned), unit)} {more} than planned."
        else:
            yield f"Measure the gap across from its {side} too: then it can be said how to move it."


def _moves(mending: Mending, front: Front, fitting: Fitting | None, unit: str) -> Iterator[str]:
    for move in mending.moves:
        where, way = f", {move.where}" if move.where else "", _way(move)
        length = _said(abs(move.by), unit)
        if not _shows(move.by, unit):
            continue
        if move.left is None:
            yield f"Unscrew it and set it {length} {way}{where}."
        elif fitting is not None:
            yield (
                f"Move it {length} {way}{where}: loosen its screws, it slides in their holes; "
                f"{_rest(move.left, unit)} of that play is left."
            )
        else:
            screw = "side screw" if _is_side(move, front) else "height screw"
            turned, rest = _turned(move, screw), _rest(move.left, unit)
            yield f"Move it {length} {way}{where}: {turned}; {rest} of their play is left."


def _turned(move: Move, screw: str) -> str:
    several = "" if move.where else "s"
    if move.turns is None:
        return f"with the {screw}{several}"
    return f"turn the {screw}{several} {turns(move.turns)}"


def turns(count: Fraction) -> str:
    """`1 1/4 turns`, to the nearest quarter; `a touch` for less than an eighth."""
    quarters = round(count / _QUARTER)
    if not quarters:
        return "a touch"
    whole, part = divmod(quarters, 4)
    said = " ".join(word for word in (str(whole) if whole else "", _PARTS[part]) if word)
    return f"{said} turn{'s' if quarters > 4 else ''}"


def _is_side(move: Move, front: Front) -> bool:
    """Whether the movement is across the hinges' edge, which their side screws make."""
    return move.sideways == (front.hinged in ("left", "right"))


def _way(move: Move) -> str:
    ways = ("to the right", "to the left") if move.sideways else ("up", "down")
    return ways[move.wanted < 0]


def _neighbours(mending: Mending, front: Front, truing: Truing, unit: str) -> Iterator[str]:
    if not mending.moves:
        return
    for side in SIDES:
        faces, gap = front.edges[side].faces, mending.gaps.get(side)
        if faces is None or gap is None:
            continue
        planned = truing.planned.mean(side)
        beside = "" if planned is None or planned == gap else f", planned {_said(planned, unit)}"
        yield f"That makes the gap to {faces} {_said(gap, unit)}{beside}."


def _past(mending: Mending, unit: str) -> Iterator[str]:
    for move in mending.moves:
        past = abs(move.wanted - move.by)
        if not _shows(past, unit):
            continue
        where = f", {move.where}" if move.where else ""
        yield f"{_said(past, unit)} {_way(move)}{where} is past its play."
        if move.packing:
            plates = f"the plate of the {move.where}" if move.where else "its hinge plates"
            yield f"Pack {plates} by {_said(move.packing, unit)}."
    for side, trim in mending.trims.items():
        if _shows(trim, unit):
            yield f"Trim {_said(trim, unit)} off the {side}."
    if mending.make_again:
        yield "That is more than may be trimmed: make it again."


def _set_anew(mending: Mending, fitting: Fitting | None, unit: str) -> Iterator[str]:
    """What else brings it where it should be, where neither packing nor the saw does.

    Common practice, no source: a hole beside an old one holds once that is plugged.
    """
    trimmed = {side in ("left", "right") for side in mending.trims}
    for move in mending.moves:
        over = _shows(abs(move.wanted - move.by), unit) and not move.packing
        if over and move.sideways not in trimmed and not mending.make_again:
            what = "pilot holes in its back" if fitting else "screw holes of its hinge plates"
            yield f"Where that shows, plug the {what} and bore them anew, so much farther over."
            return


def _size(truing: Truing, unit: str) -> Iterator[str]:
    sizes = ((truing.wide_by, "wide", "narrow"), (truing.high_by, "high", "low"))
    for over, large, small in sizes:
        if over is None or not _shows(over, unit):
            continue
        if over > 0:
            yield f"It is {_said(over, unit)} too {large}."
        else:
            yield (
                f"It is {_said(-over, unit)} too {small}: the gaps stay so much wider in all. "
                "Make it again where that shows."
            )


def _shows(length: Mm, unit: str) -> bool:
    """Whether so little is anything that can be set or seen."""
    return _said(abs(length), unit) not in _NOTHING


def _rest(length: Mm, unit: str) -> str:
    said = _said(length, unit)
    return _NOTHING.get(said, said)


def _said(length: Mm, unit: str) -> str:
    """As fine as a rule is read: 1/32 in."""
    return show(length, unit, finest=_FINEST)
