"""One page, one URL, one template: the whole of it for a browser, a part for htmx."""

from collections.abc import Mapping
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.cache import patch_vary_headers
from django_htmx.http import HttpResponseClientRedirect
from django_htmx.middleware import HtmxDetails


def wants_part(request: HttpRequest) -> bool:
    """Return whether htmx asks for a part of the page; history and boosts want the whole."""
    htmx: HtmxDetails | None = getattr(request, "htmx", None)
    if not htmx:
        return False
    return not htmx.boosted and not htmx.history_restore_request


def render_page(
    request: HttpRequest,
    template: str,
    context: Mapping[str, Any],
    *,
    partial: str | None = None,
    status: int = 200,
) -> HttpResponse:
    """Render the page, or for htmx its named part. The server alone chooses the part."""
    name = f"{template}#{partial}" if partial and wants_part(request) else template
    response = render(request, name, dict(context), status=status)
    patch_vary_headers(response, ["HX-Request"])
    return response


def go_to(request: HttpRequest, to: str, *args: Any) -> HttpResponse:
    """Send the whole page elsewhere, whether a browser or htmx asked. `to` is a URL name."""
    response = redirect(to, *args)
    if wants_part(request):
        return HttpResponseClientRedirect(response.url)
    return response
