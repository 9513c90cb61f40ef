"""Saving what a form says once, however often it is sent."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any, TypeVar, cast

from django.apps import apps
from django.db import IntegrityError, models, transaction

from shopjobs.models import Person, SentForm
from shopjobs.services.refused import Refused

T = TypeVar("T")
KEPT = timedelta(days=7)
"""So long a form that comes again is known: a phone that was out of reach may be away for days."""


@dataclass(frozen=True, slots=True)
class Saved:
    """What came of a form when it was saved: a row, or nothing that stands by itself."""

    made: Any


def form_saved_before(*, person: Person, digest: str) -> Saved | None:
    """What came of the form the first time, None where it is new."""
    first = SentForm.objects.filter(person=person, digest=digest).first()
    if first is None:
        return None
    if not first.made_in:
        return Saved(None)
    made = apps.get_model(first.made_in)._base_manager.filter(pk=first.made_key).first()
    if made is None:
        raise Refused(
            "This was saved already, and what it made was deleted since. Send it again to make it "
            "anew."
        )
    return Saved(made)


def form_saved_once(*, person: Person, digest: str, at: datetime, save: Callable[[], T]) -> T:
    """What `save` makes, or what came of it where the same form was saved meanwhile.

    The form's row is written first: who sends the same form waits for it to be through, and
    then finds it. What `save` refuses is forgotten with it.
    """
    with transaction.atomic():
        try:
            with transaction.atomic():
                sent = SentForm.objects.create(person=person, digest=digest, at=at)
        except IntegrityError:
            first = form_saved_before(person=person, digest=digest)
            return cast(T, first.made if first else None)
        SentForm.objects.filter(person=person, at__lt=at - KEPT).delete()
        result = save()
        if isinstance(result, models.Model):
            sent.made_in, sent.made_key = result._meta.label_lower, result.pk
            sent.save(update_fields=["made_in", "made_key"])
        return result
