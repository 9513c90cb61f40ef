"""The choice of a door on hand: by its label, or whichever fits best."""

from collections.abc import Callable, Iterable
from typing import Any

from django import forms

from fronts.facts.item_form_field import ChoiceOrNothing
from fronts.models import DoorOnHand
from fronts.rules.kitchen import CHOOSE
from shopjobs.models import Job


class DoorField(ChoiceOrNothing):
    """A door on hand by its label; one that is `named` already needs no looking up."""

    named: frozenset[str | None] = frozenset()
    nothing = "A new front"

    def valid_value(self, value: Any) -> bool:
        return value in self.named or value == CHOOSE or super().valid_value(value)


def offer_doors(
    field: forms.Field, doors: Callable[[], Iterable[str]], *, named: Iterable[str | None]
) -> None:
    """Let the field offer these doors, which are asked for only where they are shown or checked."""
    if isinstance(field, DoorField):
        field.named = frozenset(named)
        field.choices = lambda: [
            ("", field.nothing),
            (CHOOSE, "Whichever door on hand fits best"),
            *((label, f"Door {label}") for label in doors()),
        ]


def door_labels(job: Job) -> Callable[[], list[str]]:
    """The labels of the job's doors on hand, once they are asked for."""
    doors = DoorOnHand.objects.filter(job=job).order_by("position", "pk")
    return lambda: list(doors.values_list("label", flat=True))
