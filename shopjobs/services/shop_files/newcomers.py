"""A shop's people as they come to another installation, where names may be taken."""

from collections.abc import Iterator
from itertools import count

from django.contrib.auth.hashers import make_password

from shopjobs.row_values import Values
from shopjobs.selectors import is_sign_in_name
from shopjobs.services.refused import Refused

LONGEST_NAME = 150
RIGHTS = {"is_superuser", "is_staff"}
"""Over the whole installation: no shop brings them along."""


def newcomer(values: Values, *, by_name_only: bool) -> Values:
    """What is kept of a person: their rights in the shop, none over the installation.

    By name only, nobody can sign in until they are given a password here, and a sign-in name
    that is taken gets a number.
    """
    own = values | dict.fromkeys(RIGHTS, False)
    username = str(values.get("username"))
    if by_name_only:
        return own | {"username": _free(username), "password": make_password(None)}
    if is_sign_in_name(username):
        raise Refused(
            f"The sign-in name “{username}” is taken here. Bring the shop in without its people: "
            "they then come by name, without passwords, and a taken name gets a number."
        )
    return own


def _free(username: str) -> str:
    return next(name for name in _tried(username) if not is_sign_in_name(name))


def _tried(username: str) -> Iterator[str]:
    yield username
    for number in count(2):
        ending = f"-{number}"
        yield username[: LONGEST_NAME - len(ending)] + ending
