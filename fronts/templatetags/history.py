"""Undo and Redo, as every page of a job has them."""

from typing import Any

from django import template
from django.urls import reverse

from shopjobs.models import Job, Person, Shop
from shopjobs.services.history_steps import steps_of

register = template.Library()


@register.inclusion_tag("fronts/history/bar.html", takes_context=True)
def undo_bar(context: dict[str, Any], owner: Job | Shop) -> dict[str, Any]:
    """What the person may take back and do again, and what somebody else did last."""
    request = context["request"]
    person: Person = request.user
    args, of = ([owner.pk], "job") if isinstance(owner, Job) else ([], "shop")
    return {
        "steps": steps_of(owner, person),
        "undo": reverse(f"fronts:{of}-undo", args=args),
        "history": reverse(f"fronts:{of}-history", args=args),
        "bar": reverse("fronts:job-undo-bar", args=args) if of == "job" else "",
        "back": context.get("back") or request.get_full_path(),
        "csrf_token": context.get("csrf_token"),
        "is_here": context.get("step") == "history",
    }
