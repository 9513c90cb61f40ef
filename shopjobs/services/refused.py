"""What a service raises where it will not do what was asked."""

from collections.abc import Iterator
from contextlib import contextmanager

from django.db import IntegrityError, transaction


class Refused(ValueError):  # noqa: N818 - it reads as what it is: "except Refused"
    """A refusal in a person's words; `field` names the input that it is about, if any."""

    def __init__(self, message: str, *, field: str | None = None) -> None:
        super().__init__(message)
        self.message = message
        self.field = field


@contextmanager
def refuse_twice(message: str, *, field: str) -> Iterator[None]:
    """Refuse to save what the database holds only once, even where two save it together."""
    try:
        with transaction.atomic():
            yield
    except IntegrityError as taken:
        raise Refused(message, field=field) from taken


def first_line(error: BaseException) -> str:
    """What went wrong, without what a library says below it."""
    return str(error).partition("\n")[0]
