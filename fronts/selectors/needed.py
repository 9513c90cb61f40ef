"""What jobs need that is bought, by its buying name and with what causes it.

It is remembered per job until a change of the kitchen, or of the shop's ways, is counted
(`Job.revision`), or another cutting plan is finished: so many jobs together are asked for at
once that their kitchens can't be read again for every page. What prices and suppliers say, what
was decided, sent for and is in stock is never part of it.
"""

from collections import OrderedDict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from fractions import Fraction
from threading import Lock
from typing import TypeAlias

from django.db.models import Sum

from fronts.cutting.model import Plan
from fronts.cutting.plan_json import stored_plan, stored_request
from fronts.cutting.stock_used import stock_bought
from fronts.models import CutPlan, PlanState, SentLine
from fronts.rules.buying import NOTHING, Cause, Wanted
from fronts.rules.buying_names import name_of_bought, name_of_need, stock_name
from fronts.rules.cutting_groups import CuttingGroup, cutting_groups
from fronts.rules.fingerprint import parts_fingerprint
from fronts.rules.kinds import Unit
from fronts.rules.lengths import Mm
from fronts.rules.offcuts import offcut_label
from fronts.rules.results import Schedule
from fronts.rules.shelf import with_stock
from fronts.rules.usual_stock import USUAL_SHEET, USUAL_STICK
from fronts.selectors.approved_items import ItemOrdered, approved_items
from fronts.selectors.offcuts import lost_offcuts
from fronts.selectors.schedules import schedule_of
from fronts.selectors.shelf import from_stock
from shopjobs.models import Job

MOST_JOBS = 64
"""So many jobs are remembered, and at most so many are bought for together."""
_State: TypeAlias = tuple[int, datetime, datetime, int | None]
_known: OrderedDict[int, tuple[_State, tuple[Wanted, ...]]] = OrderedDict()
_lock = Lock()


def wanted_by(jobs: Sequence[Job]) -> list[Wanted]:
    """What the jobs need, job by job, covered by what was sent for or laid by from stock.

    Where the office decided to order otherwise for exactly this need, that many.
    """
    keys = [job.pk for job in jobs]
    plans, sent = _finished_plans(jobs), _sent(jobs)
    approved, stocked = approved_items(keys), from_stock(keys)
    found: list[Wanted] = []
    for job in jobs:
        needed, items = _remembered(job, plans.get(job.pk)), approved[job.pk]
        lines = (*_as_decided(needed, items), *_beyond_need(job, needed, items))
        covered = [
            replace(each, covered=sent.get((job.pk, each.item, each.unit), NOTHING))
            for each in lines
        ]
        found += with_stock(covered, stocked.get(job.pk, {}))
    return found


def _as_decided(needed: Iterable[Wanted], items: Mapping[str, ItemOrdered]) -> Iterator[Wanted]:
    """What is needed; where exactly that need was decided on, so many as are ordered."""
    for each in needed:
        held = items.get(each.item)
        if held and held.facts.amount == each.whole and held.facts.unit == each.unit:
            yield replace(each, ordered=Fraction(held.ordered))
        else:
            yield each


def _beyond_need(
    job: Job, needed: Iterable[Wanted], items: Mapping[str, ItemOrdered]
) -> Iterator[Wanted]:
    """What stays ordered though none of it is needed any more."""
    met = {each.item for each in needed}
    for item, held in items.items():
        if item not in met and not held.facts.amount and held.ordered:
            yield Wanted(
                held.bought_as or item, job.number, NOTHING, ordered=Fraction(held.ordered),
                unit=held.facts.unit, item=item,
            )  # fmt: skip


def _finished_plans(jobs: Sequence[Job]) -> dict[int, int]:
    """The key of the plan that was finished last, by the job's."""
    rows = CutPlan.objects.filter(job__in=jobs, state=PlanState.DONE)
    return dict(rows.order_by("started_at", "pk").values_list("job_id", "pk"))


def _sent(jobs: Sequence[Job]) -> dict[tuple[int, str, str], Fraction]:
    """How much of each line of their orders went to suppliers."""
    rows = SentLine.objects.filter(sending__job__in=jobs).order_by()
    sums = rows.values_list("sending__job_id", "item", "unit").annotate(Sum("amount"))
    return {(job, item, unit): Fraction(amount) for job, item, unit, amount in sums}


def _remembered(job: Job, plan: int | None) -> tuple[Wanted, ...]:
    state = job.revision, job.updated_at, job.created_at, plan
    with _lock:
        held = _known.get(job.pk)
        if held is not None and held[0] == state:
            _known.move_to_end(job.pk)
            return held[1]
    found = tuple(needs_of(schedule_of(job), CutPlan.objects.filter(pk=plan or 0).first()))
    with _lock:
        _known[job.pk] = state, found
        _known.move_to_end(job.pk)
        while len(_known) > MOST_JOBS:
            _known.popitem(last=False)
    return found


def needs_of(schedule: Schedule, plan: CutPlan | None) -> Iterator[Wanted]:
    """What one kitchen needs: hardware, bought fronts, and sheets and sticks by its plan."""
    job, cabinets = schedule.job.number, {each.label: each.cabinet for each in schedule.fronts}

    def causes(amounts: Iterable[tuple[str, int | Fraction]]) -> tuple[Cause, ...]:
        return tuple(
            Cause(front, cabinets.get(front, ""), Fraction(much)) for front, much in amounts
        )

    for need in schedule.hardware:
        yield Wanted(
            name_of_need(need), job, Fraction(need.need), Fraction(need.spares),
            unit=need.unit, item=need.item, causes=causes(need.per_front.items()),
        )  # fmt: skip
    for line in schedule.bought:
        fronts = causes((label, 1) for label in line.labels)
        yield Wanted(name_of_bought(line.front), job, Fraction(line.count), causes=fronts)
    plans = _plans_that_hold(schedule, plan)
    for group in cutting_groups(schedule.parts):
        found = plans.get(group.key)
        if found is None or found.unplaced:
            length, width = _usual_size(group, schedule.job.unit)
            yield Wanted(_stock_name(group, length, width), job, None)
        for used in stock_bought(found) if found else ():
            shares = _by_front(group, used.shares)
            name = _stock_name(group, used.length, used.width)
            yield Wanted(name, job, Fraction(used.count), causes=causes(shares.items()))


def _plans_that_hold(schedule: Schedule, plan: CutPlan | None) -> dict[str, Plan]:
    """The plans by their materials' keys; none where the parts are others by now.

    Nor of a material whose plan counts on an offcut that it can't have any more.
    """
    if plan is None or plan.fingerprint != parts_fingerprint(schedule.parts):
        return {}
    lost = {offcut_label(number) for number in lost_offcuts(plan)}
    plans = {
        asked["key"]: stored_plan(found, stored_request(asked))
        for asked, found in zip(plan.asked, plan.found, strict=False)
    }
    return {
        key: found
        for key, found in plans.items()
        if lost.isdisjoint(each.stock.label for each in found.layouts if each.stock.own)
    }


def _by_front(group: CuttingGroup, shares: dict[str, Fraction]) -> dict[str, Fraction]:
    """Shares of parts as those of the fronts that they are of."""
    fronts = {part.label: part.front for part in group.parts}
    summed: dict[str, Fraction] = {}
    for label, share in shares.items():
        front = fronts.get(label, "")
        summed[front] = summed.get(front, Fraction(0)) + share
    return summed


def _stock_name(group: CuttingGroup, length: Mm, width: Mm | None) -> str:
    """A stick has no width of its own: it is bought as wide as it is ripped."""
    across = group.width if width is None else width
    return stock_name(group.material, group.thickness, length, across, is_stick=width is None)


def _usual_size(group: CuttingGroup, unit: Unit) -> tuple[Mm, Mm | None]:
    """From what a group is cut where no plan said so."""
    return (USUAL_STICK[unit], None) if group.sticks else USUAL_SHEET[unit]
