"""Setting what a job may cost. History says that it was set, and not how much: all may read it."""

from datetime import datetime
from decimal import Decimal

from fronts.models import JobBudget
from fronts.rules.money import Price
from fronts.services.saving import checked, enter, job_told
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded, saved

KEPT = Decimal("0.001")
"""As the database gives it back, so that history finds it unchanged."""


@recorded
def job_budget_set(*, job: Job, price: Price | None, by: Person | None, at: datetime) -> None:
    """Say what all that is bought for a job may cost together; None: nobody says."""
    row = JobBudget.objects.filter(job=job).first()
    if price is None:
        deleted([row] if row else [])
        job_told(job=job, text="Took away what the job may cost", by=by, at=at)
        return
    row = row or JobBudget(job=job)
    enter(row, {"amount": price.amount.quantize(KEPT), "currency": price.currency})
    checked(row)
    saved(row)
    job_told(job=job, text="Set what the job may cost", by=by, at=at)
