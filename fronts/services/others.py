"""Appliances, fillers, end panels and gaps: what else their deletion touches."""

from datetime import datetime

from fronts.models import Thing
from fronts.services.standing import followed, let_follow
from fronts.services.things import thing_delete
from shopjobs.models import Person
from shopjobs.services.recording import recorded


@recorded
def other_delete(*, row: Thing, at: datetime, by: Person | None = None) -> None:
    """Delete a thing; what followed it follows what stands before it."""
    was = followed(row)

    def go_on() -> list[str]:
        let_follow(was, None)
        return []

    thing_delete(row=row, at=at, by=by, let_go=go_on)
