"""The walls of a kitchen, and what an address says of the one that it is about."""

from collections.abc import Iterable, Sequence
from urllib.parse import urlencode

from fronts.rules.kitchen import Kitchen
from fronts.rules.runs import standing_in

WALL = "wall"
EVERY = " *"
"""Instead of a wall's name: all of them, drawn at one scale. No name begins with a space."""


def walls_in(kitchen: Kitchen) -> tuple[str, ...]:
    """The walls that were measured, and those that anything stands on, in that order."""
    named = [wall.label for wall in kitchen.walls]
    return tuple(dict.fromkeys([*named, *(what.wall for what in standing_in(kitchen))]))


def new_walls_said(known: Sequence[str], named: Iterable[str]) -> str:
    """`Wall East is new.` of those that are not known; "" where all of them are.

    One that is spelled otherwise than one that is there is one more.
    """
    return " ".join(f"Wall {wall} is new." for wall in named if wall not in known)


def wall_query(wall: str) -> str:
    """What the address of the page says of its wall."""
    return f"?{urlencode({WALL: wall})}"
