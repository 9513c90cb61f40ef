"""A job's snags on its other pages: a step of the job, a cabinet's own, signs in lists."""

from typing import Any

from django import template

from fronts.pages.snags.views.parts import cabinet_part, new_form
from fronts.rules.snags import OpenSnags
from fronts.selectors.snags import open_by_cabinet, open_in_job
from shopjobs.models import Job

register = template.Library()


@register.inclusion_tag("fronts/snags/here.html", takes_context=True)
def snags_here(context: dict[str, Any], job: Job, cabinet_id: int) -> dict[str, Any]:
    """The snags of a cabinet and its fronts, with the form of a new one."""
    form = new_form(job, cabinet_id)
    shared = {name: context.get(name) for name in ("may", "csrf_token", "request")}
    return shared | cabinet_part(job, cabinet_id, form)


@register.simple_tag
def open_snags(job: Job) -> OpenSnags:
    """How many of the job's snags are open, and late."""
    return open_in_job(job)


@register.simple_tag
def cabinet_snags(job: Job) -> dict[int, OpenSnags]:
    """How many snags are open at each cabinet, by its key; `mark_at` finds them."""
    return open_by_cabinet(job)
