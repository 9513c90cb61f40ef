"""Clients and sites to choose from, beside the fields in which one may be typed."""

from typing import Any

from django import template

from shopjobs.client_list import names_offered, sites_offered

register = template.Library()


@register.inclusion_tag("shopjobs/offered_clients.html", takes_context=True)
def offered_clients(context: dict[str, Any]) -> dict[str, Any]:
    """The names and addresses of the shop of whoever is signed in."""
    shop = context["request"].shop.pk
    return {"names": names_offered(shop), "addresses": sites_offered(shop)}
