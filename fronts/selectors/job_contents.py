"""How much there is of a job, in words: what goes when it is deleted."""

from django.db.models import Model, QuerySet

from fronts.models import (
    Box,
    Cabinet,
    CutPlan,
    DoorOnHand,
    FitRecord,
    FrontReceipt,
    Opening,
    OrderCheck,
    OrderSending,
    Snag,
)
from shopjobs.models import Job


def job_contents(job: Job) -> list[str]:
    """`12 cabinets`, `1 record of how a front fitted`; nothing of what there is none."""
    rows: dict[tuple[str, str], QuerySet[Model]] = {
        ("cabinet", "cabinets"): Cabinet.objects.filter(job=job),
        ("opening", "openings"): Opening.objects.filter(cabinet__job=job),
        ("box", "boxes"): Box.objects.filter(front__opening__cabinet__job=job),
        ("door on hand", "doors on hand"): DoorOnHand.objects.filter(job=job),
        ("record of how a front fitted", "records of how fronts fitted"): FitRecord.objects.filter(
            job=job
        ),
        ("checked line of the order", "checked lines of the order"): OrderCheck.objects.filter(
            job=job
        ),
        ("order sent to a supplier", "orders sent to suppliers"): OrderSending.objects.filter(
            job=job
        ),
        ("bought front checked off", "bought fronts checked off"): FrontReceipt.objects.filter(
            job=job
        ),
        ("snag", "snags"): Snag.objects.filter(job=job),
        ("cutting plan", "cutting plans"): CutPlan.objects.filter(job=job),
    }
    counted = ((several.count(), names) for names, several in rows.items())
    return [f"{count} {names[count > 1]}" for count, names in counted if count]
