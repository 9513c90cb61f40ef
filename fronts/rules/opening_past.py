"""Whether a front opens past what stands out beside it: the same at corners and appliances.

`free` is how far its near edge, along its own wall, lies clear of what stands out. Pulled
straight out, or hinged above or below, it wants `passing_clear` more than nothing. A door that
is hinged at the far side swings away. One that is hinged at the near side stands at 90 degrees
with its edge, and its handle, where it was: touching there, it does not open; without
`passing_clear` it opens to 90 degrees and not further (common practice, no source).
"""

from dataclasses import dataclass
from typing import Literal

from fronts.rules.handles import handle_of
from fronts.rules.kinds import FRONT_KINDS, is_inset, is_upright
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.practice import Practice
from fronts.rules.results import Front, Level
from fronts.rules.runs import run_of
from fronts.rules.thing_kinds import Run

NearSide = Literal["left", "right"]


@dataclass(frozen=True, slots=True)
class HungFront:
    """A front in its place, with what its cabinet and its handle make of it."""

    front: Front
    laid: Laid
    projection: Mm

    @property
    def face(self) -> Mm:
        """How far its outside stands from the wall: inset it is flush with its cabinet."""
        thickness = NOTHING if is_inset(self.front.plane) else self.front.thickness
        return self.laid.cabinet.depth + thickness

    @property
    def run(self) -> Run:
        """The run that its cabinet stands in."""
        return run_of(self.laid.cabinet)

    @property
    def swings_sideways(self) -> bool:
        """Whether it is a door hinged at its left or right."""
        return FRONT_KINDS[self.front.kind].swings and is_upright(self.front.hinged)


@dataclass(frozen=True, slots=True)
class Blocked:
    """A front that does not open freely, and how much farther off it would have to be."""

    level: Level
    short: Mm


def hung_front(front: Front, laid: Laid, kitchen: Kitchen) -> HungFront:
    """The front with how far its handle stands out; nothing where it has none."""
    out = _projection(laid, kitchen) if front.knobs else NOTHING
    return HungFront(front, laid, out)


def blocked(
    hung: HungFront, side: NearSide, free: Mm, handle: Mm, practice: Practice
) -> Blocked | None:
    """What keeps it from opening where so much is free at this side; None: nothing does.

    `handle` is how far its own handle stands out where it would meet something.
    """
    if not FRONT_KINDS[hung.front.kind].opens:
        return None
    clear = practice.passing_clear
    if not hung.swings_sideways:
        return Blocked("stop", clear - free) if free < clear else None
    if hung.front.hinged != side:
        return Blocked("stop", -free) if free < 0 else None
    left = free - handle
    if left >= clear:
        return None
    return Blocked("stop" if left < 0 else "check", clear - left)


def _projection(laid: Laid, kitchen: Kitchen) -> Mm:
    item = handle_of(laid.handle, kitchen)
    stated = item.projection if item else None
    return kitchen.practice.handle_projection if stated is None else stated
