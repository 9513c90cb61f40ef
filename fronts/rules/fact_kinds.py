"""The kinds of fact that a kitchen is declared in: a length, a count, a word, a group, rows."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from fronts.rules.lengths import LONGEST, Mm


@dataclass(frozen=True, slots=True)
class Length:
    """A length in mm. `zero`: nothing at all has a meaning; `signed`: so has less than that.

    `small` ones are gaps and thicknesses; `empty` says what holds where none is given.
    `asks` is what to enter, where "the" and its words would not say it. `usual` is what
    holds where no level of the house standard says anything, and `source` where it is from.
    """

    says: str
    zero: bool = False
    signed: bool = False
    small: bool = False
    most: Mm = LONGEST
    empty: str = ""
    asks: str = ""
    hint: str = ""
    usual: Mm | None = None
    source: str = ""


@dataclass(frozen=True, slots=True)
class Lengths:
    """Several lengths in their order, each above zero, or where `zero` says so not below it."""

    says: str
    most: int
    zero: bool = False
    hint: str = ""


@dataclass(frozen=True, slots=True)
class Number:
    """A number of `unit` from `least` to `most`, exact: a weight, an angle."""

    says: str
    unit: str
    least: Fraction
    most: Fraction
    hint: str = ""


@dataclass(frozen=True, slots=True)
class YesNo:
    """Something that is so, or is not."""

    says: str
    hint: str = ""


@dataclass(frozen=True, slots=True)
class Count:
    """A whole number from `least` to `most`."""

    says: str
    least: int
    most: int
    asks: str = ""


@dataclass(frozen=True, slots=True)
class Word:
    """One word out of a few, each with what people call it."""

    says: str
    words: Mapping[Any, str]
    empty: str = ""
    usual: str | None = None
    source: str = ""


@dataclass(frozen=True, slots=True)
class Text:
    """A short text of people's own, on one line."""

    says: str
    most: int
    empty: str = ""
    hint: str = ""
    usual: str | None = None


@dataclass(frozen=True, slots=True)
class Label:
    """What a thing is called on the drawings: never empty, no space around it."""

    says: str
    most: int = 40
    example: str = ""


@dataclass(frozen=True, slots=True)
class DoorName:
    """The label of a door on hand, or the word that has one chosen."""

    says: str


@dataclass(frozen=True, slots=True)
class ItemCode:
    """The code of an item of the shop's list; `words` may stand in its place, each as called."""

    says: str
    empty: str = ""
    most: int = 40
    words: tuple[tuple[str, str], ...] = ()
    usual: str | None = None


@dataclass(frozen=True, slots=True)
class Thread:
    """The thread of a screw, as people write it: 8-32, 1/4-20, M4."""

    says: str


@dataclass(frozen=True, slots=True)
class Day:
    """A date."""

    says: str


@dataclass(frozen=True, slots=True)
class Group:
    """Facts that belong together; `prefix` begins the names of their columns."""

    says: str
    prefix: str


@dataclass(frozen=True, slots=True)
class EachSide:
    """The same fact for left, right, top and bottom, given together or not at all."""

    says: str
    prefix: str
    side: Length | ItemCode
    usual: Mm | str | None = None
    source: str = ""


@dataclass(frozen=True, slots=True)
class Rows:
    """Things with a table of their own: at most so many, or one where `most` is 1.

    `one` is what one of them is called.
    """

    says: str
    most: int
    one: str


Declared = (
    Length | Lengths | Number | Count | Word | YesNo | Text | Label | Thread | Day | DoorName
    | ItemCode | Group | EachSide | Rows
)  # fmt: skip
