"""A job's stages as its page shows them, and what a moved date would do."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date

from fronts.models import StageMark
from fronts.rules.capacity import Planned, TooMany
from fronts.rules.date_facts import DOING, STAGES, Stage
from fronts.rules.day_words import day_words, days_words
from fronts.rules.delivery import Delivery, LeadBy
from fronts.rules.lateness import Lateness
from fronts.rules.moved_dates import Moved, MovedJob, MovedStage
from fronts.rules.stages import DatedJob, Span, latest_spans, open_stages, stage_of
from fronts.selectors.dates import ShopPlan
from shopjobs.words import capitalized

_RECORDED: Mapping[Stage, str] = {
    "measure": "its fronts are entered",
    "order": "all of the order is sent",
    "cut": "all fronts are cut or have come",
    "fit": "all fronts are fitted",
}
"""What was recorded where nobody marked a stage as done, nor one after it."""
_LATER = "a later stage is done"
_DUE_BY: Mapping[LeadBy, str] = {"job": ", this job’s own number", "shop": " as is usual"}
"""Who says how long what was sent for takes, where its supplier does not."""


@dataclass(frozen=True, slots=True)
class StageRow:
    """A stage: its latest days, when it is planned and why so early, what is marked.

    `passed` says why it counts as done though nobody marked it so; "" where it does not.
    `waits` say how long what is ordered takes to come, and who says so.
    """

    stage: Stage
    name: str
    takes: str
    latest: Span | None
    planned: Planned | None
    because: str
    mark: StageMark | None
    is_now: bool
    passed: str
    may_mark: bool
    waits: tuple[str, ...] = ()

    @property
    def is_earlier(self) -> bool:
        """Whether it is planned on other days than its latest."""
        return self.planned is not None and self.planned.span != self.latest

    @property
    def state(self) -> str:
        """What is marked: `done`, `begun` or nothing."""
        if self.mark is None:
            return ""
        return "done" if self.mark.done_on else "begun"


def stage_rows(
    job: DatedJob, known: ShopPlan, marks: Iterable[StageMark], may_mark: Iterable[Stage]
) -> list[StageRow]:
    """Every stage of the job."""
    latest, plan = latest_spans(job, known.calendar.days), known.plan.of(job.key)
    marked: Mapping[str, StageMark] = {each.stage: each for each in marks}
    now, may = stage_of(job), frozenset(may_mark)
    at = STAGES.index(now) if now else len(STAGES)
    return [
        StageRow(
            stage=stage,
            name=capitalized(DOING[stage]),
            takes=_takes(job, stage),
            latest=latest.get(stage),
            planned=plan.get(stage),
            because=_because(plan.get(stage), known),
            mark=marked.get(stage),
            is_now=stage == now,
            passed=_passed(stage, marked.get(stage), at),
            may_mark=stage in may,
            waits=tuple(_delivery(job, known.today)) if stage == "order" else (),
        )
        for stage in STAGES
    ]


def _passed(stage: Stage, mark: StageMark | None, at: int) -> str:
    """Why a stage before the one that is on, by its place, is done without a mark of its own."""
    place = STAGES.index(stage)
    if place >= at or (mark is not None and mark.done_on):
        return ""
    return _RECORDED.get(stage, _LATER) if place == at - 1 else _LATER


def _takes(job: DatedJob, stage: Stage) -> str:
    """`4 working days`; of the order also how long it is on its way."""
    lead = job.days.until_next(stage)
    own = days_words(job.days.of(stage))
    return f"{own}, then {lead} for delivery" if lead else own


def _delivery(job: DatedJob, today: date) -> Iterator[str]:
    """Whose number of days holds for delivery, while anything is to be sent for; what comes last.

    Once it is fitted, nothing is waited for.
    """
    held = job.delivery
    if held is None or stage_of(job) is None:
        return
    if "order" in open_stages(job):
        yield _who_says(held)
    if held.last and held.last.sent_on and held.due:
        head, comes = ("On its way", "comes last, on")
        if held.due < today:
            head, comes = ("Overdue", "was to come by")
        takes = days_words(held.last.days or 0)
        yield (
            f"{head}: {held.last.words} {comes} {day_words(held.due, today)}; sent for on "
            f"{day_words(held.last.sent_on, today)}, {takes}{_DUE_BY.get(held.due_by, '')}."
        )


def _who_says(held: Delivery) -> str:
    match held.by:
        case "job":
            return "Delivery: this job’s own number of days."
        case "supplier" if held.longest:
            return f"Delivery: {held.longest.words} takes longest."
        case "nothing":
            return "Delivery: nothing is left to send for."
        case _ if held.longest:
            usual = (
                "Delivery: the shop’s usual number of days, since nobody says how long this takes"
            )
            return f"{usual}: {held.longest.words}."
    return "Delivery: the shop’s usual number of days, until the order is approved."


def _because(planned: Planned | None, known: ShopPlan) -> str:
    """`3 working days earlier: K-2 has the later ones`."""
    if planned is None or planned.earlier <= 0:
        return ""
    earlier = f"{days_words(planned.earlier)} earlier"
    names = [known.jobs[key].number for key in planned.because if key in known.jobs]
    if not names:
        return f"{earlier}, since what follows is earlier too"
    return f"{earlier}: {', '.join(names)} {'has' if len(names) == 1 else 'have'} the later ones"


@dataclass(frozen=True, slots=True)
class MovedRow:
    """What a moved date does to one job."""

    key: int
    number: str
    client: str
    lines: tuple[str, ...]
    late: Lateness
    is_worse: bool


@dataclass(frozen=True, slots=True)
class MovedShown:
    """What a moved date does: to this job, to the others, and days with too many jobs."""

    own: tuple[MovedRow, ...]
    others: tuple[MovedRow, ...]
    too_many: tuple[str, ...]


def moved_shown(done: Moved, key: int, known: ShopPlan, jobs: Mapping[int, DatedJob]) -> MovedShown:
    """The change in words, job by job."""
    rows = [_moved_row(each, jobs[each.key], known.today) for each in done.jobs]
    return MovedShown(
        tuple(row for row in rows if row.key == key),
        tuple(row for row in rows if row.key != key),
        tuple(too_many_words(each, jobs, known.today) for each in done.too_many),
    )


def _moved_row(each: MovedJob, job: DatedJob, today: date) -> MovedRow:
    lines = tuple(_line(stage, today) for stage in each.stages)
    return MovedRow(each.key, job.number, job.client, lines, each.after, each.is_worse)


def _line(stage: MovedStage, today: date) -> str:
    """`finishing: 25 March to 2 April → 22 March to 30 March`."""
    before, after = (span_words(each, today) for each in (stage.before, stage.after))
    return f"{DOING[stage.stage]}: {before} → {after}"


def span_words(span: Span | None, today: date) -> str:
    """`3 March`, `3 March to 7 March`; no day at all is `no day`."""
    if span is None:
        return "no day"
    first = day_words(span.start, today)
    return first if span.start == span.end else f"{first} to {day_words(span.end, today)}"


def too_many_words(each: TooMany, jobs: Mapping[int, DatedJob], today: date) -> str:
    """`5 April: 2 jobs at fitting (K-1, K-2), 1 at once`."""
    names = ", ".join(jobs[key].number for key in sorted(each.jobs) if key in jobs)
    return (
        f"{day_words(each.day, today)}: {len(each.jobs)} jobs at {DOING[each.stage]} "
        f"({names}), {each.at_once} at once"
    )
