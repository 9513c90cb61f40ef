"""What stands in the way of ordering and cutting, with the way to where it is mended."""

from fronts.rules.results import Schedule
from fronts.selectors.kitchens import cabinets_of, doors_of
from fronts.sheets.imprint import findings_of
from fronts.views.measure_links import FindingRow, Ways
from shopjobs.access import SignedInRequest, may
from shopjobs.models import Job


def stops_of(request: SignedInRequest, job: Job, schedule: Schedule) -> list[FindingRow]:
    """The stops of a schedule; where there is none, nothing is read."""
    stops = findings_of(schedule).stops
    if not stops:
        return []
    may_edit = may(request.user, "edit_kitchen")
    ways = Ways(job, list(cabinets_of(job)), list(doors_of(job)), may_edit=may_edit)
    return ways.findings(stops)
