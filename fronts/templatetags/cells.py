"""The field of a cell: a wall has hundreds, and a template takes ten times as long for each."""

from typing import Any

from django import template
from django.utils.html import format_html
from django.utils.safestring import SafeString

register = template.Library()


@register.simple_tag
def cell_input(cell: Any, form_id: str) -> SafeString:
    """The field of a wall's or a door's cell, sent with the form of that id."""
    pale = format_html(' placeholder="{}"', cell.pale) if cell.pale else ""
    fault = format_html(
        ' aria-invalid="true" aria-describedby="{}-fault"', cell.key
    ) if cell.fault else ""  # fmt: skip
    return format_html(
        '<input id="{key}" name="{key}" value="{value}" autocomplete="off"'
        ' aria-label="{says}" form="{form}" data-cell{pale}{fault}>',
        key=cell.key, value=cell.value, says=cell.says, form=form_id, pale=pale, fault=fault,
    )  # fmt: skip
