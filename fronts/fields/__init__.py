"""Model and form fields: lengths exact in Python and in the database, and short texts."""

from fronts.fields.exactness import DIGITS, PLACES, checked, fraction_of
from fronts.fields.lengths import MmField, MmListField
from fronts.fields.typing_in import LengthField
from fronts.fields.words import LabelField, WordsField

__all__ = [
    "DIGITS", "PLACES", "LabelField", "LengthField", "MmField", "MmListField", "WordsField",
    "checked", "fraction_of",
]  # fmt: skip
