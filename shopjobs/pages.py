"""One page, one URL, one template: the whole of it for a browser, a part for htmx."""

from collections.abc import Mapping, Sequence
from typing import Any

from django.conf import settings
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.template.loader import get_template
from django.template.response import TemplateResponse
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
    """Answer with the page, or for htmx its named part. The server alone chooses the part.

    It is drawn after the view, and so holds no lock of the database while it is.
    """
    name = f"{template}#{partial}" if partial and wants_part(request) else template
    response = TemplateResponse(request, name, dict(context), status=status)
    patch_vary_headers(response, ["HX-Request"])
    return response


class PartsResponse(TemplateResponse):
    """Parts of pages one after another, drawn after the view as a page is."""

    def __init__(
        self, request: HttpRequest, names: Sequence[str], context: Mapping[str, Any]
    ) -> None:
        super().__init__(request, list(names), dict(context))
        self._parts = tuple(names)

    @property
    def rendered_content(self) -> str:
        """All parts, from the same context."""
        context = self.resolve_context(self.context_data)
        drawn = (get_template(each).render(context, self._request) for each in self._parts)
        return "".join(drawn)


def go_to(request: HttpRequest, to: str, *args: Any) -> HttpResponse:
    """Send the whole page elsewhere, whether a browser or htmx asked. `to` is a URL name."""
    response = redirect(to, *args)
    if wants_part(request):
        return HttpResponseClientRedirect(response.url)
    return response


def site_address(request: HttpRequest) -> str:
    """Where people open the site, for what is printed: as it was set up, else as it was asked."""
    return settings.SITE_ADDRESS or request.build_absolute_uri("/")
