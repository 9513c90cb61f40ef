"""What each kind of cabinet does otherwise than the job, with the way to change it."""

from dataclasses import dataclass

from fronts.figures.own_standard import own_words
from fronts.models import KindStandard
from fronts.rules.kinds import CABINET_KINDS
from fronts.snapshot.standards import standard_of
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class KindRow:
    """A kind of cabinet, and in words what it says of the standard; "" where it says nothing."""

    kind: str
    says: str
    differs: str


def kind_rows(job: Job) -> list[KindRow]:
    """Every kind of cabinet, in the order in which they are offered."""
    held = {row.kind: standard_of(row) for row in KindStandard.objects.filter(job=job)}
    return [
        KindRow(
            kind,
            f"{traits.says} cabinets",
            ", ".join(own_words(held[kind], job.unit)) if kind in held else "",
        )
        for kind, traits in CABINET_KINDS.items()
    ]
