"""Sizes that no line breaks in two; for what is read, never for what is typed, sent or kept."""

import re

from django import template
from django.template.defaultfilters import stringfilter

NO_BREAK = "\N{NO-BREAK SPACE}"
_PARTS = re.compile(
    r"(?<=\d) (?=\d+/\d)"  # a whole number and its fraction
    r"|(?<=\d) (?=(?:in|mm|ft|m|lb|kg)\b|[°%])"  # a number and its unit
)

register = template.Library()


@register.filter(is_safe=True)
@stringfilter
def unbroken(text: str) -> str:
    """`1 1/8 in` with no place to break a line in it."""
    return _PARTS.sub(NO_BREAK, text)
