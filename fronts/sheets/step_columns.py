"""An order of work in two columns, shared out here where that is plain.

The typesetter balances columns by laying them out again and again. Where every step surely
keeps to one line, both of half as many, rounded up, is what it would come to.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.drawings.lettering import text_width
from fronts.drawings.svg import Px

_LETTERS: Px = 12_00
"""9 points."""
_ACROSS: Px = 294_00
"""What a column leaves a step on A4, the narrower paper, beside its number and its tick."""


@dataclass(frozen=True, slots=True)
class StepColumns:
    """The steps on the left, and those that follow them on the right, from number `then`.

    With nothing on the right they are left to the typesetter.
    """

    left: tuple[str, ...]
    right: tuple[str, ...] = ()

    @property
    def then(self) -> int:
        return len(self.left) + 1


def step_columns(steps: Sequence[str]) -> StepColumns:
    """The steps in the order of the work."""
    if len(steps) < 2 or any(text_width(each, _LETTERS) > _ACROSS for each in steps):
        return StepColumns(tuple(steps))
    half = -(-len(steps) // 2)
    return StepColumns(tuple(steps[:half]), tuple(steps[half:]))
