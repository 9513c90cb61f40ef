"""How far in from a box front's sides and ends its mounting holes may be.

Clear of the box's sides, of its bottom and of each other, so that no screw's head touches. A
box so low that two do not go above each other takes one at each side, at mid-height.
"""

from dataclasses import dataclass

from fronts.rules.box_facts import Box
from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice


@dataclass(frozen=True, slots=True)
class HoleSpan:
    """From `least` to `most` in from a side or end, wished at `wished`; none: `most` is less."""

    least: Mm
    wished: Mm
    most: Mm


@dataclass(frozen=True, slots=True)
class HoleSpans:
    """In from both sides, up from the bottom, down from the top; None: the low ones are all."""

    across: HoleSpan
    low: HoleSpan
    high: HoleSpan | None

    @property
    def count(self) -> int:
        """How many holes there are to be."""
        return 2 if self.high is None else 2 * 2


def hole_spans(box: Box, floor: Mm, practice: Practice) -> HoleSpans:
    """The spans of a box whose bottom panel ends at `floor` above its lower edge."""
    edge = max(practice.hole_to_edge, practice.head_half)
    apart = max(
        practice.hole_apart / 2,
        practice.head_half,
        (practice.hole_diameter + practice.hole_clear) / 2,
    )
    side = max(edge, box.front_thickness + practice.head_half + practice.head_clear)
    bottom = max(edge, floor + practice.head_half)
    across = _span(side, practice.hole_inset, box.width / 2 - apart)
    between = max(box.height / 2, bottom + apart)
    high = _span(edge, practice.hole_inset, box.height - between - apart)
    if high.most < edge:
        return HoleSpans(across, _span(bottom, box.height / 2, box.height - edge), None)
    return HoleSpans(across, _span(bottom, practice.hole_inset, between - apart), high)


def _span(least: Mm, wished: Mm, most: Mm) -> HoleSpan:
    return HoleSpan(least, min(max(wished, least), most), most)
