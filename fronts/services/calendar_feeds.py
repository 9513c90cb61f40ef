"""A person's calendar address: made, made anew, withdrawn."""

import secrets
from datetime import datetime

from fronts.models import CalendarFeed
from fronts.selectors.calendar_feeds import digest_of
from shopjobs.models import Person

TOKEN_BYTES = 32


def feed_make(*, person: Person, at: datetime) -> str:
    """Give the person a new address and end the one before; returns its token, shown once."""
    token = secrets.token_urlsafe(TOKEN_BYTES)
    CalendarFeed.objects.update_or_create(
        person=person, defaults={"digest": digest_of(token), "made_at": at}
    )
    return token


def feed_withdraw(*, person: Person) -> None:
    """End the person's address; whoever has it reads nothing any more."""
    CalendarFeed.objects.filter(person=person).delete()
