"""What a person reads when something can't be done. For htmx, only the words."""

import sys
from collections.abc import Mapping
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.template.loader import render_to_string

from shopjobs.database_faults import Unsaved, why_unsaved
from shopjobs.pages import wants_part

_UNSAVED: Mapping[Unsaved, tuple[str, int]] = {
    "busy": ("errors/busy.html", 503),
    "full": ("errors/full.html", 507),
    "read_only": ("errors/read_only.html", 503),
    "away": ("errors/away.html", 503),
}


def bad_request(request: HttpRequest, exception: Exception) -> HttpResponse:
    """400: the request could not be read."""
    return _answer(request, "errors/400.html", 400)


def not_allowed(request: HttpRequest, exception: Exception) -> HttpResponse:
    """403: the person's role doesn't do this."""
    return _answer(request, "errors/403.html", 403)


def not_found(request: HttpRequest, exception: Exception) -> HttpResponse:
    """404: there is no such page, or it is another shop's."""
    return _answer(request, "errors/404.html", 404)


def failed(request: HttpRequest) -> HttpResponse:
    """500: the site failed. Nothing is asked of the database or the session here.

    Storage that takes nothing more may show as late as that, when a session is kept.
    """
    why = why_unsaved(sys.exception())
    if why is not None:
        return unsaved(request, why)
    part = "#fault" if wants_part(request) else ""
    return HttpResponse(render_to_string(f"errors/500.html{part}"), status=500)


def unsaved(request: HttpRequest, why: Unsaved) -> HttpResponse:
    """503, or 507 where there is no room: what was typed can be sent again as it is."""
    template, status = _UNSAVED[why]
    response = _answer(request, template, status, {"again": _sent(request)})
    if why == "busy":
        response.headers["Retry-After"] = "2"
    return response


def _sent(request: HttpRequest) -> list[tuple[str, str]]:
    """What a form sent, unless a part of it must not or can't be sent from a page again."""
    if (
        request.method != "POST"
        or request.FILES
        or any("password" in each for each in request.POST)
    ):
        return []
    sent = [(name, value) for name, values in request.POST.lists() for value in values]
    return [(name, value) for name, value in sent if name != "csrfmiddlewaretoken"]


def form_expired(request: HttpRequest, reason: str = "") -> HttpResponse:
    """403: the form is from before a sign-in or sign-out in another tab."""
    return _answer(request, "errors/form_expired.html", 403)


def _answer(
    request: HttpRequest, template: str, status: int, context: dict[str, Any] | None = None
) -> HttpResponse:
    part = "#fault" if wants_part(request) else ""
    return render(request, f"{template}{part}", context, status=status)
