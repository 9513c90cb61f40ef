"""How a front fitted once it hung: what was measured and said, by whom, and of which front."""

import hashlib
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Annotated, TypeVar

from fronts.rules.fact_kinds import Group, Label, Length, Text
from fronts.rules.front_states import DONE, NOT_HUNG, FrontState, front_state
from fronts.rules.kinds import SIDES, Side
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.limits import LONGEST_FRONT_LABEL, LONGEST_NOTE, LONGEST_WORD
from fronts.rules.results import Front

T = TypeVar("T")
LETTERS = 16
ENDS: Mapping[Side, tuple[Side, Side]] = {
    "left": ("top", "bottom"), "right": ("top", "bottom"),
    "top": ("left", "right"), "bottom": ("left", "right"),
}  # fmt: skip
"""The two ends of each side, in the order in which they are said."""
UPRIGHT: tuple[Side, Side] = ("left", "right")
"""The sides that tell whether a front hangs askew, once both are measured at both ends."""


@dataclass(frozen=True, slots=True)
class Gaps:
    """The gap at each side: one figure along all of it, or one at each end; None: not known.

    A side never has both: `left` is None where `left_top` and `left_bottom` speak.
    """

    left: Annotated[Mm | None, Length("left", zero=True)] = None
    right: Annotated[Mm | None, Length("right", zero=True)] = None
    top: Annotated[Mm | None, Length("top", zero=True)] = None
    bottom: Annotated[Mm | None, Length("bottom", zero=True)] = None
    left_top: Annotated[Mm | None, Length("left, at the top", zero=True)] = None
    left_bottom: Annotated[Mm | None, Length("left, at the bottom", zero=True)] = None
    right_top: Annotated[Mm | None, Length("right, at the top", zero=True)] = None
    right_bottom: Annotated[Mm | None, Length("right, at the bottom", zero=True)] = None
    top_left: Annotated[Mm | None, Length("top, at the left", zero=True)] = None
    top_right: Annotated[Mm | None, Length("top, at the right", zero=True)] = None
    bottom_left: Annotated[Mm | None, Length("bottom, at the left", zero=True)] = None
    bottom_right: Annotated[Mm | None, Length("bottom, at the right", zero=True)] = None

    def figures(self, side: Side) -> tuple[Mm, ...]:
        """What is known of a side: nothing, one figure, or one at each of its `ENDS`."""
        said = (getattr(self, name) for name in (side, *end_names(side)))
        return tuple(figure for figure in said if figure is not None)

    def mean(self, side: Side) -> Mm | None:
        """The gap of a side, in the middle where it is known at both ends; None: not known."""
        figures = self.figures(side)
        return mean_of(figures) if figures else None

    def filled_from(self, others: "Gaps") -> "Gaps":
        """These gaps, and the others' at each side of which nothing is known here."""
        return Gaps(**{
            name: getattr(self if self.figures(side) else others, name)
            for side in SIDES
            for name in (side, *end_names(side))
        })  # fmt: skip


def mean_of(figures: Sequence[Mm]) -> Mm:
    """The mean of some lengths, of one at least."""
    return sum(figures, NOTHING) / len(figures)


def end_names(side: Side) -> tuple[str, str]:
    """What the gaps at the two ends of a side are called in `Gaps`."""
    first, second = ENDS[side]
    return f"{side}_{first}", f"{side}_{second}"


def at_ends(side: Side, figures: Sequence[T]) -> T | dict[str, T] | None:
    """The one figure of a side, or each by its end; None where nothing is known."""
    if len(figures) > 1:
        return {str(end): figure for end, figure in zip(ENDS[side], figures, strict=True)}
    return figures[0] if figures else None


@dataclass(frozen=True, slots=True)
class FrontThen:
    """A front as it was when it was measured round; None and "": nobody noted it."""

    width: Annotated[Mm | None, Length("width")] = None
    height: Annotated[Mm | None, Length("height")] = None
    thickness: Annotated[Mm | None, Length("thickness", small=True)] = None
    hinged: Annotated[str, Text("hinged", LONGEST_WORD)] = ""


@dataclass(frozen=True, slots=True)
class FitFacts:
    """What was measured round one front, called `label` then, and a note.

    `state` is a word of `FRONT_STATES` for how it stands then. `planned` and `was` are what was
    measured against: the gaps as they were planned then, and the front as it was, which a later
    change of the kitchen leaves alone.
    """

    label: Annotated[str, Text("front", LONGEST_FRONT_LABEL)]
    gaps: Annotated[Gaps, Group("gaps", "gap_")] = Gaps()
    note: Annotated[str, Text("note", LONGEST_NOTE)] = ""
    state: Annotated[str, Label("state", LONGEST_WORD, example=DONE.word)] = DONE.word
    planned: Annotated[Gaps, Group("planned gaps", "planned_")] = Gaps()
    was: Annotated[FrontThen, Group("front as it was", "was_")] = FrontThen()


@dataclass(frozen=True, slots=True)
class RecordedFit:
    """A record of fit: of the front called so now, or then where it has gone; when; by whom.

    `hung` is the short name of what hung there, `fingerprint` that of the schedule; ""
    where nobody noted it.
    """

    front: str
    at: datetime
    by: str
    facts: FitFacts
    gone: bool = False
    hung: str = ""
    fingerprint: str = ""


def latest_fits(fits: Iterable[RecordedFit]) -> Mapping[str, RecordedFit]:
    """The latest record of each front that is there, by what it is called."""
    there = (fit for fit in fits if not fit.gone)
    return {fit.front: fit for fit in sorted(there, key=lambda fit: fit.at)}


def front_then(front: Front) -> FrontThen:
    """What a record keeps of the front that it is of."""
    return FrontThen(front.width, front.height, front.thickness, front.hinged or "")


def state_of(word: str, hung: str, front: Front) -> FrontState:
    """How a front stands by its latest record: by its word, and by the short name of what hung.

    One that is another front since does not hang.
    """
    return front_state(word) if hangs_still(hung, front) else NOT_HUNG


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
