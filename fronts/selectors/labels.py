"""Which row each label of a job's kitchen stands for, without a look at what is in it."""

from collections.abc import Mapping
from dataclasses import dataclass

from django.db.models import Count

from fronts.models import Cabinet, Opening
from fronts.rules.kinds import CLOSINGS
from fronts.rules.labels import numbered, opening_label
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class KeysByLabel:
    """The keys of cabinets and openings, and where each front is: its opening and place in it.

    `on_box` are the fronts that stand on boxes.
    """

    cabinets: Mapping[str, int]
    openings: Mapping[str, int]
    fronts: Mapping[str, tuple[int, int]]
    on_box: frozenset[str]


def keys_by_label(job: Job) -> KeysByLabel:
    """The keys of everything in the job's cabinets that has a label, in two queries."""
    openings: dict[str, int] = {}
    fronts: dict[str, tuple[int, int]] = {}
    on_box: set[str] = set()
    rows = Opening.objects.filter(cabinet__job=job)
    named = rows.values_list("cabinet__label", "label", "pk", "closed_by", Count("fronts"))
    for cabinet, opening, key, closed_by, count in named:
        label = opening_label(cabinet, opening)
        openings[label] = key
        labels = numbered(label, count)
        fronts |= {front: (key, place) for place, front in enumerate(labels)}
        if CLOSINGS[closed_by].on_box:
            on_box.update(labels)
    cabinets = Cabinet.objects.filter(job=job).values_list("label", "pk")
    return KeysByLabel(dict(cabinets), openings, fronts, frozenset(on_box))
