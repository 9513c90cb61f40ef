"""Links to a job's sheets, in the words and at the addresses of the registry."""

from django import template
from django.urls import reverse
from django.utils.html import format_html
from django.utils.safestring import SafeString

from fronts.sheets.registry import SHEETS

register = template.Library()


@register.simple_tag
def sheet_link(key: str, job_id: int) -> SafeString:
    """`Hardware sheet, PDF`; a key that names no sheet fails when the page is drawn."""
    address = reverse("fronts:job-sheet", args=[job_id, key])
    return format_html('<a href="{}">{}, PDF</a>', address, SHEETS[key].words)
