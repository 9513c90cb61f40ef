"""What a short text of people's own may hold, wherever it is typed or read from a file."""

import unicodedata

from django.core.exceptions import ValidationError

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
