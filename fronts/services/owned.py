"""Rows of a shop's ways, of which a job may have its own."""

from typing import Any, TypeVar

from django.db.models import Model

from fronts.rules.fact_kinds import Lengths
from fronts.rules.facts import facts_of
from shopjobs.models import Job, Shop

Row = TypeVar("Row", bound=Model)


def shop_and_job(owner: Shop | Job) -> tuple[Shop, Job | None]:
    """Whose rows they are: a shop's have no job."""
    return (owner, None) if isinstance(owner, Shop) else (owner.shop, owner)


def own_row(table: type[Row], owner: Shop | Job) -> Row:
    """The owner's own row; made, but not kept, where there is none."""
    shop, job = shop_and_job(owner)
    return table._default_manager.filter(shop=shop, job=job).first() or table(shop=shop, job=job)


def list_faults(facts: Any) -> dict[str, str]:
    """Lists of lengths in a thing that are longer than they may be."""
    return {
        fact.name: f"enter at most {fact.declared.most} lengths"
        for fact in facts_of(type(facts))
        if isinstance(fact.declared, Lengths)
        and len(getattr(facts, fact.name)) > fact.declared.most
    }
