"""What is marked at a row, by its label."""

from collections.abc import Mapping
from typing import Any

from django import template

register = template.Library()


@register.filter
def mark_at(marks: Any, label: str) -> Any:
    """The mark of a place; None where there is none, or nothing is worked out yet."""
    return marks.get(label) if isinstance(marks, Mapping) else None
