"""What a job is at, what it waits for and whether it is late, by what was recorded of it.

Common practice, no source: a kitchen is entered, cut, fitted, settled, handed over. The records'
word is taken as it is; whether a front is another since it was fitted is said on Fit. A job
that somebody marked as fitted is fitted, and what was recorded front by front ends its stages.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

from fronts.rules.date_facts import Stage
from fronts.rules.snags import NO_SNAGS, OpenSnags


@dataclass(frozen=True, slots=True)
class JobCounts:
    """How many fronts a job has, how many of them are to be cut or come, are there, are done.

    A front that is made of what there is, such as a door on hand, is none that is `to_make`;
    one that is done was made. `snags` are those still open. `fitted`: somebody marked the job so.
    """

    fronts: int = 0
    to_make: int = 0
    made: int = 0
    done: int = 0
    snags: OpenSnags = NO_SNAGS
    fitted: bool = False


@dataclass(frozen=True, slots=True)
class JobStage:
    """What a job is at: its word in addresses, and what people call it."""

    word: str
    says: str


TO_MEASURE = JobStage("measure", "to measure")
TO_CUT = JobStage("cut", "to cut")
TO_FIT = JobStage("fit", "to fit")
TO_SETTLE = JobStage("settle", "to settle")
DONE = JobStage("done", "done")
JOB_STAGES: Mapping[str, str] = {
    stage.word: stage.says for stage in (TO_MEASURE, TO_CUT, TO_FIT, TO_SETTLE, DONE)
}


def job_stage(counts: JobCounts) -> JobStage:
    """The first of the stages in which something is left to do."""
    if not counts.fitted:
        if not counts.fronts:
            return TO_MEASURE
        if counts.made < counts.to_make:
            return TO_CUT
        if counts.done < counts.fronts:
            return TO_FIT
    return TO_SETTLE if counts.snags.count else DONE


def stage_recorded(counts: JobCounts) -> Stage | None:
    """The last of a job's dated stages that its fronts say is done; None where none is."""
    if counts.fronts and counts.done == counts.fronts:
        return "fit"
    return "cut" if counts.to_make and counts.made == counts.to_make else None


def waits_for(counts: JobCounts) -> str:
    """What is left to do in the stage that the job is at; "" where nothing is."""
    stage = job_stage(counts)
    if stage == TO_MEASURE:
        return "its first fronts"
    if stage == TO_CUT:
        return f"{_fronts(counts.to_make - counts.made)} to cut or to come"
    if stage == TO_FIT:
        return f"{_fronts(counts.fronts - counts.done)} to fit"
    return counts.snags.words


def is_late(fit_on: date | None, today: date, *, done: bool) -> bool:
    """From the day after the one on which it was to be fitted, until it is done."""
    return fit_on is not None and fit_on < today and not done


def _fronts(count: int) -> str:
    return f"{count} front{'' if count == 1 else 's'}"
