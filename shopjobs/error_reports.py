"""Failures told to whoever runs the site: by mail, or posted to a service for errors."""

import json
import logging
import threading
import time
import urllib.request
from typing import Any

from django.core.mail import mail_admins

from shopjobs.log_lines import JsonLine

LOG = logging.getLogger(__name__)
QUIET_SECONDS = 600
"""The same failure is told once in so many seconds: a broken page fails at every request."""
POST_SECONDS = 10
LONGEST_SUBJECT = 120


class ErrorReport(logging.Handler):
    """Sends what failed, from a thread of its own, so that nobody's answer waits for it.

    A report holds what a line of the log does: never a form, a cookie or a header, which may
    carry passwords, sessions and clients' own matters.
    """

    def __init__(self) -> None:
        super().__init__(level=logging.ERROR)
        self._told: dict[tuple[str, ...], float] = {}

    def emit(self, record: logging.LogRecord) -> None:
        """Send a failure that was not told lately; a refused request is none of the site's."""
        if getattr(record, "status_code", 500) >= 500 and self._is_new(record):
            facts = JsonLine().facts(record)
            threading.Thread(target=self._try, args=(facts,), name="error-report").start()

    def send(self, facts: dict[str, Any]) -> None:
        """Send what is known of a failure."""
        raise NotImplementedError

    def _is_new(self, record: logging.LogRecord) -> bool:
        now = time.monotonic()
        self._told = {key: at for key, at in self._told.items() if now - at < QUIET_SECONDS}
        return self._told.setdefault(_place_of(record), now) == now

    def _try(self, facts: dict[str, Any]) -> None:
        try:
            self.send(facts)
        except Exception as failed:
            LOG.warning("A failure could not be reported: %s", failed)


class MailedErrors(ErrorReport):
    """Mails a failure to those whom the setting names."""

    def send(self, facts: dict[str, Any]) -> None:
        """Mail it as lines, the traceback last."""
        subject = " ".join(str(facts["message"]).split())[:LONGEST_SUBJECT]
        lines = [f"{name}: {value}" for name, value in facts.items() if name != "traceback"]
        mail_admins(subject, "\n".join([*lines, "", str(facts.get("traceback", ""))]))


class PostedErrors(ErrorReport):
    """Posts a failure to an address, as the JSON that the log holds."""

    def __init__(self, address: str) -> None:
        super().__init__()
        self._address = address

    def send(self, facts: dict[str, Any]) -> None:
        """Post it; a service takes it with any answer below 400."""
        request = urllib.request.Request(  # noqa: S310 - the setting allows http and https alone
            self._address,
            data=json.dumps(facts, default=str).encode(),
            headers={"Content-Type": "application/json"},
        )
        with urllib.request.urlopen(request, timeout=POST_SECONDS):  # noqa: S310
            pass


def _place_of(record: logging.LogRecord) -> tuple[str, ...]:
    """Where it failed: the kind of failure and the line, or the line that says so."""
    failure, trace = record.exc_info[1:] if record.exc_info else (None, None)
    while trace is not None and trace.tb_next is not None:
        trace = trace.tb_next
    if failure is None or trace is None:
        return (record.name, str(record.msg))
    return (type(failure).__name__, trace.tb_frame.f_code.co_filename, str(trace.tb_lineno))
