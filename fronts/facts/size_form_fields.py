"""Form fields for one size and for lists of sizes, in whatever unit the form speaks."""

import re
from collections.abc import Iterable
from fractions import Fraction
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.facts import LengthField
from fronts.rules.lengths import Mm, write
from fronts.rules.limits import MOST_LENGTHS

EXAMPLES = {"in": "23 5/8", "mm": "600"}
SMALL_EXAMPLES = {"in": "1/2", "mm": "12"}
_INPUT = forms.TextInput()


def suited(message: str, example: str) -> str:
    """What is wrong with a length, with an example of the field's own kind."""
    head, like, _ = message.rpartition(" like ")
    return f"{head}{like}{example}." if like else f"{message}."


class Size(LengthField):
    """A length whose form says in which unit a bare number is; `asks` is what to enter.

    A `small` one is a gap or a thickness, and its messages name one of that kind.
    """

    def __init__(self, *, asks: str = "", small: bool = False, **kwargs: Any) -> None:
        self.asks, self.examples = asks, SMALL_EXAMPLES if small else EXAMPLES
        super().__init__(unit="mm", **kwargs)

    def to_python(self, value: Any) -> Mm | None:
        try:
            return super().to_python(value)
        except ValidationError as error:
            told = [suited(message, self.examples[self.unit]) for message in error.messages]
            raise ValidationError(told) from error

    def speak(self, unit: str) -> None:
        """Take bare numbers in `unit`, and show lengths in it."""
        self.unit = unit
        self.widget.attrs.update(self.widget_attrs(_INPUT))
        asks = self.asks or f"the {str(self.label).lower()}"
        self.error_messages["required"] = f"Enter {asks}, like {self.examples[unit]}."


class Sizes(forms.Field):
    """Lengths typed with commas between them, or one to a line.

    With `blanks` a place may be left empty, for what shares the rest; `zero` allows nothing.
    """

    widget = forms.TextInput

    def __init__(self, *, blanks: bool = False, zero: bool = False, **kwargs: Any) -> None:
        self.blanks, self.zero = blanks, zero
        self.one = Size(zero=zero)
        super().__init__(**kwargs)

    def speak(self, unit: str) -> None:
        """Take bare numbers in `unit`, and show lengths in it."""
        self.one = Size(zero=self.zero)  # Its own: a form's copy of a field shares the rest of it.
        self.one.speak(unit)
        self.widget.attrs |= {"autocomplete": "off", "inputmode": "text"}

    def to_python(self, value: Any) -> tuple[Mm | None, ...]:
        if value in self.empty_values or not str(value).strip():
            return ()
        typed = re.split(r"[,;\t\n]", str(value).strip())
        if len(typed) > MOST_LENGTHS:
            raise ValidationError(f"Enter at most {MOST_LENGTHS} lengths.")
        return tuple(self._read(each.strip(), place) for place, each in enumerate(typed, start=1))

    def prepare_value(self, value: Any) -> Any:
        return _written(value, self.one.unit) if isinstance(value, tuple) else value

    def _read(self, typed: str, place: int) -> Mm | None:
        if not typed and self.blanks:
            return None
        if not typed:
            raise ValidationError(f"Nothing stands at place {place}; leave out its comma.")
        found: Fraction | None = self.one.to_python(typed)
        return found


def _written(lengths: Iterable[Mm | None], unit: str) -> str:
    return ", ".join("" if each is None else write(each, unit) for each in lengths)
