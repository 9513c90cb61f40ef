"""What a request brought is read to its end, whatever was done with it."""

from collections.abc import Iterable
from io import BytesIO
from wsgiref.types import StartResponse, WSGIEnvironment
from wsgiref.util import setup_testing_defaults

import pytest

from shopjobs.unread_bodies import MOST, reading_all


def refusing(environ: WSGIEnvironment, start_response: StartResponse) -> Iterable[bytes]:
    """An application that answers without a look at what came."""
    start_response("403 Forbidden", [])
    return [b"no"]


@pytest.mark.parametrize("sent", [0, 10, 20 * 1024 * 1024])
def test_a_request_that_is_refused_unread_is_read_to_its_end(sent: int) -> None:
    """Whoever is still sending gets the answer, not a connection that breaks off."""
    environ: WSGIEnvironment = {}
    setup_testing_defaults(environ)
    environ["wsgi.input"] = body = BytesIO(b"x" * sent)
    statuses: list[str] = []

    said = reading_all(refusing)(environ, lambda status, *_: statuses.append(status))  # type: ignore[arg-type]

    assert (statuses, b"".join(said)) == (["403 Forbidden"], b"no")
    assert body.tell() == sent


def test_nobody_keeps_the_site_reading_for_ever() -> None:
    """A body without an end is left where it is too much."""
    environ: WSGIEnvironment = {}
    setup_testing_defaults(environ)
    environ["wsgi.input"] = body = BytesIO(b"x" * (MOST + 10 * 1024 * 1024))

    reading_all(refusing)(environ, lambda *_: None)  # type: ignore[arg-type]

    assert body.tell() == MOST
