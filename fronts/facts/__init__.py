"""Model and form fields: lengths exact in Python and in the database, and short texts."""

from fronts.facts.exactness import DIGITS, PLACES, checked, fraction_of
from fronts.facts.length_form_field import LengthField
from fronts.facts.lengths import MmField, MmListField
from fronts.facts.words import LabelField, WordsField

__all__ = [
    "DIGITS", "PLACES", "LabelField", "LengthField", "MmField", "MmListField", "WordsField",
    "checked", "fraction_of",
]  # fmt: skip
