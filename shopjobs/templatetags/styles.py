"""Where a page's styles are."""

from django import template

from shopjobs import page_styles

register = template.Library()


@register.filter
def joined(names: str) -> str:
    """Return the one address of the style files whose names stand here, in that order.

    It is put together without the table of addresses: the page of a failure has styles too.
    """
    wanted = tuple(names.split())
    return f"/styles/{'-'.join(wanted)}.{page_styles.joined(wanted).mark}.css"
