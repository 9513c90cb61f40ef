"""What can be known of the next cabinet from those that there are: nothing is asked twice."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from fronts.models import Cabinet, Opening
from fronts.rules.lengths import Mm
from fronts.services.faces import FACES

FIRST_LABELS = {"base": "B1", "wall": "W1", "tall": "T1"}
_NUMBERED = re.compile(r"(.*?)([0-9]+)(\D*)")


@dataclass(frozen=True, slots=True)
class Next:
    """The cabinets of a job in their order, and the kind of the one that comes next."""

    cabinets: Sequence[Cabinet]
    kind: str

    def initial(self) -> dict[str, Any]:
        """What the form of the next cabinet starts with."""
        last = self.last(self.kind)
        initial: dict[str, Any] = {
            "kind": self.kind,
            "label": self.label(),
            "wall": self.wall(),
            "face": "door",
        }
        latest = self.cabinets[-1] if self.cabinets else None
        initial["build"] = latest.build if latest else "face-frame"
        if last is None:
            return initial
        initial |= {name: getattr(last, name) for name in ("build", "height", "depth")}
        openings = list(last.openings.all())
        return initial | _members(last, openings) | _closing(openings)

    def last(self, kind: str) -> Cabinet | None:
        """The last cabinet of this kind."""
        return next((each for each in reversed(self.cabinets) if each.kind == kind), None)

    def wall(self) -> str:
        """The wall that is being entered."""
        return self.cabinets[-1].wall if self.cabinets else "A"

    def run_end(self, wall: str, kind: str) -> Mm:
        """Where the run of cabinets on this wall ends; hung cabinets run by themselves."""
        row = {"wall", "tall"} if kind == "wall" else {"base", "tall"}
        run = [each for each in self.cabinets if each.wall == wall and each.kind in row]
        return max((each.x + each.width for each in run), default=Mm(0))

    def floor_of(self, kind: str) -> Mm | None:
        """How high above the floor the last cabinet of this kind begins; the first that hangs
        may hang anywhere."""
        last = self.last(kind)
        if last is not None:
            return last.y
        return None if kind == "wall" else Mm(0)

    def label(self, after: str | None = None) -> str:
        """The label that comes after that one, or after the last of this kind."""
        last = self.last(self.kind)
        label = after or (last.label if last else "")
        if not label:
            return _free(FIRST_LABELS[self.kind], self._taken())
        return _free(_counted_on(label), self._taken())

    def _taken(self) -> set[str]:
        return {each.label for each in self.cabinets}


def _members(cabinet: Cabinet, openings: Sequence[Opening]) -> dict[str, Any]:
    """The members of a cabinet's face: what is left round its openings."""
    if not openings:
        return {}
    top = max(each.y + each.height for each in openings)
    found: dict[str, Any] = {
        "sides": min(each.x for each in openings),
        "above": cabinet.height - top,
        "below": min(each.y for each in openings),
    }
    highest = max(openings, key=lambda each: each.y)
    under = [each for each in openings if each.y + each.height <= highest.y]
    if under:
        found["between"] = highest.y - max(each.y + each.height for each in under)
        found["drawer_height"] = highest.height
    return found


def _closing(openings: Sequence[Opening]) -> dict[str, Any]:
    """What closed the last cabinet, where that is one of the plain faces."""
    down = sorted(openings, key=lambda each: -each.y)
    face = "+".join(each.closed_by for each in down)
    if face not in FACES:
        return {"face": ""}
    return {"face": face, "hinged": down[-1].hinged, "count": down[-1].count} if down else {}


def _counted_on(label: str) -> str:
    found = _NUMBERED.fullmatch(label)
    if found is None:
        return f"{label}2"
    head, number, tail = found.groups()
    return f"{head}{int(number) + 1}{tail}"


def _free(label: str, taken: set[str]) -> str:
    while label in taken:
        label = _counted_on(label)
    return label
