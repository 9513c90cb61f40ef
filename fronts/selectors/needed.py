"""What the shop's jobs need that is bought, over all of them, by its buying name."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import cast

from fronts.cutting.plan_json import stored_request
from fronts.rules.buying_names import name_of_bought, name_of_need, stock_name
from fronts.rules.cutting_groups import CuttingGroup, cutting_groups
from fronts.rules.kinds import Unit
from fronts.rules.lengths import Mm
from fronts.rules.usual_stock import USUAL_SHEET, USUAL_STICK
from fronts.selectors.plans import finished_plan
from fronts.selectors.schedules import MOST_JOBS, schedule_of
from shopjobs.models import Job, Shop

LATEST_JOBS = MOST_JOBS
"""What a job needs is worked out of its kitchen: for so many jobs as are remembered."""


@dataclass(frozen=True, slots=True)
class NeededBy:
    """So much of one thing in a job, spares included; None where only a cutting plan says it."""

    name: str
    job: Job
    amount: int | None
    unit: str = ""


def needed(shop: Shop) -> Iterator[NeededBy]:
    """All that the jobs changed last need, job by job."""
    jobs = Job.objects.filter(shop=shop).order_by("-updated_at", "-pk")
    for job in jobs.select_related("shop")[:LATEST_JOBS]:
        yield from needed_by(job)


def needed_by(job: Job) -> Iterator[NeededBy]:
    """What one job needs: hardware, bought fronts, sheets and sticks."""
    schedule = schedule_of(job)
    for need in schedule.hardware:
        yield NeededBy(name_of_need(need), job, need.need + need.spares, need.unit)
    for line in schedule.bought:
        yield NeededBy(name_of_bought(line.front), job, line.count)
    plan = finished_plan(job)
    asked = plan.asked if plan else []
    stock = {each["key"]: stored_request(each).stock for each in asked}
    unit = cast(Unit, str(job.unit))
    for group in cutting_groups(schedule.parts):
        sizes = [(each.length, each.width) for each in stock.get(group.key, ())]
        for length, width in sizes or [_usual_size(group, unit)]:
            name = stock_name(
                group.material, group.thickness, length, group.width if width is None else width,
                unit, is_stick=width is None,
            )  # fmt: skip
            yield NeededBy(name, job, None)


def _usual_size(group: CuttingGroup, unit: Unit) -> tuple[Mm, Mm | None]:
    """From what a group is cut where no plan said so; a stick has no width of its own."""
    return (USUAL_STICK[unit], None) if group.sticks else USUAL_SHEET[unit]
