"""Templates for holes: what lies the same from its edges is drawn once, for all its fronts.

    |          o           |     narrow paper serves a corner at the left and, cut along its
    |                      |     other edge too, one at the right; wide paper is turned over for
    +----------------------+     that. Turned half round, it serves the corner across

What is too far from an edge for the paper is laid along a line that is marked there first.
"""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from fronts.rules.kitchen import Kitchen, Point
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.results import Schedule
from fronts.rules.template_holes import Along, HoleGroup, hole_groups
from fronts.rules.template_results import (
    Hand,
    HoleTemplate,
    Purpose,
    TemplateFace,
    TemplateRoom,
    TemplateUse,
    hand_of,
)


@dataclass(frozen=True, slots=True)
class _Shape:
    """All that the uses of one drawing have in common."""

    purpose: Purpose
    face: TemplateFace
    diameter: Mm | None
    upright_edge: bool
    level_edge: bool
    marks: tuple[Point, ...]

    def hands(self, uses: Sequence[TemplateUse], both: Mm) -> tuple[Hand, ...]:
        """Where its upright edges are: on both sides where it is narrow and its uses ask for it."""
        if not self.upright_edge:
            return ()
        wanted = {hand_of(use, level_edge=self.level_edge) for use in uses}
        xs = {mark.x for mark in self.marks}
        narrow = len(xs) == 1 and max(xs) * 2 <= both
        hands: tuple[Hand, ...] = ("left", "right") if narrow else ("left",)
        return tuple(hand for hand in hands if hand in wanted) or ("right",)


def hole_templates(
    schedule: Schedule, kitchen: Kitchen, room: TemplateRoom
) -> tuple[HoleTemplate, ...]:
    """The templates of the whole kitchen, in the order of the work."""
    alike: dict[_Shape, list[TemplateUse]] = defaultdict(list)
    for group in hole_groups(schedule, kitchen):
        shape, use = _placed(group, room)
        alike[shape].append(use)
    return tuple(
        HoleTemplate(
            shape.purpose, shape.face, shape.diameter, shape.hands(uses, room.both),
            shape.level_edge, shape.marks, tuple(uses),
        )
        for shape, uses in alike.items()
    )  # fmt: skip


def _placed(group: HoleGroup, room: TemplateRoom) -> tuple[_Shape, TemplateUse]:
    """The drawing that marks a group of holes, and how it is laid there."""
    across = _line_at(group.across, room.one[0], room.most[0])
    up = _line_at(group.up, room.one[1], room.most[1])
    xs, ys = (_from_line(group.across, across), _from_line(group.up, up))
    marks = tuple(sorted(map(Point, xs, ys), key=lambda mark: (mark.x, mark.y)))
    shape = _Shape(
        group.purpose, group.face, group.diameter, across is None, up is None, marks
    )  # fmt: skip
    return shape, TemplateUse(group.front, group.across.side, group.up.side, across, up)


def _line_at(along: Along, one: Mm, most: Mm) -> Mm | None:
    """How far from its side a line is marked for the paper; None where the paper reaches it.

    Paper is not taped together for what lies in the middle of a face, which is easily marked.
    """
    far = max(along.places)
    if far <= one or (far <= most and not along.central and not along.taped):
        return None
    return along.middle


def _from_line(along: Along, line: Mm | None) -> list[Mm]:
    """Inwards from the edge; from a line in their middle holes lie the same to either side."""
    return [place - (line or NOTHING) for place in along.places]
