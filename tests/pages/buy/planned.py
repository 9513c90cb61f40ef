"""A finished cutting plan of a job, made at once by the plain way, for tests that need one."""

from fronts.cutting.plan import plan
from fronts.cutting.plan_json import plan_to_store, request_to_store
from fronts.models import CutPlan, PlanState
from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.fingerprint import parts_fingerprint
from fronts.selectors.schedules import schedule_of
from fronts.services.cutting_requests import usual_request
from shopjobs.models import Job, Person
from tests.factories import NOW


def planned(job: Job, by: Person) -> CutPlan:
    """The plan of all parts as they are now, from the usual stock."""
    schedule = schedule_of(job)
    asked, found = [], []
    for group in cutting_groups(schedule.parts):
        request = usual_request(group, job.unit)
        asked.append({"key": group.key, "name": group.material, **request_to_store(request)})
        found.append(plan_to_store(plan(request, seconds=0.2)))
    return CutPlan.objects.create(
        job=job, fingerprint=parts_fingerprint(schedule.parts), asked=asked, found=found,
        state=PlanState.DONE, made_by=by, started_at=NOW, finished_at=NOW,
    )  # fmt: skip
