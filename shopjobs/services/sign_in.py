"""Counting failed attempts to sign in, and locking a name or an address for a while."""

from dataclasses import dataclass
from datetime import datetime, timedelta

from shopjobs.models import SignInFailure
from shopjobs.selectors import failures_from, failures_since
from shopjobs.services.refused import Refused


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """How many failures within the last `minutes` lock a name at an address; or an address."""

    failures: int
    of_an_address: int
    minutes: int


def attempt_begin(*, username: str, address: str, at: datetime, limits: Limits) -> None:
    """Count an attempt as failed before its password is checked, or refuse it.

    Each is in the database before any of them is counted, so that guesses at the same
    moment can't slip past the limit together. A refused attempt is not counted.
    """
    since = at - timedelta(minutes=limits.minutes)
    SignInFailure.objects.filter(at__lt=since).delete()
    mine = SignInFailure.objects.create(username=_key(username), address=address, at=at)
    wait = f"Wait {limits.minutes} minutes, then try again."
    if failures_since(_key(username), address, since) > limits.failures:
        mine.delete()
        raise Refused(f"Too many attempts with this name. {wait}")
    if failures_from(address, since) > limits.of_an_address:
        mine.delete()
        raise Refused(f"Too many attempts from this network. {wait}")


def failures_forget(*, username: str, address: str) -> None:
    """Forget a name's failures from an address, after it signed in."""
    SignInFailure.objects.filter(username=_key(username), address=address).delete()


def _key(username: str) -> str:
    return username.casefold()[:150]
