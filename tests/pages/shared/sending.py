"""A form as a browser sends it: every field that it shows, but for what somebody typed over."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from threading import Barrier
from typing import Any

from django.db import connections
from django.test import Client

from tests.dom import Part

Sending = tuple[Client, Callable[[Client], Any]]
"""A browser in which somebody is signed in, and what is sent from it."""


def as_sent(form: Part, **typed: Any) -> dict[str, Any]:
    """The form's names and values, its hidden fields and its key included."""
    shown = {
        field.attribute("name"): field.value
        for field in form.all("input, select, textarea")
        if field.attribute("type") not in ("file", "checkbox") or field.carries("checked")
    }
    return {name: value for name, value in shown.items() if name} | typed


def at_once(times: int, send: Callable[[Client], Any], client: Client) -> list[Any]:
    """What each of so many sendings is answered, all of them sent at the same moment."""
    return together(*[(client, send)] * times)


def together(*sendings: Sending) -> list[Any]:
    """What each of the sendings is answered, all of them sent at the same moment."""
    ready = Barrier(len(sendings))

    def one(sending: Sending) -> Any:
        signed_in, send = sending
        browser = Client(raise_request_exception=False)
        browser.cookies = signed_in.cookies
        try:
            ready.wait(30)
            return send(browser)
        finally:
            connections.close_all()

    with ThreadPoolExecutor(len(sendings)) as threads:
        return list(threads.map(one, sendings))
