"""What a job is at, what it waits for and whether it is late, by what was recorded of it.

Common practice, no source: a kitchen is entered, cut, fitted, settled, handed over. The records'
word is taken as it is; whether a front is another since it was fitted is said on Fit.

What a job is at, and what it is late at, both follow from the last of its dated stages that is
done (`last_done`): marked by somebody, or recorded. What comes before that is done too.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date

from fronts.rules.date_facts import STAGES, Stage, StageMark
from fronts.rules.snags import NO_SNAGS, OpenSnags


@dataclass(frozen=True, slots=True)
class JobCounts:
    """How many fronts a job has, how many of them are to be cut or come, are there, are done.

    So many are a problem on site: to remake, missing, damaged, of a wrong size. A front that is
    made of what there is, such as a door on hand, is none that is `to_make`; one that is done was
    made. `snags` are those still open. Of its order: whether it is `approved`, and all of that
    `sent`. `marked`: the last stage that somebody marked as done; `measuring`: somebody said that
    measuring has begun, and not that it is done.
    """

    fronts: int = 0
    to_make: int = 0
    made: int = 0
    done: int = 0
    snags: OpenSnags = NO_SNAGS
    approved: bool = False
    sent: bool = False
    marked: Stage | None = None
    measuring: bool = False
    problems: int = 0


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


def with_marks(counts: JobCounts, marks: Iterable[StageMark]) -> JobCounts:
    """With what somebody said of the job's stages."""
    held = tuple(marks)
    done = [mark.stage for mark in held if mark.done_on is not None]
    return replace(
        counts,
        marked=_later(done),
        measuring=any(mark.stage == "measure" and mark.done_on is None for mark in held),
    )


def job_stage(counts: JobCounts) -> JobStage:
    """The first of the stages in which something is left to do.

    A job is to cut from the time when it is measured, also while its order is still to be placed;
    where no front is to be made, it is to fit.
    """
    last = last_done(counts)
    if last is None:
        return TO_MEASURE
    if last == "fit":
        return TO_SETTLE if counts.snags.count else DONE
    is_cut = last in ("cut", "finish") or (counts.fronts and not counts.to_make)
    return TO_FIT if is_cut else TO_CUT


def last_done(counts: JobCounts) -> Stage | None:
    """The last of a job's dated stages that is done, by mark or by record; None where none is."""
    recorded = stage_recorded(counts)
    return _later([stage for stage in (counts.marked, recorded) if stage is not None])


def stage_recorded(counts: JobCounts) -> Stage | None:
    """The last of a job's dated stages that its records say is done; None where none is.

    Common practice, no source: a kitchen is ordered and cut from its measures, so that an
    approved order, or a front that was cut or came, says that it is measured. So does a front that
    was entered, unless somebody said that measuring goes on. It is ordered once all that was
    approved is sent. That fronts are cut tells nothing of finishing, which only a mark does.
    """
    if counts.fronts and counts.done == counts.fronts:
        return "fit"
    if counts.to_make and counts.made == counts.to_make:
        return "cut"
    if counts.approved and counts.sent:
        return "order"
    begun = counts.approved or counts.made or counts.done
    return "measure" if begun or (counts.fronts and not counts.measuring) else None


def waits_for(counts: JobCounts) -> str:
    """What is left to do in the stage that the job is at; "" where nothing is."""
    stage = job_stage(counts)
    if stage == TO_MEASURE or (stage == TO_CUT and not counts.fronts):
        return "the rest of its fronts" if counts.fronts else "its first fronts"
    if stage == TO_CUT:
        return _and_problems(f"{_fronts(counts.to_make - counts.made)} to cut or to come", counts)
    if stage == TO_FIT and counts.fronts:
        return _and_problems(f"{_fronts(counts.fronts - counts.done)} to fit", counts)
    return "" if stage == TO_FIT else counts.snags.words


def is_late(fit_on: date | None, today: date, *, done: bool) -> bool:
    """From the day after the one on which it was to be fitted, until it is done."""
    return fit_on is not None and fit_on < today and not done


def _and_problems(words: str, counts: JobCounts) -> str:
    return f"{words}, {counts.problems} with a problem" if counts.problems else words


def _fronts(count: int) -> str:
    return f"{count} front{'' if count == 1 else 's'}"


def _later(stages: Iterable[Stage]) -> Stage | None:
    return max(stages, key=STAGES.index, default=None)
