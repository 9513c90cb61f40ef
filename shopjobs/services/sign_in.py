"""Counting wrong passwords, and locking a name or an address for a while."""

import logging
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta

from django.core.exceptions import ValidationError

from shopjobs.models import SignInFailure
from shopjobs.selectors import failures_from, failures_since, is_sign_in_name
from shopjobs.services.refused import Refused

LOG = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """How many failures within the last `minutes` lock a name at an address; or an address."""

    failures: int
    of_an_address: int
    minutes: int


@contextmanager
def password_attempt(
    *, username: str, address: str, at: datetime, limits: Limits
) -> Iterator[None]:
    """Let one password be checked, or refuse it after too many failures.

    A password that does not hold raises inside; it stays counted, and the log says so.
    """
    try:
        _attempt_begin(username=username, address=address, at=at, limits=limits)
        yield
    except (Refused, ValidationError) as failed:
        # A name that nobody has may be a password, typed into the wrong field.
        known = is_sign_in_name(username)
        facts = {"sign_in_name": username if known else None, "locked": isinstance(failed, Refused)}
        LOG.warning("A password was refused.", extra={"facts": facts})
        raise
    SignInFailure.objects.filter(username=_key(username), address=address).delete()


def _attempt_begin(*, username: str, address: str, at: datetime, limits: Limits) -> None:
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


def _key(username: str) -> str:
    return username.casefold()[:150]
