"""What a person is told whose form is older than what somebody else saved."""

from dataclasses import is_dataclass
from fractions import Fraction
from typing import Any

from django.db.models import Model, Q
from django.utils import timezone

from fronts.facts.changes import changes
from fronts.models import Front
from fronts.rules.lengths import show
from shopjobs.models import DiaryEntry, Job


def conflict_message(job: Job, row: Model, held: Any, typed: Any, unit: str) -> str:
    """Who saved meanwhile, and each fact that differs, theirs and the one that was typed."""
    values = "; ".join(
        f"{change.says.capitalize()}: now {_said(change.was, unit)}, "
        f"you typed {_said(change.now, unit)}"
        for change in changes(held, typed)
    )
    words = f"{_who(job, row)} saved this while you were typing."
    again = "Save again to put yours in its place."
    return f"{words} {values}. {again}" if values else f"{words} {again}"


def _who(job: Job, row: Model) -> str:
    """Who wrote the row last, as the diary has it."""
    entries = DiaryEntry.objects.filter(_tells_of(row), job=job)
    entry = entries.select_related("person").order_by("-pk").first()
    if entry is None or entry.person is None:
        return "Somebody"
    return f"{entry.person.shown_name}, at {timezone.localtime(entry.at):%H:%M},"


def _tells_of(row: Model) -> Q:
    """The entries that tell of a row's change; a front is also changed with its opening."""
    if isinstance(row, Front):
        of, name = row.opening, str(row)
        changed = (f"opening {of}", f"the front of {of}", name[:1].lower() + name[1:])
        return Q(text__in=[f"Changed {thing}" for thing in changed])
    return Q(text__iendswith=f" {row}") & ~Q(text__startswith="Recorded the fit of")


def _said(value: object, unit: str) -> str:
    if isinstance(value, Fraction):
        return show(value, unit)
    if isinstance(value, tuple):
        return ", ".join(_said(each, unit) for each in value) or "nothing"
    if is_dataclass(value):
        return "something"
    return "nothing" if value in (None, "") else str(value)
