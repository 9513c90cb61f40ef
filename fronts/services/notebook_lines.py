"""Lines of a notebook become rows: walls, cabinets with their faces, things; one step back."""

from datetime import datetime

from fronts.models import Wall
from fronts.notebook import Added
from fronts.rules.kitchen import Cabinet
from fronts.rules.wall_facts import Thing
from fronts.rules.wall_facts import Wall as WallFacts
from fronts.services.along_wall import standing_put_before
from fronts.services.cabinets import cabinet_create
from fronts.services.saving import job_changed
from fronts.services.things import thing_change, thing_create
from fronts.snapshot.things import bare
from shopjobs.models import Job, Person
from shopjobs.services.recording import recorded


@recorded
def lines_enter(
    *, job: Job, added: Added, before: str = "", at: datetime, by: Person | None = None
) -> int:
    """Enter all that the lines add, in their run `before` what has this label; how many rows."""
    for wall in added.walls:
        _wall(job, wall, at, by)
    for cabinet in added.cabinets:
        cabinet_create(job=job, facts=cabinet, at=at, by=by)
    for thing in added.others:
        thing_create(job=job, facts=thing, at=at, by=by)
    count = len(added.walls) + len(added.cabinets) + len(added.others)
    rows: tuple[WallFacts | Cabinet | Thing, ...] = (
        *added.walls,
        *added.cabinets,
        *added.others,
    )
    names = [one.label for one in rows]
    if before:
        standing_put_before(job, names, before)
    job_changed(job=job, text=f"Entered {', '.join(names)}", by=by, at=at)
    return count


def _wall(job: Job, wall: WallFacts, at: datetime, by: Person | None) -> None:
    """A new wall, or the length of one that there is."""
    row = Wall.objects.filter(job=job, label=wall.label).first()
    if row is None:
        thing_create(job=job, facts=wall, at=at, by=by)
    else:
        row.job = job
        held: WallFacts = bare(row)
        ends = WallFacts(wall.label, wall.length, held.left, held.right)
        thing_change(row=row, facts=ends, at=at, by=by)
