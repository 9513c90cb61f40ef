"""Links to a job's sheets by the registry; where a sheet's code is typed; codes that no line of a
sheet breaks in two."""

from collections.abc import Sequence

from django import template
from django.template.defaultfilters import stringfilter
from django.urls import reverse
from django.utils.html import format_html, format_html_join
from django.utils.safestring import SafeString

from fronts.pages.sheets.forms import CodeForm
from fronts.sheets.registry import SHEETS
from fronts.sheets.step_columns import StepColumns, step_columns

register = template.Library()


@register.simple_tag
def sheet_link(key: str, job_id: int) -> SafeString:
    """`Hardware sheet, PDF`; a key that names no sheet fails when the page is drawn."""
    address = reverse("fronts:job-sheet", args=[job_id, key])
    return format_html('<a href="{}">{}, PDF</a>', address, SHEETS[key].words)


@register.inclusion_tag("fronts/sheets/code_form.html")
def code_on_sheet() -> dict[str, object]:
    """The field in which somebody asks whether the sheet in hand is still true."""
    return {"form": CodeForm()}


@register.filter
def in_columns(steps: Sequence[str]) -> StepColumns:
    """An order of work in two columns."""
    return step_columns(steps)


@register.filter
@stringfilter
def codes_unbroken(text: str) -> SafeString:
    """`hinge plate for H-1`, its code on one line: a hyphen is where lines break."""
    return format_html_join(
        " ",
        "{}",
        (
            (format_html('<span class="one">{}</span>', word) if "-" in word else word,)
            for word in text.split(" ")
        ),
    )
