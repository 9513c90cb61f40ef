"""The columns of a CSV file of items: a heading each, in plain words, with its unit."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import partial
from typing import Any

from fronts.facts.column_words import column_words
from fronts.facts.form_fields import form_field
from fronts.facts.number_form_field import WeightField, plain
from fronts.facts.size_form_fields import Size, Sizes
from fronts.rules.fact_kinds import Length, Lengths, Number, Word
from fronts.rules.facts import Fact, may_be_missing, single_facts
from fronts.rules.kinds import UNITS
from fronts.rules.lengths import INCH, Mm, terminating
from shopjobs.forms.house import in_house_words

SEPARATOR = "; "
"""Between the lengths of one cell."""


@dataclass(frozen=True, slots=True)
class Column:
    """One column: whose fact it holds, and its heading without the unit."""

    name: str
    fact: Fact
    says: str
    needed: bool

    def heading(self, unit: str) -> str:
        """What stands over it: `usual B (in)`."""
        match self.fact.declared:
            case Length() | Lengths():
                return f"{self.says} ({unit})"
            case Number(unit=own):
                return f"{self.says} ({own})"
        return self.says

    def written(self, value: Any, unit: str) -> str:
        """A value as its cell says it."""
        if value is None or value in ("", ()):
            return ""
        match self.fact.declared:
            case Length():
                return length_cell(value, unit)
            case Lengths():
                return SEPARATOR.join(length_cell(each, unit) for each in value)
            case Number():
                return plain(value)
            case Word(words=words):
                return words[value]
        return str(value)

    def reader(self, unit: str) -> Callable[[str], Any]:
        """What reads its cells; ValidationError where one says nothing that can be."""
        field = form_field(self.fact, required=self.needed)
        in_house_words(field)
        match field:
            case Size() | Sizes():
                field.speak(unit)
            case WeightField():
                field.speak("mm")
        match self.fact.declared:
            case Word(words=words):
                return partial(self._word, words, field.clean)
        return field.clean

    def _word(self, words: Mapping[str, str], clean: Callable[[str], Any], cell: str) -> Any:
        """A word as people call it, or as files do."""
        called = {says.casefold(): word for word, says in words.items()}
        if not cell and self.fact.has_default:
            return self.fact.default
        return clean(called.get(cell.casefold(), cell))


def columns_of_kind(kind: type) -> list[Column]:
    """Every column of a kind of item, in the order of its declaration."""
    words = column_words(kind)
    return [
        Column(name, fact, words[name][0], _needed(kind, path, fact))
        for name, path, fact in single_facts(kind)
    ]


def headings(columns: list[Column]) -> Mapping[str, tuple[Column, str]]:
    """Each heading that is known, in either unit, with its column and that unit."""
    return {column.heading(unit).casefold(): (column, unit) for unit in UNITS for column in columns}


def length_cell(length: Mm, unit: str) -> str:
    """A length as a decimal, which no spreadsheet takes for a date: `0.5`, `11 mm`."""
    shown = terminating(length / INCH if unit == "in" else length)
    if shown is not None and len(shown) <= _SHORT:
        return shown
    exact = terminating(length)
    return f"{exact} mm" if exact is not None else f"{plain(Fraction(length / INCH))} in"


_SHORT = 10


def _needed(kind: type, path: str, fact: Fact) -> bool:
    return not may_be_missing(kind, path) and not fact.has_default
