"""What a person is told whose form is older than what somebody else saved."""

from collections.abc import Sequence
from dataclasses import is_dataclass
from fractions import Fraction
from typing import Any

from django.db.models import Model
from django.utils import timezone

from fronts.facts.changes import changes
from fronts.rules.lengths import show
from shopjobs.models import Job
from shopjobs.selectors import last_revision_of


def conflict_message(job: Job, rows: Sequence[Model], held: Any, typed: Any, unit: str) -> str:
    """Who saved meanwhile, and each fact that differs, theirs and the one that was typed."""
    values = "; ".join(
        f"{change.says.capitalize()}: now {_said(change.was, unit)}, "
        f"you typed {_said(change.now, unit)}"
        for change in changes(held, typed)
    )
    words = f"{_who(job, rows)} saved this while you were typing."
    again = "Save again to put yours in its place."
    return f"{words} {values}. {again}" if values else f"{words} {again}"


def _who(job: Job, rows: Sequence[Model]) -> str:
    """Who wrote any of the rows last."""
    revision = last_revision_of(job, rows)
    if revision is None or revision.person is None:
        return "Somebody"
    return f"{revision.person.shown_name}, at {timezone.localtime(revision.at):%H:%M},"


def _said(value: object, unit: str) -> str:
    if isinstance(value, Fraction):
        return show(value, unit)
    if isinstance(value, tuple):
        return ", ".join(_said(each, unit) for each in value) or "nothing"
    if is_dataclass(value):
        return "something"
    return "nothing" if value in (None, "") else str(value)
