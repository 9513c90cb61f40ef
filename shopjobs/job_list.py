"""The list of jobs as somebody asks for it: searched, narrowed, in an order, a page at a time.

What a job is at is counted from its records, and no column: only a list that asks for it is
counted whole, everything else the database does by itself.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import reduce
from operator import or_

from django.conf import settings
from django.core.paginator import Page, Paginator
from django.db.models import F, Func, Q, QuerySet, Value
from django.db.models.functions import Length
from django.utils.module_loading import import_string

from shopjobs.job_progress import JobProgress, Standing, Standings
from shopjobs.models import Job, Person
from shopjobs.selectors import jobs_of

A_PAGE = 25
MOST_WORDS = 8
NOBODY = "nobody"
AS_FITTED = "fit"
DIGITS = "0123456789"


@dataclass(frozen=True, slots=True)
class Asked:
    """What of the list is asked for; "" asks for nothing in particular.

    `whose` is the key of a person, or `NOBODY`; `when` one of `WHEN`, `order` one of `ORDERS`.
    """

    words: str = ""
    stage: str = ""
    when: str = ""
    whose: str = ""
    order: str = ""
    archived: bool = False


@dataclass(frozen=True, slots=True)
class Listed:
    """A job of the page, how far it has come, and for how many days it has been late."""

    job: Job
    progress: JobProgress
    days_late: int


WHEN = {"late": "Late", "today": "Today", "week": "This week", "none": "No day yet"}
ORDERS = {
    "changed": "By last change",
    AS_FITTED: "By fitting day",
    "number": "By number",
    "client": "By client",
}


def job_page(person: Person, asked: Asked, today: date, number: str) -> Page[int]:
    """The keys of the jobs on page `number` of those that are asked for."""
    jobs = _on_days(_narrowed(jobs_of(person), asked, person), asked.when, today)
    if asked.stage or asked.when == "late" or asked.order == AS_FITTED:
        keys: Sequence[int] | QuerySet[Job, int] = _by_standing(jobs, asked, today)
    else:
        keys = _in_order(jobs, asked.order).values_list("pk", flat=True)
    return Paginator(keys, A_PAGE).get_page(number)


def jobs_on(page: Page[int], today: date) -> list[Listed]:
    """The jobs of a page in its order, each with how far it has come."""
    keys = list(page)
    found = Job.objects.select_related("responsible").in_bulk(keys)
    progress = import_string(settings.JOB_PROGRESS)(found.values())
    return [_listed(found[key], progress[key], today) for key in keys if key in found]


def _listed(job: Job, progress: JobProgress, today: date) -> Listed:
    late = progress.standing.is_late and job.fit_on is not None
    return Listed(job, progress, (today - job.fit_on).days if late and job.fit_on else 0)


def _narrowed(jobs: QuerySet[Job], asked: Asked, person: Person) -> QuerySet[Job]:
    """All but what depends on the calendar."""
    jobs = jobs.filter(archived_at__isnull=not asked.archived)
    if asked.whose:
        is_whose = Q(responsible=None) if asked.whose == NOBODY else Q(responsible=asked.whose)
        jobs = jobs.filter(is_whose)
    for word in asked.words.split()[:MOST_WORDS]:
        jobs = jobs.filter(_holds(word, person))
    return jobs


def _holds(word: str, person: Person) -> Q:
    """Jobs whose number, client or site holds a word, or that have a cabinet called so."""
    with_cabinet = import_string(settings.JOBS_WITH_CABINET)(person.shop, word)
    return Q(pk__in=with_cabinet) | word_in(("number", "client__name", "site__address"), word)


def word_in(columns: Iterable[str], word: str) -> Q:
    """Rows one of whose columns holds a word, in capitals or not."""
    # SQLite takes capitals for the same letters in ASCII alone.
    written = {word, word.lower(), word.upper(), word.capitalize()}
    return reduce(or_, (Q(**{f"{name}__icontains": each}) for name in columns for each in written))


def _on_days(jobs: QuerySet[Job], when: str, today: date) -> QuerySet[Job]:
    monday = today - timedelta(days=today.weekday())
    days = {
        "late": Q(fit_on__lt=today),
        "today": Q(fit_on=today),
        "week": Q(fit_on__range=(monday, monday + timedelta(days=6))),
        "none": Q(fit_on=None),
    }
    return jobs.filter(days[when]) if when in days else jobs


def _by_standing(jobs: QuerySet[Job], asked: Asked, today: date) -> list[int]:
    """The keys of those that stand as is asked, in the order that is asked."""
    standings: Standings = import_string(settings.JOB_STANDINGS)(jobs.order_by())

    def is_asked(standing: Standing) -> bool:
        return asked.stage in ("", standing.stage) and (asked.when != "late" or standing.is_late)

    if not is_asked(standings.over):
        found = [key for key, standing in standings.left.items() if is_asked(standing)]
        jobs = jobs.filter(pk__in=found)
    rows = [
        (key, fit_on)
        for key, fit_on in _in_order(jobs, asked.order).values_list("pk", "fit_on")
        if is_asked(standings.of(key))
    ]
    if asked.order == AS_FITTED:
        rows.sort(key=lambda row: _turn(row[1], standings.of(row[0]), today))
    return [key for key, _ in rows]


def _turn(fit_on: date | None, standing: Standing, today: date) -> tuple[int, int]:
    """Today's jobs, those that are late, those to come, those without a day; then what is done,
    the latest first."""
    if fit_on == today:
        return 0, 0
    if standing.is_done:
        return 4, -(fit_on or date.min).toordinal()
    if fit_on is None:
        return 3, 0
    return (1 if standing.is_late else 2), 0


def _in_order(jobs: QuerySet[Job], order: str) -> QuerySet[Job]:
    """The jobs in an order, the latest changed first where nothing else decides."""
    if order == AS_FITTED:
        return jobs.order_by(F("fit_on").asc(nulls_last=True), "-updated_at", "-pk")
    if order == "number":
        # K-9 before K-10: what stands before the last digits, then how many there are.
        before_digits = Func(F("number"), Value(DIGITS), function="RTRIM")
        return jobs.order_by(before_digits, Length("number"), "number")
    if order == "client":
        by_name = F("client__name").asc(nulls_last=True)
        return jobs.order_by(by_name, "-updated_at", "-pk")
    return jobs
