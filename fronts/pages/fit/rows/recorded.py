"""What was recorded of a front: beside what was planned, what to do now, and what changed since."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from fronts.facts.rows import columns_of, from_row
from fronts.figures.fit_changes import fit_change_words
from fronts.figures.gap_ends import at_its_ends
from fronts.figures.mending_words import mending_lines
from fronts.figures.sizes import on_one_line, signed
from fronts.models import FitRecord
from fronts.pages.fit.rows.at_front import AtFront
from fronts.rules.fit_changes import fit_changes
from fronts.rules.fits import FitFacts, Gaps, RecordedFit, hangs_still
from fronts.rules.front_states import FrontState, front_state
from fronts.rules.kinds import SIDES, Side
from fronts.rules.lengths import Mm, show
from fronts.rules.moving import mending_of
from fronts.rules.planned_gap import planned_gaps
from fronts.rules.standard_levels import standard_at
from fronts.rules.truing import errors_at, truing_of


@dataclass(frozen=True, slots=True)
class Gap:
    """One side's gap: as planned, as measured, and by how much they differ; "" where none is.

    A side that was measured at both its ends says so: `top 3/16, bottom 1/8`.
    """

    side: Side
    planned: str
    measured: str
    difference: str


@dataclass(frozen=True, slots=True)
class Earlier:
    """A record that a later one took the place of."""

    record: FitRecord
    state: FrontState
    gaps: str


@dataclass(frozen=True, slots=True)
class Recorded:
    """The last record of a front, beside what was planned then, or is now where nobody noted it.

    `todo` says which way to move it and what else there is to do. `changes` are what is
    otherwise now, since `changed_on`. `another`: the front is made or hung otherwise since, so
    that it has to be fitted anew.
    """

    record: FitRecord
    state: FrontState
    gaps: tuple[Gap, ...]
    todo: tuple[str, ...]
    changes: tuple[str, ...]
    changed_on: datetime | None
    another: bool
    earlier: tuple[Earlier, ...]
    meanwhile: FitRecord | None


def recorded_of(at: AtFront) -> Recorded | None:
    """All that was recorded of the front; None where nothing was."""
    record, unit = at.record, at.kitchen.job.unit
    if record is None:
        return None
    facts, now = from_row(FitFacts, record), planned_gaps(at.front, at.kitchen)
    planned = facts.planned.filled_from(now)
    changes = fit_changes(facts, at.front, now)
    is_measured = facts.gaps != Gaps()
    state = front_state(record.state)
    another = not hangs_still(record.hung, at.front)
    return Recorded(
        record=record,
        state=state,
        gaps=tuple(_gap(side, planned, facts.gaps, unit) for side in SIDES) if is_measured else (),
        todo=tuple(_todo(at, record, facts)) if state.hangs and not another else (),
        changes=tuple(fit_change_words(changes, unit)),
        changed_on=at.changed_on,
        another=another,
        earlier=tuple(_earlier(one, unit) for one in at.records[1:]),
        meanwhile=at.meanwhile,
    )


def as_recorded(record: FitRecord | None) -> dict[str, Mm | str | None]:
    """What a form to measure again starts from."""
    return {} if record is None else columns_of(from_row(FitFacts, record))


def _todo(at: AtFront, record: FitRecord, facts: FitFacts) -> Sequence[str]:
    front, kitchen = at.front, at.kitchen
    fitting, standard = at.schedule.fitting(front.label), standard_at(front, kitchen)
    fit = RecordedFit(front.label, record.fitted_at, record.by, facts, hung=record.hung)
    truing = truing_of(fit, front, fitting, kitchen)
    mending = mending_of(
        truing, facts.gaps, front, fitting, kitchen.practice,
        least_gap=standard.least_gap, trim_limit=standard.trim_limit,
    )  # fmt: skip
    return mending_lines(mending, truing, front, fitting, kitchen)


def _earlier(record: FitRecord, unit: str) -> Earlier:
    facts = from_row(FitFacts, record)
    said = [(side, _shown(side, facts.gaps, unit)) for side in SIDES]
    gaps = "; ".join(f"{side} {figure}" for side, figure in said if figure)
    return Earlier(record, front_state(record.state), gaps)


def _gap(side: Side, planned: Gaps, measured: Gaps, unit: str) -> Gap:
    off = [signed(error, unit) for error in errors_at(measured, planned, side)]
    wanted, found = (_shown(side, gaps, unit) for gaps in (planned, measured))
    return Gap(side, wanted, found, _ends(side, off))


def _shown(side: Side, gaps: Gaps, unit: str) -> str:
    return _ends(side, [show(figure, unit) for figure in gaps.figures(side)])


def _ends(side: Side, figures: Sequence[str]) -> str:
    """Both ends, where there are two; a narrow column breaks between them alone."""
    return ", ".join(on_one_line(end) for end in at_its_ends(side, figures))
