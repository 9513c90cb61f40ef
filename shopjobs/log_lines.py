"""What a line of the log says: of a request, of whoever asked, and of a failure."""

import json
import logging
import re
from contextvars import ContextVar
from datetime import UTC, datetime
from typing import Any

from django.http import HttpRequest
from django.utils.functional import SimpleLazyObject

CURRENT: ContextVar[HttpRequest | None] = ContextVar("request", default=None)
"""The request that is being answered here, if any."""

PRIVATE_PATH = re.compile(r"(?<=/calendar/)[^\s\"'?]+")
"""What makes an address private: whoever has it reads a calendar without signing in."""


def without_secrets(text: str) -> str:
    """The text with private addresses cut short."""
    return PRIVATE_PATH.sub("…", text)


class WithoutSecrets(logging.Filter):
    """Keeps private addresses out of every line, Django's own among them."""

    def filter(self, record: logging.LogRecord) -> bool:
        """Cut them short in the record's message."""
        said = record.getMessage()
        clean = without_secrets(said)
        if clean != said:
            record.msg, record.args = clean, None
        return True


class ShortOfRefusals(logging.Filter):
    """Lets a refused request take one line: a traceback is for a failure of the site's own."""

    def filter(self, record: logging.LogRecord) -> bool:
        """Drop the traceback of what was answered below 500."""
        if getattr(record, "status_code", 500) < 500:
            record.exc_info = record.exc_text = None
        return True


class JsonLine(logging.Formatter):
    """Writes a record as one line of JSON, with the request that it is about."""

    def format(self, record: logging.LogRecord) -> str:
        """Return the line."""
        return json.dumps(self.facts(record), ensure_ascii=False, default=str)

    def facts(self, record: logging.LogRecord) -> dict[str, Any]:
        """Return what is known: when, how grave, what, for whom, and what `facts` add to it."""
        said = {
            "time": datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds"),
            "level": record.levelname,
            "logger": record.name,
            "message": record.getMessage(),
            **_request_facts(record),
            **getattr(record, "facts", {}),
        }
        if record.exc_info:
            said["traceback"] = self.formatException(record.exc_info)
        return said


def _request_facts(record: logging.LogRecord) -> dict[str, Any]:
    """What is known of the request; nothing is asked of session or database for it."""
    request = getattr(record, "request", None)
    if not isinstance(request, HttpRequest):
        request = CURRENT.get()
    if request is None:
        return {}
    person = _person_of(request)
    return {
        "request": getattr(request, "request_id", None),
        "person": getattr(person, "username", "") or None,
        "shop": getattr(person, "shop_id", None),
        "address": getattr(request, "address", None),
    }


def _person_of(request: HttpRequest) -> object:
    person = vars(request).get("user")
    # Django looks the person up where somebody asks, and keeps whom it found.
    return getattr(request, "_cached_user", None) if type(person) is SimpleLazyObject else person
