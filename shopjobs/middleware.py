"""What every answer carries, and how strangers are sent to the sign-in page."""

import logging
import re
from collections.abc import Callable
from http import HTTPStatus

from django.conf import settings
from django.contrib.auth.middleware import LoginRequiredMiddleware
from django.contrib.auth.views import redirect_to_login
from django.http import HttpRequest, HttpResponse
from django.http.response import HttpResponseBase
from django.middleware.gzip import GZipMiddleware
from django.shortcuts import render
from django.urls import reverse
from django.utils.module_loading import import_string
from django_htmx.http import HttpResponseClientRedirect
from django_htmx.middleware import HtmxDetails

from shopjobs.database_faults import why_unsaved

LOG = logging.getLogger(__name__)

CONTENT_POLICY = "; ".join(
    (
        "default-src 'self'",
        "img-src 'self' data:",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'self'",
        "frame-ancestors 'none'",
    )
)
"""Scripts and styles come from our own files only; nothing inline, nothing from elsewhere."""

TEXT_TYPES = ("text/", "application/json", "image/svg+xml")
_PLACE = re.compile(r"[A-Za-z][A-Za-z0-9_.-]{0,200}")
"""The id of an element."""


class ContentPolicy:
    """Send the content security policy with every answer."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        response = self.get_response(request)
        response.headers.setdefault("Content-Security-Policy", CONTENT_POLICY)
        return response


class Compression(GZipMiddleware):
    """Send text compressed; sheets and pictures are so already.

    How well a page packs could betray a secret beside words that a stranger chose (BREACH,
    2013). The one secret in pages is a form's token, masked anew each time, and Django adds
    some bytes of chance to the length of every answer.
    """

    def process_response(
        self, request: HttpRequest, response: HttpResponseBase
    ) -> HttpResponseBase:
        """Compress what is text, but no part of a file: whoever asked for that wants its bytes."""
        is_text = response.get("Content-Type", "").startswith(TEXT_TYPES)
        if not is_text or response.status_code == HTTPStatus.PARTIAL_CONTENT:
            return response
        return super().process_response(request, response)


class Unsaved:
    """Say why nothing could be saved, where it is no failure of the site's own."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        return self.get_response(request)

    def process_exception(self, request: HttpRequest, exception: Exception) -> HttpResponse | None:
        """Answer for a lock that could not be had, and for storage that takes nothing more.

        Of storage whoever runs the site must know; of a lock, nobody. Anything else stays a
        failure.
        """
        why = why_unsaved(exception)
        if why is None:
            return None
        if why != "busy":
            LOG.error("Nothing can be saved: %s", exception, exc_info=exception)
        answer: HttpResponse = import_string(settings.UNSAVED_VIEW)(request, why)
        return answer


class SignInRequired(LoginRequiredMiddleware):
    """Every page needs a sign-in unless it says otherwise.

    A part of a page that is asked for after the session ended sends the whole
    page to sign in, and back to where that part stands, instead of drawing the form into it.
    The sign-in page says why; and, where the page said so, that what was typed is kept. A page
    that must stay, since nobody asked or since it holds what would be lost, gets a link to it.
    """

    def process_view(
        self,
        request: HttpRequest,
        view_func: Callable[..., HttpResponseBase],
        view_args: tuple[object, ...],
        view_kwargs: dict[str, object],
    ) -> HttpResponseBase | None:
        """Leave alone who asks for what is everybody's: no session is read for that."""
        if not getattr(view_func, "login_required", True):
            return None
        return super().process_view(request, view_func, view_args, view_kwargs)

    def handle_no_permission(  # type: ignore[override]
        self, request: HttpRequest, view_func: Callable[..., HttpResponseBase]
    ) -> HttpResponseBase:
        """Redirect to the sign-in page, or lead there."""
        htmx: HtmxDetails = getattr(request, "htmx")  # noqa: B009
        if not htmx:
            return redirect_to_login(request.get_full_path(), reverse("shopjobs:sign-in"))
        place = f"#{htmx.target}" if _PLACE.fullmatch(htmx.target or "") else ""
        ended = "kept" if request.headers.get("X-Kept") else "yes"
        to = redirect_to_login(
            _page_of(htmx).partition("#")[0] + place,
            f"{reverse('shopjobs:sign-in')}?ended={ended}",
        ).headers["Location"]
        if request.headers.get("X-Stay"):
            return render(request, "errors/session_ended.html", {"sign_in": to}, status=401)
        response = HttpResponseClientRedirect(to)
        response.status_code = 401  # Nothing was done: whatever was typed is not saved.
        return response


def _page_of(htmx: HtmxDetails) -> str:
    """The page that htmx asks from; what it claims need not be an address."""
    try:
        return htmx.current_url_abs_path or "/"
    except ValueError:
        return "/"
