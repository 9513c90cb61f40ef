"""A row's change, as history keeps it: what it said before and after, and nothing else."""

from collections.abc import Callable, Sequence
from typing import Any, NamedTuple, TypeAlias

from shopjobs.row_values import Values


class RowChange(NamedTuple):
    """One row made (`before` is None), changed, or deleted (`after` is None).

    Of a row that was changed only the columns that differ are in both. `name` is what the row
    was called, "" where it went or came with another.
    """

    table: str
    key: int
    before: Values | None
    after: Values | None
    name: str = ""

    def as_json(self) -> list[Any]:
        """What a revision keeps."""
        return list(self) if self.name else list(self)[:-1]

    def touches(self, column: str) -> bool:
        """Whether this column of the row changed, or the whole of it; "" is any column."""
        if not column or self.before is None or self.after is None:
            return True
        return column in self.after


Words: TypeAlias = Callable[[Sequence[RowChange]], str]
"""Makes a line of what changed, or "" where there is none to make."""


def changes_of(kept: Sequence[Sequence[Any]]) -> list[RowChange]:
    """The changes that a revision keeps."""
    return [RowChange(*each) for each in kept]
