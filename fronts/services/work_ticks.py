"""Ticking off the steps of the work on a front."""

from datetime import datetime

from fronts.models import Front, WorkTick
from shopjobs.models import Person


def step_tick(*, front: Front, step: str, by: Person, at: datetime) -> None:
    """Tick a step off; who did so first is kept."""
    WorkTick.objects.get_or_create(
        front=front, step=step, defaults={"ticked_by": by, "ticked_at": at}
    )


def step_untick(*, front: Front, step: str) -> None:
    """Take a tick back; nothing happens where there is none."""
    WorkTick.objects.filter(front=front, step=step).delete()
