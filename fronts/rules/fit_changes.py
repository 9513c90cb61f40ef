"""What has changed of a front since it was measured round: its size, its hand, its planned gaps."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.rules.fits import FitFacts, Gaps
from fronts.rules.kinds import SIDES, Side
from fronts.rules.lengths import Mm
from fronts.rules.results import Front


@dataclass(frozen=True, slots=True)
class SizeChange:
    """A size that is another now: `name` is width, height or thickness."""

    name: str
    was: Mm
    now: Mm


@dataclass(frozen=True, slots=True)
class HandChange:
    """The side at which it hangs now; "" where it has none."""

    was: str
    now: str


@dataclass(frozen=True, slots=True)
class GapChange:
    """A side whose gap is planned otherwise now; None: nothing is planned there."""

    side: Side
    was: Mm
    now: Mm | None


FitChange = SizeChange | HandChange | GapChange


def fit_changes(facts: FitFacts, front: Front, planned: Gaps) -> Iterator[FitChange]:
    """What is otherwise now than when the record was made; nothing of what nobody noted then."""
    then = facts.was
    for name, was, now in (
        ("width", then.width, front.width),
        ("height", then.height, front.height),
        ("thickness", then.thickness, front.thickness),
    ):
        if was is not None and was != now:
            yield SizeChange(name, was, now)
    if then.width is not None and then.hinged != (front.hinged or ""):
        yield HandChange(then.hinged, front.hinged or "")
    for side in SIDES:
        before, after = facts.planned.mean(side), planned.mean(side)
        if before is not None and before != after:
            yield GapChange(side, before, after)
