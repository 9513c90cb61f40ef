"""One number of the shop's standard as its drawing says it."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any, TypeAlias


@dataclass(frozen=True, slots=True)
class Figure:
    """A value in force, in words; `number` is its field's place on the page, counted from 1.

    `own` is whether the shop says it itself; `usual` is what holds where it does not.
    """

    number: int
    value: Any
    text: str
    own: bool
    usual: Any = None

    def times(self, of: Fraction | None = None) -> Fraction:
        """How many times as large as is usual, or as `of`; once, where nobody says."""
        whole = of or self.usual
        if not isinstance(self.value, Fraction) or not isinstance(whole, Fraction) or not whole:
            return Fraction(1)
        return self.value / whole


Figures: TypeAlias = Mapping[str, Figure]
