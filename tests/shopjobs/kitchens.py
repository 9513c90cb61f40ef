"""Small kitchens that have come to some stage, each of one cabinet with two fronts."""

from datetime import timedelta

from fronts.models import Front
from fronts.rules.fits import FitFacts, hung_as
from fronts.rules.practice import inches
from fronts.rules.schedule import schedule
from fronts.selectors.kitchens import placed_kitchen_of
from fronts.services.fits import fit_record
from fronts.services.front_cuts import fronts_mark_cut
from shopjobs.models import Job, Person
from tests.factories import NOW, CabinetFactory, OpeningFactory, overlaid


def kitchen(job: Job, label: str = "B1") -> list[Front]:
    """Two doors side by side, not cut yet."""
    overlaid(job)
    cabinet = CabinetFactory.create(job=job, label=label, width=inches(36))
    left = OpeningFactory.create(cabinet=cabinet, width=inches(15))
    right = OpeningFactory.create(cabinet=cabinet, x=inches(18))
    return [left.fronts.get(), right.fronts.get()]


def cut(job: Job, by: Person, *labels: str) -> None:
    """These fronts were cut as they are now."""
    placed = placed_kitchen_of(job)
    found = schedule(placed)
    seen = {front.label: hung_as(front) for front in found.fronts if front.label in labels}
    fronts_mark_cut(job=job, kitchen=placed, schedule=found, seen=seen, by=by, at=NOW)


def fitted(front: Front, by: Person, state: str = "done", minutes: int = 0) -> None:
    """A record of how a front stands, so many minutes later."""
    facts, at = FitFacts("a", state=state), NOW + timedelta(minutes=minutes)
    fit_record(front=front, facts=facts, hung="", fingerprint="", by=by, at=at)


def done_kitchen(job: Job, by: Person) -> None:
    """Both doors hang and are done."""
    for front in kitchen(job):
        fitted(front, by)
