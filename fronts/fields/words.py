"""The model fields for labels and other short texts of people's own."""

import unicodedata
from typing import Any

from django.core.exceptions import ValidationError

from fronts.fields.typed import GT, ST, CharFieldOf

UNPRINTED = frozenset({"Cc", "Cs", "Zl", "Zp"})
"""Unicode's general categories of what no line of print shows."""


def one_line(text: str) -> None:
    """Refuse what a drawing can't show: line ends and control characters."""
    if any(unicodedata.category(each) in UNPRINTED for each in text):
        raise ValidationError("use plain text on one line")


def trimmed(text: str) -> None:
    """Refuse spaces around a label: two labels must differ in what is seen."""
    if text != text.strip():
        raise ValidationError("leave out the spaces around it")


class WordsField(CharFieldOf[ST, GT]):
    """A short text of people's own, on one line."""

    _pyi_private_set_type: str
    _pyi_private_get_type: str
    default_validators = [one_line]


class LabelField(WordsField[ST, GT]):
    """What a thing is called on the drawings: short, with no space around it."""

    _pyi_private_set_type: str
    _pyi_private_get_type: str
    default_validators = [one_line, trimmed]

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        kwargs.setdefault("max_length", 40)
        super().__init__(*args, **kwargs)
