"""What a request brought and no view read, read to its end before the answer goes out.

A server that closes a connection on which bytes still come breaks it off: a proxy that is
sending then says 502 in place of the answer. `wsgiref`, which Django's own server is made
of, reads on in the same way.
"""

from collections.abc import Iterable
from contextlib import suppress
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from _typeshed.wsgi import InputStream, StartResponse, WSGIApplication, WSGIEnvironment

AT_ONCE = 64 * 1024
MOST = 32 * 1024 * 1024
"""Bytes; past that a sender is cut off. The proxy of our recipe lets no more than 21 MB by."""


def reading_all(application: "WSGIApplication") -> "WSGIApplication":
    """The application, which leaves nothing of a request unread."""

    def answer(environ: "WSGIEnvironment", start_response: "StartResponse") -> Iterable[bytes]:
        said = application(environ, start_response)
        with suppress(OSError):  # Whoever sent it has gone.
            _read_on(environ["wsgi.input"])
        return said

    return answer


def _read_on(body: "InputStream") -> None:
    left = MOST
    while left > 0 and (piece := body.read(AT_ONCE)):
        left -= len(piece)
