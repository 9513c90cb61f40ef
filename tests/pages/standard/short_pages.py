"""Typing into the short pages of a shop's standard: each field on its own page."""

from typing import Any

from django.test import Client

from fronts.pages.standard.forms.short_pages import SHORT_PAGES
from tests.dom import Answer, dom

FORM = "#shop-standard"


def address_of(name: str) -> str:
    """The address of the page on which a field stands."""
    (path,) = (page.path for page in SHORT_PAGES.values() if name in page.names)
    return f"/shop/standard/{path}/"


def page_with(desk: Client, name: str) -> Answer:
    """The page on which a field stands."""
    return dom(desk.get(address_of(name)))


def own_seen(desk: Client, name: str) -> str:
    """What the form of that page was made from."""
    return page_with(desk, name).one(FORM).field("seen").value


def post_own(desk: Client, typed: dict[str, str], name: str = "") -> Any:
    """Open the page of a field, else of the first that is typed; leave the others empty."""
    address = address_of(name or next(iter(typed)))
    form = dom(desk.get(address)).one(FORM)
    return desk.post(address, {"seen": form.field("seen").value, **typed})
