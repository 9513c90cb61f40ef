"""Recording how a front stands on site, and how it fitted."""

from dataclasses import fields, replace
from datetime import datetime
from typing import Any, TypeVar

from fronts.facts import PLACES
from fronts.facts.rows import columns_of
from fronts.models import FitRecord, Front
from fronts.rules.fits import FitFacts, FrontThen, Gaps, front_then, hung_as
from fronts.rules.front_states import front_state
from fronts.rules.gap_questions import gap_question_words, gap_questions
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.planned_gap import planned_gaps
from fronts.rules.results import Front as PlannedFront
from fronts.rules.standard_levels import standard_at
from fronts.services.saving import AskFirst, checked, job_told, saved
from shopjobs.models import Person
from shopjobs.services.recording import recorded
from shopjobs.words import capitalized

Reckoned = TypeVar("Reckoned", Gaps, FrontThen)


@recorded
def fit_record(
    *,
    front: Front,
    facts: FitFacts,
    hung: str,
    fingerprint: str,
    by: Person,
    at: datetime,
    entered: datetime | None = None,
) -> FitRecord:
    """Record how a front stands and the gaps round it; each record stays, the last counts.

    `hung` is the short name of the front as it is now, `fingerprint` that of the schedule.
    `entered` is when it was written down, where it waited to be sent. What the facts say was
    planned, and the front as it was, are kept to the last decimal that a column holds.
    """
    job = front.opening.cabinet.job
    kept = replace(facts, planned=_as_kept(facts.planned), was=_as_kept(facts.was))
    record = FitRecord(
        job=job, front=front, hung=hung, fingerprint=fingerprint,
        fitted_by=by, fitted_at=entered or at, **columns_of(kept),
    )  # fmt: skip
    checked(record)
    saved(record)
    text = f"{record.label}: {front_state(record.state).says}"
    job_told(job=job, text=text, by=by, at=at, about=front.opening.cabinet)
    return record


def front_fit(
    *,
    front: Front,
    hangs: PlannedFront,
    kitchen: Kitchen,
    facts: FitFacts,
    fingerprint: str,
    confirmed: bool,
    by: Person,
    at: datetime,
    entered: datetime | None = None,
) -> FitRecord:
    """Record how the front `hangs`, as the kitchen has it now, beside what is planned now.

    A gap that looks misread is asked about until it is `confirmed`.
    """
    planned = planned_gaps(hangs, kitchen)
    least = standard_at(hangs, kitchen).least_gap
    asked = [] if confirmed else list(gap_questions(facts.gaps, planned, least, kitchen.practice))
    if asked:
        unit = kitchen.job.unit
        said = "; ".join(gap_question_words(question, unit) for question in asked)
        raise AskFirst(f"{capitalized(said)}: is it so?", ())
    return fit_record(
        front=front, facts=replace(facts, planned=planned, was=front_then(hangs)),
        hung=hung_as(hangs), fingerprint=fingerprint, by=by, at=at, entered=entered,
    )  # fmt: skip


def _as_kept(reckoned: Reckoned) -> Reckoned:
    """A length that is reckoned may have no end of decimals; one that is entered has few."""
    said: dict[str, Any] = {fact.name: getattr(reckoned, fact.name) for fact in fields(reckoned)}
    for name, value in said.items():
        said[name] = round(value, PLACES) if isinstance(value, Mm) else value
    return type(reckoned)(**said)
