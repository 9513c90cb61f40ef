"""Work counted in place of time, so that the same file is planned the same way each time.

Each thread has a counter. What takes long adds what it takes by the size of what it did, in
seconds of the machine that the figures were measured on (two cores of 2026, `python -m
tests.benchmarks.cutting`); how long it really took is left to the clock, as the last stop.
"""

from threading import local


class _Counter(local):
    """Seconds' worth of work done by this thread since it began."""

    spent = 0.0


_counter = _Counter()


def spent() -> float:
    """Seconds' worth of work that this thread has done."""
    return _counter.spent


def spend(seconds: float) -> None:
    """Count work."""
    _counter.spent += seconds


def of_loads(chunks: int, length: int, sizes: int) -> float:
    """Filling a line's table, chunk after chunk."""
    return chunks * (2.5e-6 + 5e-10 * length) + 2e-7 * sizes


def of_joins(pairs: int, kept: int, items: int) -> float:
    """Looking at pairs of rectangles, and joining those that are kept."""
    return 6e-5 + 7.5e-9 * pairs + 4e-8 * kept * items


def of_filling(spots: int, rows: int) -> float:
    """Laying parts into free rectangles, one after the other."""
    return 1e-5 + spots * (2e-6 + 7e-8 * rows)


def of_program(iterations: int, rows: int, columns: int) -> float:
    """A linear program's iterations."""
    return 2e-4 + iterations * (1.6e-6 + 6e-8 * rows + 1.7e-8 * columns) + 1e-6 * columns


def of_cuts(cells: int, cuts: int) -> float:
    """A table of rectangles: every cell over every cut through it."""
    return 1.6e-6 * cells + 1.2e-9 * cuts


def of_shapes(joins: int) -> float:
    """Joining rectangles of two multisets in all ways, and keeping the least."""
    return 1e-4 + 9e-8 * joins


def of_pairs(pairs: int, joins: int) -> float:
    """Looking at pairs of rectangles for those that fit, and judging what they make."""
    return 1e-4 + 1.2e-8 * pairs + 2e-7 * joins
