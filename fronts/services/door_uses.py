"""A door on hand becomes the front that it was proposed for."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.rules.door_uses import ProposedUse
from fronts.rules.kitchen import CHOOSE, FrontFacts
from fronts.rules.labels import opening_label
from fronts.rules.schedule import schedule
from fronts.selectors.kitchens import front_of
from fronts.selectors.labels import keys_by_label
from fronts.services.fronts import front_change
from fronts.services.saving import job_changed
from fronts.snapshot import kitchen_of
from fronts.snapshot.things import at_hand
from shopjobs.models import Job, Person
from shopjobs.services.recording import recorded


@recorded
def door_uses_accept(
    *, job: Job, uses: Sequence[ProposedUse], at: datetime, by: Person | None = None
) -> int:
    """Let these doors be what is proposed, in one step: by name where a single front closes.

    Where several do, a front becomes whichever door fits; ValidationError where another one
    than was proposed would then be taken.
    """
    keys = keys_by_label(job).openings
    for use in uses:
        opening = opening_label(use.front.cabinet, use.front.opening)
        place = 0 if use.opening.closing.single else int(use.front.label.rpartition(".")[2]) - 1
        front = front_of(job, keys[opening], place)
        named = use.door.label if use.opening.closing.single else CHOOSE
        held: FrontFacts = at_hand(front)
        front_change(front=front, facts=replace(held, door_on_hand=named), at=at, by=by)
    become = {use.front: use.door for use in schedule(kitchen_of(job)).doors_on_hand}
    others = [use.door.label for use in uses if become.get(use.front.label) != use.door.label]
    if others:
        names = " and ".join(others)
        raise ValidationError(
            f"without the others, another door would be taken where {names} was proposed; "
            "choose them together"
        )
    if len(uses) > 1:
        job_changed(job=job, text=f"Let {len(uses)} doors on hand be fronts", by=by, at=at)
    return len(uses)
