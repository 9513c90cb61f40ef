"""A plain face: one opening that fills a cabinet, or a drawer's opening over the rest.

+------------------+  above
|   +----------+   |
|   | a drawer |   |  drawer_height
|   +----------+   |
|                  |  between
|   +----------+   |
|   | b rest   |   |
|   +----------+   |
+------------------+  below
sides          sides
"""

from collections.abc import Mapping
from dataclasses import dataclass

from fronts.rules.kinds import ClosedBy, Hinged
from fronts.rules.kitchen import FrontFacts, Opening
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.validity import tidied

PLAIN_FACES: Mapping[tuple[ClosedBy, ...], str] = {
    ("door",): "Door",
    ("pair",): "Pair of doors",
    ("drawer", "door"): "Drawer over a door",
    ("drawer", "pair"): "Drawer over a pair of doors",
    ("drawers",): "Stack of drawers",
    ("drawer",): "One drawer",
    ("pull-out",): "Pull-out",
    ("fixed",): "Fixed front",
    ("open",): "Nothing, it stays open",
}
"""What closes the openings of a plain face, from the top, and what that is called."""


class FaceError(ValueError):
    """The members leave no opening; `faults` says so by the name of the member that is too wide."""

    def __init__(self, faults: Mapping[str, str]) -> None:
        super().__init__(" ".join(faults.values()))
        self.faults = faults


@dataclass(frozen=True, slots=True, kw_only=True)
class PlainFace:
    """A plain face: what closes it from the top, and how wide its members are.

    `hinged` and `count` are those of a single door and of a stack; `drawer_height` is that of
    the opening above, where there is one.
    """

    closed_by: tuple[ClosedBy, ...]
    sides: Mm
    above: Mm
    below: Mm
    between: Mm
    hinged: Hinged = "left"
    count: int = 1
    drawer_height: Mm | None = None

    @property
    def drawer_over(self) -> bool:
        """Whether a drawer's opening stands over the rest."""
        return len(self.closed_by) > 1


def face_openings(face: PlainFace, width: Mm, height: Mm) -> tuple[Opening, ...]:
    """The openings of a plain face, from the top, in a cabinet of this size; or FaceError."""
    across, upward = width - 2 * face.sides, height - face.above - face.below
    drawer = face.drawer_height or NOTHING
    rest = upward - drawer - face.between if face.drawer_over else upward
    faults: dict[str, str] = {}
    if across <= 0:
        faults["sides"] = "The members at the sides leave no opening between them."
    if rest <= 0:
        member = "drawer_height" if face.drawer_over and upward > 0 else "below"
        faults[member] = "The members above and below leave no opening between them."
    if faults:
        raise FaceError(faults)
    *upper, lowest = face.closed_by
    y = height - face.above - drawer
    openings = [_opening(face, "a", closed_by, y, across, drawer) for closed_by in upper]
    label = "b" if face.drawer_over else "a"
    return (*openings, _opening(face, label, lowest, face.below, across, rest))


def _opening(
    face: PlainFace, label: str, closed_by: ClosedBy, y: Mm, width: Mm, height: Mm
) -> Opening:
    return tidied(
        Opening(
            label=label,
            x=face.sides,
            y=y,
            width=width,
            height=height,
            closed_by=closed_by,
            fronts=(FrontFacts(hinged=face.hinged),) * face.count,
        )
    )
