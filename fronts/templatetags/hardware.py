"""Addresses of the pages of a list, whosever it is."""

from typing import Protocol

from django import template

register = template.Library()


class Addressed(Protocol):
    """Whose list it is."""

    def to(self, name: str, *args: object) -> str: ...


@register.simple_tag
def at(place: Addressed, name: str, *args: object) -> str:
    """The address of a page of this list: `{% at place 'item-new' 'hinges' %}`."""
    return place.to(name, *args)
