"""Counting failed attempts to sign in, and locking a name for a while."""

from datetime import datetime, timedelta

from django.db import transaction

from shopjobs.models import SignInFailure
from shopjobs.selectors import failures_since


def is_locked(*, username: str, address: str, at: datetime, failures: int, minutes: int) -> bool:
    """Return whether a name has failed too often from an address in the last minutes."""
    return failures_since(_key(username), address, at - timedelta(minutes=minutes)) >= failures


@transaction.atomic
def failure_record(*, username: str, address: str, at: datetime, minutes: int) -> None:
    """Record a failed attempt; those that no longer count go."""
    SignInFailure.objects.filter(at__lt=at - timedelta(minutes=minutes)).delete()
    SignInFailure.objects.create(username=_key(username), address=address, at=at)


def failures_forget(*, username: str, address: str) -> None:
    """Forget a name's failures from an address, after it signed in."""
    SignInFailure.objects.filter(username=_key(username), address=address).delete()


def _key(username: str) -> str:
    return username.casefold()[:150]
