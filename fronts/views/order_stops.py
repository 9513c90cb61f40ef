"""What stands in the way of ordering, cutting and fitting, with the way to where it is mended."""

from collections.abc import Sequence

from fronts.rules.results import Finding, Schedule
from fronts.selectors.kitchens import cabinets_of, doors_of
from fronts.sheets.imprint import findings_of
from fronts.views.measure_links import FindingRow, Ways
from shopjobs.access import SignedInRequest, may
from shopjobs.models import Job


def stops_of(request: SignedInRequest, job: Job, schedule: Schedule) -> list[FindingRow]:
    """The stops of a schedule."""
    return found_with_ways(request, job, schedule, findings_of(schedule).stops)


def found_with_ways(
    request: SignedInRequest, job: Job, schedule: Schedule, findings: Sequence[Finding]
) -> list[FindingRow]:
    """Findings with their links; where there is none, nothing is read."""
    if not findings:
        return []
    may_edit = may(request.user, "edit_kitchen")
    ways = Ways(job, list(cabinets_of(job)), list(doors_of(job)), may_edit=may_edit)
    ways.of_fronts(schedule)
    return ways.findings(findings)
