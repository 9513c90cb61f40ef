"""The work on one front, step by step, and which steps are ticked off."""

from collections.abc import Mapping
from dataclasses import dataclass

from fronts.figures.work_steps import work_for
from fronts.models import WorkTick
from fronts.rules.fitting_results import Fitting
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Front


@dataclass(frozen=True, slots=True)
class Step:
    """A step in its words; `tick` is who ticked it off and when, None where nobody did."""

    words: str
    tick: WorkTick | None


@dataclass(frozen=True, slots=True)
class WorkOnFront:
    """The steps in their order, and the other way to do it, if there is one."""

    heading: str
    steps: tuple[Step, ...]
    other: str

    @property
    def done(self) -> int:
        """How many steps are ticked off."""
        return sum(step.tick is not None for step in self.steps)


def work_on(
    front: Front, fitting: Fitting | None, kitchen: Kitchen, ticks: Mapping[str, WorkTick]
) -> WorkOnFront | None:
    """The work that hangs this front; None where it needs none."""
    fittings = {} if fitting is None else {front.label: fitting}
    works = work_for([front], fittings, kitchen)
    if not works:
        return None
    (work,) = works
    steps = tuple(Step(words, ticks.get(words)) for words in work.steps)
    return WorkOnFront(work.heading, steps, work.other)
