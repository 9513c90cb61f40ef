"""A kitchen whose parts are planned, and the form that plans them, for the cut page's tests."""

from typing import Any

from django.test import Client

from fronts.models import CutPlan, PlanState
from fronts.rules.cutting_groups import CuttingGroup, cutting_groups
from fronts.rules.practice import inches
from fronts.selectors.schedules import schedule_of
from shopjobs.models import Job
from tests.factories import BoxFactory, CabinetFactory, OpeningFactory, overlaid
from tests.queue_work import work_off

HTMX = {"HX-Request": "true"}


def cut_kitchen(job: Job) -> Job:
    """A plywood door, a five-piece maple door, and a stack of three MDF drawer fronts."""
    overlaid(job)
    one = CabinetFactory.create(job=job)
    OpeningFactory.create(cabinet=one, front_material="birch plywood")
    two = CabinetFactory.create(job=job, label="B2", x=inches(18))
    OpeningFactory.create(cabinet=two, front_build="five-piece", front_material="hard maple")
    three = CabinetFactory.create(job=job, label="B3", x=inches(36))
    stack = OpeningFactory.create(
        cabinet=three, closed_by="drawers", hinged="", count=3, front_material="MDF"
    )
    for index in range(3):
        BoxFactory.create(opening=stack, index=index)
    return job


def address(job: Job) -> str:
    """The cut page of the job."""
    return f"/jobs/{job.pk}/cut/"


def groups(job: Job) -> dict[str, CuttingGroup]:
    """The job's materials by name; the frame's sticks as "frame"."""
    found = cutting_groups(schedule_of(job).parts)
    return {"frame" if each.sticks else each.material: each for each in found}


def make_plan(client: Client, job: Job, *, htmx: bool = False, **changes: str) -> Any:
    """Post the form as it is offered, but for the changes (by material, field and row)."""
    posted = {"kerf": "1/8", "trim": "1/4", "ends": "1/2", "safe": "3", "seconds": "5"}
    for name, group in groups(job).items():
        posted |= {f"{group.key}-0-length": "96", f"{group.key}-0-width": "48"}
        if group.sticks:
            posted[f"{group.key}-kind"] = "sticks"
        for said, typed in changes.items():
            material, _, field = said.partition("__")
            if field and material == name.partition(" ")[0]:
                posted[f"{group.key}-{field.replace('_', '-')}"] = typed
    posted |= {name: typed for name, typed in changes.items() if "__" not in name}
    return client.post(address(job), posted, headers=HTMX if htmx else {})


def finish(job: Job) -> CutPlan:
    """Work out what was begun, where it waits."""
    work_off()
    return CutPlan.objects.get(job=job, state=PlanState.DONE)
