"""The address that a request came from."""

from django.conf import settings
from django.http import HttpRequest

LONGEST = 45
"""An IPv6 address that holds an IPv4 one, written out (RFC 4291, section 2.2)."""


def client_address(request: HttpRequest) -> str:
    """Return the client's address; behind a proxy, the last one that the proxy names.

    What stands before it in the header is a client's own claim.
    """
    if settings.BEHIND_PROXY:
        forwarded = request.headers.get("X-Forwarded-For", "").split(",")[-1].strip()
        if forwarded:
            return forwarded[:LONGEST]
    return str(request.META.get("REMOTE_ADDR", ""))[:LONGEST]
