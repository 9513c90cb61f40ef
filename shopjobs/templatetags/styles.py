"""Where a page's styles are."""

from django import template

from shopjobs import page_styles

register = template.Library()


OF_ALL_PAGES = ("tokens", "page", "forms", "tables")


@register.filter
def joined(names: str) -> str:
    """Return the one address of all pages' style files and of those whose names stand here.

    It is put together without the table of addresses: the page of a failure has styles too.
    """
    wanted = (*OF_ALL_PAGES, *names.split())
    return f"/styles/{'-'.join(wanted)}.{page_styles.joined(wanted).mark}.css"
