"""How far off fronts are to be expected: frozen results, all lengths exact millimetres.

A front keeps its place as long as it can be moved as far as it hangs off. The figures, and
where they come from: `error_to_expect.py`.
"""

from dataclasses import dataclass
from typing import Literal, TypeAlias

from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.roots import root_up

Outlook: TypeAlias = Literal[
    "goes", "should-go", "may-not-come-true", "set-by-hand", "on-machine", "no-box-yet"
]


@dataclass(frozen=True, slots=True)
class Errors:
    """The shop's own errors as far as this front has them."""

    measuring: Mm
    cutting: Mm
    setting: Mm

    @property
    def worst(self) -> Mm:
        """All of them at once, and the same way."""
        return self.measuring + self.cutting + self.setting

    @property
    def square(self) -> Mm:
        """The square of their root-sum-square, mm²."""
        return self.measuring**2 + self.cutting**2 + self.setting**2


@dataclass(frozen=True, slots=True)
class OneWay:
    """What is to be expected one way, sideways or upright, and how far the front moves then.

    `known` is what an opening out of true adds.
    """

    errors: Errors
    known: Mm
    play: Mm

    @property
    def worst(self) -> Mm:
        return self.errors.worst + self.known

    def expected(self, step: Mm) -> Mm:
        """The root-sum-square with what is known, up to the next step."""
        return root_up(self.errors.square, step, self.known)

    @property
    def goes_at_worst(self) -> bool:
        return self.worst <= self.play

    @property
    def goes_as_expected(self) -> bool:
        return self._holds(self.known)

    @property
    def errors_alone_go(self) -> bool:
        """Whether it would go in an opening that is true."""
        return self._holds(NOTHING)

    def _holds(self, known: Mm) -> bool:
        return known <= self.play and self.errors.square <= (self.play - known) ** 2


@dataclass(frozen=True, slots=True)
class ErrorToExpect:
    """How one front is likely to come out; a way is None where no play is needed, or known.

    `hung` is what moves it: its hinges, else the screws in their holes.
    """

    front: str
    hung: bool
    sideways: OneWay | None
    upright: OneWay | None
    outlook: Outlook

    @property
    def ways(self) -> tuple[OneWay, ...]:
        return tuple(way for way in (self.sideways, self.upright) if way is not None)

    @property
    def tightest(self) -> OneWay | None:
        """The way in which least is left of the play at worst."""
        return min(self.ways, key=lambda way: way.play - way.worst, default=None)
