"""What a cutting plan does with offcuts: takes some, leaves some, and is sawn at last.

Whoever writes an offcut holds its shop first. Numbers stay given, so Undo passes all of this by;
each deed has its own way back.
"""

from collections.abc import Collection, Iterable
from datetime import datetime

from fronts.models import CutPlan, Offcut, OffcutGone
from fronts.rules.offcuts import offcut_label
from fronts.selectors.offcuts import FREE, lost_offcuts, offcuts_kept, offcuts_taken, pieces_left
from fronts.selectors.plans import named_plans
from fronts.services.offcuts import offcut_made
from fronts.services.saving import enter
from fronts.snapshot.stock import practice_in_force
from shopjobs.models import Person
from shopjobs.services.locks import shop_lock
from shopjobs.services.recording import Told, recorded, saved, tell
from shopjobs.services.refused import Refused


@recorded
def plan_offcuts_lay_by(*, plan: CutPlan, at: datetime) -> None:
    """Lay by for its job what a finished plan takes; let go of what the job's plans before took.

    What another job has by now is left to it: the plan says so.
    """
    job = plan.job
    shop_lock(job.shop_id)
    taken = offcuts_taken(plan)
    there = Offcut.objects.filter(shop=job.shop_id, gone_at=None)
    _put(there.filter(job=job, by_plan=True).exclude(number__in=taken), job=None, by_plan=False)
    never = there.filter(plan__job=job, is_there=False).exclude(plan=plan)
    _put(never, gone_at=at, gone_how=OffcutGone.UNMADE, gone_why="planned anew before it was sawn")
    free = there.filter(FREE, number__in=taken, is_there=True)
    laid_by = _put(free, job=job, by_plan=True)
    said = f"Laid {_listed(laid_by)} by for {job.number}" if laid_by else "Let go of offcuts"
    tell(Told(shop=job.shop, job=job, text=said, at=at, by=plan.made_by, stays=True))


@recorded
def plan_offcuts_keep(
    *, plan: CutPlan, places: Collection[str], by: Person, at: datetime
) -> list[Offcut]:
    """Give numbers to the pieces at these places; one that has a number keeps it."""
    plan = _held(plan)
    shop = plan.job.shop
    kept = offcuts_kept(plan)
    wanted = [
        piece
        for piece in pieces_left(plan, named_plans(plan), practice_in_force(plan.job), kept)
        if piece.place in places and piece.place not in kept
    ]
    beside = {
        "from_job": plan.job, "plan": plan, "is_there": plan.sawn_at is not None,
        "made_at": at, "made_by": by,
    }  # fmt: skip
    rows = [offcut_made(shop, one.facts, {**beside, "place": one.place}) for one in wanted]
    text = f"Kept {_listed(rows)} of the cutting plan"
    tell(Told(shop=shop, job=plan.job, text=text, at=at, by=by, stays=True))
    return rows


@recorded
def plan_mark_sawn(*, plan: CutPlan, by: Person, at: datetime) -> None:
    """All of the plan is sawn: its offcuts are used up, and what it leaves is on the rack."""
    plan = _held(plan)
    if plan.sawn_at is not None:
        return
    lost = lost_offcuts(plan)
    if lost:
        said = "; ".join(f"{offcut_label(number)} {why}" for number, why in lost.items())
        raise Refused(f"{said}. Make the plan again.")
    job = plan.job
    taken = Offcut.objects.filter(shop=job.shop_id, number__in=offcuts_taken(plan), gone_at=None)
    gone = {"gone_at": at, "gone_how": OffcutGone.SAWN, "gone_why": f"sawn for {job.number}"}
    _put(taken, **gone)
    _put(Offcut.objects.filter(plan=plan, gone_at=None), is_there=True)
    _marked(plan, by, at)
    tell(Told(shop=job.shop, job=job, text="Sawed the cutting plan", at=at, by=by, stays=True))


@recorded
def plan_unmark_sawn(*, plan: CutPlan, by: Person, at: datetime) -> None:
    """It is not sawn after all: its offcuts are there still, and what it leaves is not yet."""
    plan = _held(plan)
    if plan.sawn_at is None:
        return
    job, left = plan.job, Offcut.objects.filter(plan=plan)
    used = left.exclude(gone_how=OffcutGone.AWAY).exclude(job=None, gone_at=None)
    if used:
        raise Refused(f"{_listed(used)} of it: laid by or sawn up already. So it must be sawn.")
    sawn = Offcut.objects.filter(
        shop=job.shop_id, number__in=offcuts_taken(plan), job=job, gone_how=OffcutGone.SAWN
    )
    _put(sawn, gone_at=None, gone_how="", gone_why="")
    _put(left.filter(gone_at=None), is_there=False)
    _marked(plan, None, None)
    text = "The cutting plan is not sawn after all"
    tell(Told(shop=job.shop, job=job, text=text, at=at, by=by, stays=True))


def _held(plan: CutPlan) -> CutPlan:
    """The plan as it is now, which nobody else changes until the service is through."""
    shop_lock(plan.job.shop_id)
    found = CutPlan.objects.filter(pk=plan.pk).select_related("job__shop").first()
    if found is None:
        raise Refused("This plan is gone: another one was made. Look at that one.")
    return found


def _marked(plan: CutPlan, by: Person | None, at: datetime | None) -> None:
    plan.sawn_at, plan.sawn_by = at, by
    saved(plan, ["sawn_at", "sawn_by"])


def _put(rows: Iterable[Offcut], **values: object) -> list[Offcut]:
    """Enter the same in several rows."""
    changed = list(rows)
    for row in changed:
        enter(row, values)
        saved(row, values)
    return changed


def _listed(rows: Iterable[Offcut]) -> str:
    return ", ".join(row.label for row in rows)
