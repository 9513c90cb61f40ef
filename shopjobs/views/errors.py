"""What a person reads when something can't be done. For htmx, only the words."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.template.loader import render_to_string

from shopjobs.pages import wants_part


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
    """500: the site failed. Nothing is asked of the database or the session here."""
    return HttpResponse(render_to_string("errors/500.html"), status=500)


def form_expired(request: HttpRequest, reason: str = "") -> HttpResponse:
    """403: the form is from before a sign-in or sign-out in another tab."""
    return _answer(request, "errors/form_expired.html", 403)


def _answer(request: HttpRequest, template: str, status: int) -> HttpResponse:
    part = "#fault" if wants_part(request) else ""
    return render(request, f"{template}{part}", status=status)
