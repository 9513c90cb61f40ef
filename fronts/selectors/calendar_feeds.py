"""Whose calendar an address is: looked up by the digest of what makes it private."""

import hashlib
from datetime import datetime

from fronts.models import CalendarFeed
from shopjobs.models import Person, Revision, Shop


def digest_of(token: str) -> str:
    """What is kept of a token. It is 256 bits of chance, so that no salt or slow hash is needed."""
    return hashlib.sha256(token.encode("utf-8", "surrogatepass")).hexdigest()


def reader_of(token: str) -> Person | None:
    """Who reads the calendar at the address with this token; None where it is nobody's now.

    Whoever may not sign in any more has no calendar either.
    """
    feeds = CalendarFeed.objects.select_related("person__shop")
    feed = feeds.filter(
        digest=digest_of(token), person__is_active=True, person__shop__isnull=False
    ).first()
    return feed.person if feed else None


def feed_of(person: Person) -> CalendarFeed | None:
    """The person's own feed, where there is one."""
    return CalendarFeed.objects.filter(person=person).first()


def last_changed(shop: Shop) -> datetime:
    """When anything of a shop was changed last: its days may be as old as that, no older."""
    latest = Revision.objects.filter(shop=shop).order_by("-at").values_list("at", flat=True)
    return latest.first() or shop.created_at
