"""Ending sessions: whoever goes on with one signs in anew."""

from django.apps import apps
from django.conf import settings

from shopjobs.models import Person, Session


def session_end(*, session: Session) -> None:
    """End one session."""
    session.delete()


def sessions_end(*, person: Person, but: str | None = None) -> None:
    """End the person's sessions, but for the one with this key."""
    Session.objects.filter(person=person).exclude(pk=but).delete()


def ways_in_end(*, person: Person) -> None:
    """End all that lets the person in without a password."""
    for table in settings.WAYS_IN:
        apps.get_model(table)._default_manager.filter(person=person).delete()
