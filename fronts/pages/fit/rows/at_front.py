"""All that is known of the front that an installer stands before."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime

from fronts.models import FitRecord, FrontCut, WorkTick
from fronts.rules.fits import state_of
from fronts.rules.front_states import NOT_HUNG, FrontState
from fronts.rules.kitchen import Kitchen
from fronts.rules.merged_jigs import JigPlan
from fronts.rules.results import Front, Schedule


@dataclass(frozen=True, slots=True)
class AtFront:
    """A front with what was recorded of it, the latest first, and the steps ticked off.

    `jigs` are those that are made for the kitchen; `measure` leads to its opening's form, ""
    where there is none; `cut` is what it was cut to; `changed_on` is when the kitchen was changed
    first after the latest record, `meanwhile` a record of somebody else that came while the last
    one was being written.
    """

    schedule: Schedule
    kitchen: Kitchen
    front: Front
    jigs: JigPlan
    records: Sequence[FitRecord]
    ticks: Mapping[str, WorkTick]
    measure: str = ""
    cut: FrontCut | None = None
    changed_on: datetime | None = None
    meanwhile: FitRecord | None = None

    @property
    def record(self) -> FitRecord | None:
        """The latest record, which counts."""
        return self.records[0] if self.records else None

    @property
    def state(self) -> FrontState:
        """How it stands."""
        return standing(self.record, self.front)


def standing(record: FitRecord | None, front: Front) -> FrontState:
    """How a front stands by its latest record; without one it does not hang."""
    return NOT_HUNG if record is None else state_of(record.state, record.hung, front)
