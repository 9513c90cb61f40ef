"""The jobs that may be bought for, and how far the order of each is."""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.models import OrderApproval
from fronts.models.order_approvals import ORDER
from shopjobs.models import Job, Person
from shopjobs.selectors import jobs_of


@dataclass(frozen=True, slots=True)
class JobChoice:
    """A job, whether it is chosen, and whether its list of hardware is approved."""

    job: Job
    chosen: bool
    approved: bool

    @property
    def words(self) -> str:
        return "order approved" if self.approved else "order not approved yet"


def job_choices(person: Person, chosen: Sequence[Job]) -> list[JobChoice]:
    """The shop's jobs, the latest changed first."""
    jobs, keys = list(jobs_of(person)), {job.pk for job in chosen}
    rows = OrderApproval.objects.filter(job__shop=person.shop, kind=ORDER)
    approved = set(rows.values_list("job_id", flat=True))
    return [JobChoice(job, job.pk in keys, job.pk in approved) for job in jobs]
