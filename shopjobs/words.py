"""What a short text of people's own may hold, how one begins and how it writes a moment."""

import unicodedata
from datetime import datetime

from django.core.exceptions import ValidationError
from django.utils import timezone

UNPRINTED = frozenset({"Cc", "Cs", "Zl", "Zp"})
"""Unicode's general categories of what no line of print shows."""


def fits_one_line(text: str) -> bool:
    """Return whether a line of print can show all of it."""
    return not any(unicodedata.category(each) in UNPRINTED for each in text)


def one_line(text: str) -> None:
    """Refuse what a drawing can't show: line ends and control characters."""
    if not fits_one_line(text):
        raise ValidationError("Use plain text on one line.")


def trimmed(text: str) -> None:
    """Refuse spaces around a label: two labels must differ in what is seen."""
    if text != text.strip():
        raise ValidationError("Leave out the spaces around it.")


def capitalized(text: str) -> str:
    """The text as a line or sentence begins, its other letters as they are."""
    return text[:1].upper() + text[1:]


def moment_in_words(at: datetime) -> str:
    """`26 Nov 10:54`, by the clock of the site."""
    return f"{timezone.localtime(at):%-d %b %H:%M}"
