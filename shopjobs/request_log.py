"""A line of the log for each request, under a name that proxy, log and answer share."""

import logging
import re
import time
import uuid
from collections.abc import Callable

from django.http import HttpRequest
from django.http.response import HttpResponseBase
from django.utils.encoding import escape_uri_path

from shopjobs.client_address import client_address
from shopjobs.log_lines import CURRENT, without_secrets

LOG = logging.getLogger("shopjobs.requests")
REQUEST_ID = re.compile(r"[A-Za-z0-9._-]{8,64}")


class RequestLog:
    """Names each request, by the proxy's own name where it has one, and times its answer."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        begun = time.perf_counter()
        named = request.headers.get("X-Request-ID", "")
        request_id = named if REQUEST_ID.fullmatch(named) else uuid.uuid4().hex
        vars(request).update(request_id=request_id, address=client_address(request))
        before = CURRENT.set(request)
        try:
            response = self.get_response(request)
            response.headers["X-Request-ID"] = request_id
            _write(request, response.status_code, time.perf_counter() - begun)
        finally:
            CURRENT.reset(before)
        return response


def _write(request: HttpRequest, status: int, seconds: float) -> None:
    # What an address asks for behind its "?" may be people's own words, and stays out.
    path = escape_uri_path(without_secrets(request.path))
    facts = {
        "method": request.method,
        "path": path,
        "status": status,
        "milliseconds": round(seconds * 1000, 1),
    }
    LOG.info("%s %s %s", request.method, path, status, extra={"facts": facts})
