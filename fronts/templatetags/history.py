"""Undo and Redo, as every page of a job has them, and what would come of another standard."""

from typing import Any

from django import template
from django.urls import reverse

from fronts.pages.shared.history_addresses import history_address, undo_address
from shopjobs.access import may
from shopjobs.models import Job, Person, Shop
from shopjobs.services.history_steps import steps_of

register = template.Library()


@register.inclusion_tag("fronts/history/bar.html", takes_context=True)
def undo_bar(context: dict[str, Any], owner: Job | Shop) -> dict[str, Any]:
    """What the person may take back and do again, and what somebody else did last."""
    request = context["request"]
    person: Person = request.user
    is_job = isinstance(owner, Job)
    return {
        "reads_all": is_job or may(person, "standard"),
        "steps": steps_of(owner, person),
        "undo": undo_address(owner),
        "history": history_address(owner),
        "bar": reverse("fronts:job-undo-bar", args=[owner.pk]) if is_job else "",
        "back": context.get("back") or request.get_full_path(),
        "csrf_token": context.get("csrf_token"),
        "what_if": _what_if(owner) if may(person, "edit_kitchen") else "",
        "step": context.get("step"),
    }


def _what_if(owner: Job | Shop) -> str:
    """Where another standard of a job is tried; a shop's has no page of this kind."""
    is_job = isinstance(owner, Job)
    return reverse("fronts:job-what-if", args=[owner.pk]) if is_job else ""
