"""What a benchmark found out, beside its target."""

import statistics
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass

from django.test.utils import setup_databases, teardown_databases


@dataclass(frozen=True, slots=True)
class Figure:
    """One thing that was measured; `target` is the most it should be, None where there is none."""

    what: str
    measured: float
    unit: str
    target: float | None = None

    @property
    def ratio(self) -> float | None:
        """How much of the target is used up; above 1 it is missed."""
        return None if self.target is None else self.measured / self.target


HEADS = ("what", "measured", "target", "ratio")


def table(figures: Sequence[Figure]) -> str:
    """The figures as a table of plain text."""
    rows = [HEADS, *(_row(each) for each in figures)]
    widths = [max(len(row[column]) for row in rows) for column in range(len(HEADS))]
    return "\n".join(_line(row, widths) for row in rows)


def _row(figure: Figure) -> tuple[str, str, str, str]:
    target = "–" if figure.target is None else f"{_number(figure.target)} {figure.unit}"
    ratio = "–" if figure.ratio is None else f"{figure.ratio:.2f}"
    missed = " missed" if figure.ratio is not None and figure.ratio > 1 else ""
    return figure.what, f"{_number(figure.measured)} {figure.unit}", target, ratio + missed


def _number(value: float) -> str:
    return f"{value:,.0f}" if value >= 100 or value == int(value) else f"{value:.3g}"


def _line(row: Sequence[str], widths: Sequence[int]) -> str:
    first, *others = zip(row, widths, strict=True)
    cells = [first[0].ljust(first[1]), *(text.rjust(width) for text, width in others[:-1])]
    return "  ".join([*cells, others[-1][0]]).rstrip()


def best_ms(
    do: Callable[[], object], rounds: int, *, before: Callable[[], object] = lambda: None
) -> float:
    """The best of so many rounds, in milliseconds; what comes `before` each is not counted.

    The best, since whatever else the machine does can only add to it.
    """
    times = []
    for _ in range(rounds):
        before()
        times.append(_ms(do))
    return min(times)


def median_ms_in_turn(things: Sequence[Callable[[], object]], rounds: int) -> list[float]:
    """The median time of each, in milliseconds, each done once in every round.

    Done in turn, they share whatever else the machine does; the first round is not counted.
    """
    times = [[_ms(do) for do in things] for _ in range(rounds + 1)]
    return [statistics.median(each) for each in zip(*times[1:], strict=True)]


def _ms(do: Callable[[], object]) -> float:
    start = time.perf_counter()
    do()
    return (time.perf_counter() - start) * 1000


@contextmanager
def database() -> Iterator[None]:
    """A database of its own for as long as it is wanted, like the tests have one."""
    made = setup_databases(verbosity=0, interactive=False)
    try:
        yield
    finally:
        teardown_databases(made, verbosity=0)
