"""The walls of a notebook: one holds until the next is named; named again it goes on."""

from fronts.notebook.faults import NotUnderstood
from fronts.notebook.words import quoted
from fronts.rules.kinds import Unit
from fronts.rules.lengths import Mm, show_with_unit
from fronts.rules.limits import MOST_WALLS
from fronts.rules.wall_facts import Wall

_A_WALL = "a wall in a line before it, like wall North"


class Walls:
    """Every wall that was named, and what came last on each.

    `lost`: the line of a wall was refused, and what follows is not blamed for lacking one.
    """

    def __init__(self, unit: Unit) -> None:
        self.lost = False
        self._unit = unit
        self._walls: dict[str, Wall] = {}
        self._last: dict[str, str] = {}
        self._current = ""

    @property
    def all(self) -> tuple[Wall, ...]:
        """The walls in the order in which they were named first."""
        return tuple(self._walls.values())

    def go_to(self, label: str, length: Mm | None) -> None:
        """What follows stands on this wall, of this length if it is said."""
        key = label.casefold()
        known = self._walls.get(key, Wall(label))
        self._current, self.lost = known.label, False
        if known.label != label:
            raise NotUnderstood(quoted(label), f"{quoted(known.label)}, as that wall is written")
        if known.length is not None and length not in (None, known.length):
            had = show_with_unit(known.length, self._unit)
            raise NotUnderstood(
                f"another length of wall {label}", f"{had}, as it had, or no length"
            )
        self._walls[key] = Wall(label, length if known.length is None else known.length)
        if len(self._walls) > MOST_WALLS:
            raise NotUnderstood("one more", f"at most {MOST_WALLS} walls")

    def followed(self, what: str) -> tuple[str, str | None]:
        """The wall on which `what` stands next, and what came last there; None: it is the first."""
        if not self._current and not self.lost:
            raise NotUnderstood(what, _A_WALL)
        return self._current, self._last.get(self._current)

    def stands(self, label: str) -> None:
        """Something of this label came last on the wall."""
        self._last[self._current] = label
