"""Reads of shops, people, jobs and tasks. Each starts from a person, and so from one shop."""

from collections import Counter
from collections.abc import Collection
from datetime import datetime, timedelta

from django.contrib.auth import HASH_SESSION_KEY
from django.db.models import QuerySet
from django.db.models.functions import Now

from shopjobs.models import (
    BackgroundTask,
    Job,
    Person,
    Revision,
    Role,
    Session,
    Shop,
    SignInFailure,
    Worker,
)
from shopjobs.models.task import OPEN
from shopjobs.row_changes import changes_of

WORKER_GONE_AFTER = timedelta(seconds=10)
"""A worker says every other second that it is there; waiting for a lock may hold it up."""


def jobs_of(person: Person) -> QuerySet[Job]:
    """Return the jobs of the person's shop, the latest changed first."""
    return Job.objects.filter(shop__people=person).order_by("-updated_at", "-pk")


def deleted_jobs_of(person: Person) -> QuerySet[Job]:
    """Return the jobs of the person's shop that were deleted and can still be brought back."""
    jobs = Job.with_deleted.filter(shop__people=person).exclude(deleted_at=None)
    return jobs.select_related("client").order_by("-deleted_at", "-pk")


def job_of(person: Person, job_id: int) -> Job:
    """Return one job of the person's shop; for anyone else it does not exist."""
    return jobs_of(person).select_related("shop").get(pk=job_id)


def people_of(person: Person) -> QuerySet[Person]:
    """Return the people of the person's shop, those who may sign in first."""
    return Person.objects.filter(shop__people=person).order_by("-is_active", "username")


def people_at_work(shop: Shop, also: int | None = None) -> dict[int, str]:
    """Return the names of those of the shop who may sign in, by their keys; `also` names one
    more, who may be chosen already."""
    people = [*Person.objects.filter(shop=shop).order_by("username")]
    names = _names(people)
    return {each.pk: names[each.pk] for each in people if each.is_active or each.pk == also}


def names_in(shop: Shop) -> dict[int, str]:
    """Return a name for each person of the shop that means nobody else there.

    It is the name that others read; the sign-in name where that could be taken for another's.
    """
    return _names([*Person.objects.filter(shop=shop)])


def keys_by_name(shop: Shop) -> dict[str, int]:
    """Return whom of the shop a name means: one of `names_in`, or a sign-in name."""
    people = [*Person.objects.filter(shop=shop)]
    signed_in = {person.username: person.pk for person in people}
    return signed_in | {name: key for key, name in _names(people).items()}


def _names(people: list[Person]) -> dict[int, str]:
    meant = Counter(person.username for person in people)
    meant.update(person.shown_name for person in people if person.shown_name != person.username)
    return {
        person.pk: person.shown_name if meant[person.shown_name] == 1 else person.username
        for person in people
    }


def colleague_of(person: Person, person_id: int) -> Person:
    """Return one person of the same shop; anyone else does not exist."""
    return people_of(person).get(pk=person_id)


def owners_of(person: Person) -> QuerySet[Person]:
    """Return the owners of the person's shop who may sign in."""
    return people_of(person).filter(role=Role.OWNER, is_active=True)


def failures_since(username: str, address: str, since: datetime) -> int:
    """Return how often signing in failed for a name from an address."""
    return SignInFailure.objects.filter(username=username, address=address, at__gte=since).count()


def failures_from(address: str, since: datetime) -> int:
    """Return how often signing in failed from an address, whatever the name."""
    return SignInFailure.objects.filter(address=address, at__gte=since).count()


def sessions_of(person: Person, at: datetime) -> list[Session]:
    """Return where the person is signed in, the latest seen first.

    A session from under an older password lets nobody in, though its row may still be there.
    """
    rows = Session.objects.filter(person=person, expire_date__gt=at).order_by("-seen_at", "pk")
    now = person.get_session_auth_hash()
    return [row for row in rows if row.get_decoded().get(HASH_SESSION_KEY) == now]


def open_tasks_of(shop: Shop) -> QuerySet[BackgroundTask]:
    """Return the shop's tasks that wait or are being worked on."""
    return BackgroundTask.objects.filter(shop=shop, state__in=OPEN)


def workers_alive() -> QuerySet[Worker]:
    """Return the workers that were seen just now, by the database's clock."""
    return Worker.objects.filter(seen_at__gte=Now() - WORKER_GONE_AFTER)


def revisions_of(owner: Job | Shop) -> QuerySet[Revision]:
    """Return the history of a job, or of what a shop has for all its jobs."""
    if isinstance(owner, Job):
        return Revision.objects.filter(job=owner)
    return Revision.objects.filter(shop=owner, job=None)


def last_touching(
    revisions: QuerySet[Revision], rows: Collection[tuple[str, int]], column: str = ""
) -> Revision | None:
    """Return what was done last to any of these rows, by their tables and keys.

    With a column, what was done last to that.
    """
    newest_first = revisions.select_related("person").order_by("-pk")
    for revision in newest_first.iterator(chunk_size=50):
        if any(
            (change.table, change.key) in rows and change.touches(column)
            for change in changes_of(revision.changes)
        ):
            return revision
    return None


def has_owner(shop: Shop) -> bool:
    """Return whether somebody can still sign in as the shop's owner."""
    return Person.objects.filter(shop=shop, role=Role.OWNER, is_active=True).exists()


def is_sign_in_name(username: str) -> bool:
    """Return whether somebody of any shop signs in by this name, whatever its capitals."""
    return Person.objects.filter(username__iexact=username).exists()
