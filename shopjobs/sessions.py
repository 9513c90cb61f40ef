"""Sessions in the database that know whose they are, and where they were seen last."""

import logging
from datetime import timedelta
from typing import Any

from django.conf import settings
from django.contrib.auth import SESSION_KEY
from django.contrib.sessions.backends import db
from django.contrib.sessions.middleware import SessionMiddleware
from django.db import OperationalError
from django.http import HttpRequest, HttpResponse
from django.utils import timezone
from django.utils.dateparse import parse_datetime

from shopjobs.browsers import browser_words
from shopjobs.client_address import client_address
from shopjobs.models import Session

LOG = logging.getLogger(__name__)
BEGAN = "_began_at"
SEEN_ANEW = timedelta(minutes=5)
"""So old may be what is known of a session: reading pages seldom writes."""


class SessionStore(db.SessionStore):
    """What Django asks for a session; the row beside it says whose it is."""

    def __init__(
        self, session_key: str | None = None, *, address: str = "", browser: str = ""
    ) -> None:
        super().__init__(session_key)
        self.address, self.browser = address, browser
        self.row: Session | None = None

    @classmethod
    def get_model_class(cls) -> type[Session]:
        """Return the table."""
        return Session

    def _get_session_from_db(self) -> Any:
        self.row = super()._get_session_from_db()  # type: ignore[misc] # the stubs lack it
        return self.row

    def create_model_instance(self, data: dict[str, Any]) -> Session:
        """Make the row to save; a session begins when it gets its person."""
        now = timezone.now()
        if SESSION_KEY in data:
            data.setdefault(BEGAN, now.isoformat())
        row: Session = super().create_model_instance(data)  # type: ignore[assignment]
        if SESSION_KEY in data:
            row.person_id, row.began_at = int(data[SESSION_KEY]), parse_datetime(data[BEGAN])
        row.seen_at, row.address, row.browser = now, self.address, self.browser
        return row


class Sessions(SessionMiddleware):
    """Gives each request its session, and writes down now and then that it was seen."""

    def process_request(self, request: HttpRequest) -> None:
        """Open the session, and tell it who asks."""
        request.session = SessionStore(
            request.COOKIES.get(settings.SESSION_COOKIE_NAME),
            address=client_address(request),
            browser=browser_words(request.headers.get("User-Agent", "")),
        )

    def process_response(self, request: HttpRequest, response: HttpResponse) -> HttpResponse:
        """Save the session where it changed; else say that it was seen, if that is news."""
        answer = super().process_response(request, response)
        session = request.session
        if isinstance(session, SessionStore) and session.row is not None:
            _mark_seen(session, session.row)
        return answer


def _mark_seen(session: SessionStore, row: Session) -> None:
    """An update by key: what was ended meanwhile stays ended."""
    now = timezone.now()
    known = (row.address, row.browser) == (session.address, session.browser)
    if row.person_id is None or (known and now - row.seen_at < SEEN_ANEW):
        return
    seen = {"seen_at": now, "address": session.address, "browser": session.browser}
    try:
        Session.objects.filter(pk=row.pk).update(**seen)
    except OperationalError as failed:
        LOG.warning("That a session was seen could not be written down: %s", failed)
