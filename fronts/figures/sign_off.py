"""What a client signs, on the page and on paper: each front's gaps as fitted beside planned."""

from dataclasses import dataclass
from datetime import datetime

from fronts.figures.fronts import what
from fronts.figures.gap_ends import at_its_ends
from fronts.figures.sizes import size
from fronts.rules.fits import Gaps, RecordedFit
from fronts.rules.front_states import front_state
from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show
from fronts.rules.planned_gap import planned_gaps
from fronts.rules.records import Records
from fronts.rules.results import Front, Schedule
from fronts.rules.sign_off import SignOff, sign_off
from fronts.rules.snags import RecordedSnag, on_words


@dataclass(frozen=True, slots=True)
class SideFitted:
    """One side's gap as fitted, and as planned: in one line, or a line at each end.

    Nothing where none was measured, or none was planned.
    """

    side: Side
    fitted: tuple[str, ...]
    planned: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class FrontFitted:
    """A front that is done: what it is, its gaps, who fitted it and when."""

    label: str
    what: str
    size: str
    gaps: tuple[SideFitted, ...]
    by: str
    at: datetime


@dataclass(frozen=True, slots=True)
class WallFitted:
    """The fronts of one wall that are done."""

    name: str
    fronts: tuple[FrontFitted, ...]


@dataclass(frozen=True, slots=True)
class Missing:
    """Something that stands in the way, with why: `B1.a`, `not fitted`."""

    name: str
    why: str


@dataclass(frozen=True, slots=True)
class SignOffShown:
    """All that is handed over, or what is missing. `moves`: there is wood that moves."""

    is_ready: bool
    walls: tuple[WallFitted, ...]
    fronts: tuple[Missing, ...]
    snags: tuple[Missing, ...]
    moves: bool

    @property
    def is_empty(self) -> bool:
        """Whether there is nothing to hand over."""
        return not self.walls and not self.fronts and not self.snags


def sign_off_shown(schedule: Schedule, kitchen: Kitchen, records: Records) -> SignOffShown:
    """What a client signs, in the job's unit; nothing of walls without a front that is done."""
    found = sign_off(kitchen, schedule, records)
    return SignOffShown(
        is_ready=found.is_ready,
        walls=tuple(_walls(found, kitchen)),
        fronts=(
            *(Missing(label, "can’t be worked out: see its stop") for label in found.unmade),
            *(Missing(front.label, _why(front, fit)) for front, fit in found.not_done),
        ),
        snags=tuple(Missing(_on(snag), snag.facts.words) for snag in found.snags),
        moves=any(front.movement is not None for front in schedule.fronts),
    )


def _walls(found: SignOff, kitchen: Kitchen) -> list[WallFitted]:
    walls = (
        WallFitted(
            name,
            tuple(_front(front, fit, kitchen) for front, fit in found.done if front.wall == name),
        )
        for name in kitchen.wall_names
    )
    return [wall for wall in walls if wall.fronts]


def _front(front: Front, fit: RecordedFit, kitchen: Kitchen) -> FrontFitted:
    """What was planned when it was measured; as planned now where nobody noted that."""
    planned = fit.facts.planned.filled_from(planned_gaps(front, kitchen))
    unit = kitchen.job.unit
    return FrontFitted(
        label=front.label,
        what=what(front),
        size=size(unit, front.width, front.height),
        gaps=tuple(
            SideFitted(side, _gap(side, fit.facts.gaps, unit), _gap(side, planned, unit))
            for side in SIDES
        ),
        by=fit.by,
        at=fit.at,
    )


def _gap(side: Side, gaps: Gaps, unit: str) -> tuple[str, ...]:
    """`1/8`; measured at both ends, `top 3/16`, `bottom 1/8`, or one figure where they agree."""
    figures = [show(figure, unit) for figure in gaps.figures(side)]
    return at_its_ends(side, figures if len({*figures}) > 1 else figures[:1])


def _why(front: Front, fit: RecordedFit | None) -> str:
    if fit is None:
        return "not fitted"
    state = front_state(fit.facts.state)
    return "changed since it was fitted" if state.is_done else state.says


def _on(snag: RecordedSnag) -> str:
    facts = snag.facts
    label = (snag.cabinet if facts.of == "cabinet" else snag.front) or facts.label
    return on_words(facts.of, label)
