"""The tables of a job as one frozen `Kitchen`, in a fixed number of queries."""

from fractions import Fraction
from typing import Any, cast

from fronts import models
from fronts.rules.facts import rows_of
from fronts.rules.job_facts import JobFacts
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Kitchen
from fronts.rules.standards import merge
from fronts.snapshot.hardware import boxes_made_of_in_force, hardware_in_force
from fronts.snapshot.standards import standard_of
from fronts.snapshot.stock import practice_in_force, stock_in_force
from fronts.snapshot.things import things_of
from shopjobs.models import Job, Shop

__all__ = ["job_facts", "kitchen_of", "ways_of"]


def kitchen_of(job: Job) -> Kitchen:
    """Everything that the job's schedule depends on, as it stands in the database now."""
    shop_level = models.ShopStandard.objects.filter(shop_id=job.shop_id).first()
    job_level = models.JobStandard.objects.filter(job=job).first()
    things: dict[str, Any] = {fact.name: things_of(fact.kind, job) for fact, _ in rows_of(Kitchen)}
    return Kitchen(
        job=job_facts(job),
        standard=merge(standard_of(job_level), standard_of(shop_level)),
        stock=stock_in_force(job),
        hardware=hardware_in_force(job),
        boxes_made_of=boxes_made_of_in_force(job),
        practice=practice_in_force(job, shop_level, job_level),
        **things,
    )


def ways_of(owner: Shop | Job) -> Kitchen:
    """A kitchen with nothing in it, in which the ways of a shop or job hold."""
    if isinstance(owner, Job):
        shop, facts = owner.shop, job_facts(owner)
        levels = [models.JobStandard.objects.filter(job=owner).first()]
    else:
        shop, facts = owner, JobFacts(number="", unit=cast(Unit, str(owner.unit)))
        levels = []
    shop_level = models.ShopStandard.objects.filter(shop=shop).first()
    return Kitchen(
        job=facts,
        stock=stock_in_force(owner),
        practice=practice_in_force(owner, shop_level, *levels),
    )


def job_facts(job: Job) -> JobFacts:
    """Whose kitchen it is, and how the shop works on it."""
    return JobFacts(
        number=job.number,
        client=job.client_name,
        site=job.site_address,
        unit=cast(Unit, str(job.unit)),
        step=Fraction(job.step),
        fit_on=job.fit_on,
    )
