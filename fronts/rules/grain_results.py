"""Fronts whose grain runs on from one to the next: their set, and a front's place in it."""

from dataclasses import dataclass

from fronts.rules.kinds import GrainWay
from fronts.rules.rect import Rect


@dataclass(frozen=True, slots=True)
class GrainSet:
    """Fronts that read as one piece, in their order on the wall; `upright`: grain up and down."""

    name: str
    upright: bool
    fronts: tuple[str, ...]

    @property
    def way(self) -> GrainWay:
        """Which way its grain runs."""
        return "upright" if self.upright else "level"


@dataclass(frozen=True, slots=True)
class GrainPlace:
    """A front's place in its set: the `number`th of `of`; `rect` with all walls in one line."""

    name: str
    number: int
    of: int
    upright: bool
    rect: Rect
