"""What a front was cut to, and what a later measurement makes of it: as it is, trimmed, or anew.

A front's edges are told from the lower left corner of its cabinet, so that it is known which
side a change is at: an edge that has moved in is trimmed there. A front that would have to be
larger, or of another thickness, is made again; so is one that would lose more than the shop
trims, or whose stile or rail would get too narrow.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from fronts.rules.kinds import FRONT_BUILDS, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.results import Front
from fronts.rules.standard_levels import standard_at


@dataclass(frozen=True, slots=True)
class CutTo:
    """The size of a front when it was marked as cut, and its lower left corner in its cabinet."""

    width: Mm
    height: Mm
    thickness: Mm
    left: Mm
    bottom: Mm


@dataclass(frozen=True, slots=True)
class AfterCut:
    """What is to be done with a front that was cut: `trims` by side; or made again, and `why`.

    `why` holds the sizes that it lacks by their names, what would be trimmed too far by side.
    """

    trims: Mapping[Side, Mm]
    lacks: Mapping[str, Mm]
    too_far: Mapping[Side, Mm]

    @property
    def make_again(self) -> bool:
        """Whether nothing but another front will do."""
        return bool(self.lacks or self.too_far)

    @property
    def holds(self) -> bool:
        """Whether it is right as it was cut."""
        return not (self.make_again or self.trims)


def cut_to(front: Front, kitchen: Kitchen) -> CutTo:
    """What is kept of a front that is cut now."""
    cabinet = kitchen.cabinet(front.cabinet)
    return CutTo(
        front.width, front.height, front.thickness, front.x - cabinet.left, front.y - cabinet.y
    )


def after_cut(cut: CutTo, front: Front, kitchen: Kitchen) -> AfterCut:
    """What a front that was cut needs to become the front that the kitchen wants now."""
    now, standard = cut_to(front, kitchen), standard_at(front, kitchen)
    wanted = {
        "width": now.width - cut.width,
        "height": now.height - cut.height,
        "thickness": abs(now.thickness - cut.thickness),
    }
    lacks = {name: by for name, by in wanted.items() if by > 0}
    if lacks:
        return AfterCut({}, lacks, {})
    trims = {
        **_trims("left", "right", now.left - cut.left, -wanted["width"]),
        **_trims("bottom", "top", now.bottom - cut.bottom, -wanted["height"]),
    }
    frame = front.frame if FRONT_BUILDS[front.build].framed else None
    too_far = {
        side: trim
        for side, trim in trims.items()
        if trim > standard.trim_limit
        or (frame is not None and frame[side] - trim < standard.least_stile)
    }
    return AfterCut(trims, {}, too_far)


def _trims(low: Side, high: Side, moved: Mm, less: Mm) -> dict[Side, Mm]:
    """What comes off the two edges of one axis: off the low one as far as it has moved in."""
    at_low = min(max(moved, NOTHING), less)
    return {side: trim for side, trim in ((low, at_low), (high, less - at_low)) if trim}
