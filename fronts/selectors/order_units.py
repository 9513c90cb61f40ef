"""The unit that the lengths of a job's order are in."""

from typing import cast

from fronts.rules.kinds import UNITS, Unit
from fronts.selectors.approved_items import approved_items
from shopjobs.models import Job


def unit_held(job: Job) -> str:
    """Why the job's unit stays as it is, in words; "" where it may change.

    Lengths that were approved, sent for and received are counted in feet or in metres: in another
    unit the same number would be another length.
    """
    if not any(each.facts.unit for each in approved_items([job.pk])[job.pk].values()):
        return ""
    unit = UNITS[cast(Unit, job.unit)].lower()
    return f"The job stays in {unit}: lengths on its order were approved in them."
