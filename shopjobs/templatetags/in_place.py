"""Links and forms that answer in the place of an element, each from one address.

A browser without scripts follows `href` or `action`; htmx asks at the same address and puts the
answer where the element with the id `into` stands.
"""

import re
import secrets

from django import template
from django.urls import reverse
from django.utils.html import format_html
from django.utils.safestring import SafeString

from shopjobs.sent_once import KEY

register = template.Library()
_KEY_BYTES = 16
_PLAIN_ID = re.compile(r"[A-Za-z][\w-]*")


@register.simple_tag
def opens(
    to: str, *args: object, into: str = "", query: str = "", anchor: str = "", when: object = True
) -> SafeString:
    """The address of a link; htmx asks without its anchor. `when` is whether htmx does.

    `to` is an address or, without a slash, the name of one that takes `args`.
    """
    address = _address(to, args) + query
    href = format_html('href="{}"', f"{address}#{anchor}" if anchor else address)
    return href + _answered("get", address, into) if when else href


@register.simple_tag
def sends(
    to: str, *args: object, into: str = "", anchor: str = "", when: object = True
) -> SafeString:
    """Where a form is posted; without `into` the answer says what it replaces."""
    address = _address(to, args)
    action = format_html('method="post" action="{}"', f"{address}#{anchor}" if anchor else address)
    return action + _answered("post", address, into) if when else action


@register.simple_tag
def form_key() -> SafeString:
    """A form's own key, by which it is known when it is sent twice."""
    return format_html(
        '<input type="hidden" name="{}" value="{}">', KEY, secrets.token_urlsafe(_KEY_BYTES)
    )


def _address(to: str, args: tuple[object, ...]) -> str:
    return to if "/" in to else reverse(to, args=args)


def _answered(how: str, address: str, into: str) -> SafeString:
    asked = format_html(' hx-{}="{}"', how, address)
    if not into:
        return asked
    quoted = into.replace("\\", r"\\").replace("'", r"\'")
    target = f"#{into}" if _PLAIN_ID.fullmatch(into) else f"[id='{quoted}']"
    return asked + format_html(' hx-target="{}" hx-swap="outerHTML"', target)
