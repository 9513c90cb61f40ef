"""The model fields for labels and other short texts of people's own."""

from typing import Any

from fronts.facts.typed import GT, ST, CharFieldOf
from shopjobs.words import one_line, trimmed


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
