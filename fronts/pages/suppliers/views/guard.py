"""Who sees suppliers and prices, and how their pages are asked for."""

from collections.abc import Callable
from typing import Any

from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.views.decorators.http import require_http_methods

from shopjobs.access import AnyView, in_turn, needs

Asked = Callable[..., HttpResponse]


def prices_view(*methods: str) -> Callable[[Asked], AnyView[Any]]:
    """Let those in who may see prices; while one changes something, others that would wait."""
    answered = [*(methods or ("GET", "HEAD", "POST"))]

    def guard(view: Asked) -> AnyView[Any]:
        return needs("prices")(require_http_methods(answered)(in_turn(view)))

    return guard


def back(anchor: str = "main") -> HttpResponse:
    """The page of all suppliers and offers."""
    return redirect(f"{reverse('fronts:shop-suppliers')}#{anchor}")
