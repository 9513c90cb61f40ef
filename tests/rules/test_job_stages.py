"""What a job is at, what it waits for, and when it is late."""

from datetime import date, timedelta

import pytest

from fronts.rules.date_facts import Stage, StageMark
from fronts.rules.job_stages import (
    JOB_STAGES,
    JobCounts,
    is_late,
    job_stage,
    last_done,
    stage_recorded,
    waits_for,
    with_marks,
)
from fronts.rules.snags import OpenSnags

TODAY = date(2027, 3, 12)


@pytest.mark.parametrize(
    ("counts", "stage", "waits"),
    [
        (JobCounts(), "measure", "its first fronts"),
        (JobCounts(snags=OpenSnags(1, 0)), "measure", "its first fronts"),
        (JobCounts(fronts=4, to_make=4), "cut", "4 fronts to cut or to come"),
        (JobCounts(fronts=4, to_make=3, made=2), "cut", "1 front to cut or to come"),
        (JobCounts(fronts=4, to_make=3, made=2, done=1), "cut", "1 front to cut or to come"),
        (JobCounts(fronts=4), "fit", "4 fronts to fit"),
        (JobCounts(fronts=4, to_make=3, made=3, done=3), "fit", "1 front to fit"),
        (JobCounts(4, 3, 3, 1, problems=2), "fit", "3 fronts to fit, 2 with a problem"),
        (JobCounts(4, 3, 2, problems=1), "cut", "1 front to cut or to come, 1 with a problem"),
        (JobCounts(4, 3, 3, 4, OpenSnags(2, 1)), "settle", "2 snags, 1 late"),
        (JobCounts(4, 3, 3, 4), "done", ""),
        (JobCounts(fronts=4, to_make=4, measuring=True), "measure", "the rest of its fronts"),
        (JobCounts(4, 4, measuring=True, approved=True), "cut", "4 fronts to cut or to come"),
        (JobCounts(marked="measure"), "cut", "its first fronts"),
        (JobCounts(4, 4, marked="cut"), "fit", "4 fronts to fit"),
        (JobCounts(4, 4, marked="fit"), "done", ""),
    ],
)
def test_a_job_is_at_the_first_stage_with_something_left(
    counts: JobCounts, stage: str, waits: str
) -> None:
    """Entered, cut or come, fitted, settled: in that order."""
    assert (job_stage(counts).word, waits_for(counts)) == (stage, waits)
    assert JOB_STAGES[stage] == job_stage(counts).says


@pytest.mark.parametrize(
    ("days", "done", "late"),
    [(None, False, False), (0, False, False), (1, False, False), (-1, False, True),
     (-1, True, False)],
)  # fmt: skip
def test_a_job_is_late_from_the_day_after(days: int | None, done: bool, late: bool) -> None:
    """On its day it is not, nor without one, nor once it is done."""
    fit_on = None if days is None else TODAY + timedelta(days=days)

    assert is_late(fit_on, TODAY, done=done) is late


@pytest.mark.parametrize(
    ("counts", "stage"),
    [
        (JobCounts(), None),
        (JobCounts(fronts=4, to_make=4), "measure"),
        (JobCounts(fronts=4, to_make=4, measuring=True), None),
        (JobCounts(fronts=4, to_make=4, made=1, measuring=True), "measure"),
        (JobCounts(fronts=4, done=1, measuring=True), "measure"),
        (JobCounts(fronts=4, to_make=4, approved=True, measuring=True), "measure"),
        (JobCounts(fronts=4, to_make=4, approved=True, sent=True), "order"),
        (JobCounts(fronts=4, to_make=4, made=3, approved=True, sent=True), "order"),
        (JobCounts(fronts=4, to_make=3, made=3), "cut"),
        (JobCounts(fronts=4, to_make=3, made=3, done=4), "fit"),
    ],
)  # fmt: skip
def test_records_say_which_stages_are_done(counts: JobCounts, stage: Stage | None) -> None:
    """Entered, approved, sent, cut or come, fitted; while measuring goes on, entered is not all."""
    assert stage_recorded(counts) == stage


def test_the_later_of_what_is_marked_and_recorded_holds() -> None:
    """Whichever it is; a stage that was only begun is not done."""
    day = date(2027, 3, 1)
    ordered = (StageMark("measure", day, day), StageMark("order", None, day))
    begun = (StageMark("measure", day), StageMark("finish", day))

    assert last_done(with_marks(JobCounts(4, 4), ordered)) == "order"
    assert last_done(with_marks(JobCounts(4, 4, 4), ordered)) == "cut"
    assert with_marks(JobCounts(), begun) == JobCounts(measuring=True)
