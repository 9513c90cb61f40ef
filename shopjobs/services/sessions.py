"""Ending sessions: whoever goes on with one signs in anew."""

from shopjobs.models import Person, Session


def session_end(*, session: Session) -> None:
    """End one session."""
    session.delete()


def sessions_end(*, person: Person, but: str | None = None) -> None:
    """End the person's sessions, but for the one with this key."""
    Session.objects.filter(person=person).exclude(pk=but).delete()
