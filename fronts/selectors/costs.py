"""What all that is bought for a job costs at the preferred suppliers' prices, and may cost."""

from fronts.models import JobBudget
from fronts.rules.job_cost import JobCost, job_cost
from fronts.rules.money import Price
from fronts.selectors.needed import wanted_by
from fronts.selectors.offers import offers_by_name
from shopjobs.models import Job


def cost_of(job: Job) -> JobCost:
    """What the job costs, whatever of it was sent for already."""
    offers = {name: rows[0].facts for name, rows in offers_by_name(job.shop).items()}
    return job_cost(wanted_by([job]), offers)


def budget_of(job: Job) -> Price | None:
    """What the owner said that it may cost."""
    row = JobBudget.objects.filter(job=job).first()
    return None if row is None else row.price
