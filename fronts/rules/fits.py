"""How a front fitted once it hung: what was measured and said, and of which front."""

import hashlib
from dataclasses import dataclass
from typing import Annotated

from fronts.rules.facts import Group, Length, Text
from fronts.rules.lengths import Mm
from fronts.rules.limits import LONGEST_FRONT_LABEL, LONGEST_NOTE
from fronts.rules.results import Front

LETTERS = 16


@dataclass(frozen=True, slots=True)
class GapsMeasured:
    """The gap at each side, None where none was measured."""

    left: Annotated[Mm | None, Length("left", zero=True)] = None
    right: Annotated[Mm | None, Length("right", zero=True)] = None
    top: Annotated[Mm | None, Length("top", zero=True)] = None
    bottom: Annotated[Mm | None, Length("bottom", zero=True)] = None


@dataclass(frozen=True, slots=True)
class FitFacts:
    """What was measured round one front, called `label` then, and a note."""

    label: Annotated[str, Text("front", LONGEST_FRONT_LABEL)]
    gaps: Annotated[GapsMeasured, Group("gaps", "gap_")] = GapsMeasured()
    note: Annotated[str, Text("note", LONGEST_NOTE)] = ""

    @property
    def says_nothing(self) -> bool:
        """Whether nothing was measured and nothing said."""
        return not self.note and self.gaps == GapsMeasured()


def hangs_still(hung: str, front: Front) -> bool:
    """Whether the front is the one that was fitted; "" where nobody noted which one it was."""
    return hung in ("", hung_as(front))


def hung_as(front: Front) -> str:
    """A short name of what hangs: the same however the front is called and where it stands.

    A front that is made, sized or hung otherwise is another one: it has to be fitted anew.
    """
    what = (
        front.kind, front.plane, front.hinged, front.width, front.height, front.thickness,
        front.build, front.door_on_hand is not None,
    )  # fmt: skip
    return hashlib.sha256(repr(what).encode()).hexdigest()[:LETTERS]
