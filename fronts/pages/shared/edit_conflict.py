"""What a person is told whose form is older than what somebody else saved."""

from fractions import Fraction
from typing import Any

from django.db.models import Model
from django.utils import timezone

from fronts.pages.shared.version import meanwhile
from fronts.rules.lengths import show
from shopjobs.models import DiaryEntry, Job


def conflict_message(job: Job, row: Model, typed: dict[str, Any], unit: str) -> str:
    """Who saved meanwhile, and each value that differs, theirs and the one that was typed."""
    now = meanwhile(row, typed)
    values = "; ".join(
        f"{_name(row, name)}: now {_said(value, unit)}, you typed {_said(typed[name], unit)}"
        for name, value in now.items()
    )
    words = f"{_who(job, row)} saved this while you were typing."
    again = "Save again to put yours in its place."
    return f"{words} {values}. {again}" if values else f"{words} {again}"


def _who(job: Job, row: Model) -> str:
    """Who wrote the row last, as the diary has it."""
    entries = DiaryEntry.objects.filter(job=job, text__iendswith=f" {row}")
    entry = entries.select_related("person").order_by("-pk").first()
    if entry is None or entry.person is None:
        return "Somebody"
    return f"{entry.person.shown_name}, at {timezone.localtime(entry.at):%H:%M},"


def _name(row: Model, name: str) -> str:
    return str(getattr(row._meta.get_field(name), "verbose_name", name)).capitalize()


def _said(value: object, unit: str) -> str:
    if isinstance(value, Fraction):
        return show(value, unit)
    if isinstance(value, tuple):
        return ", ".join(_said(each, unit) for each in value) or "nothing"
    return "nothing" if value in (None, "") else str(value)
