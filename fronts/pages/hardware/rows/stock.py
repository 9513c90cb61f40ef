"""Screws, and what else lies on the shelf by its lengths, as the list of hardware shows it."""

from collections.abc import Iterator

from fronts.rules.job_facts import Stock
from fronts.rules.lengths import Mm, show_with_unit, write
from fronts.rules.screws import screw_name


def stock_rows(stock: Stock, screw: Mm, unit: str) -> Iterator[tuple[str, str]]:
    """What it is, and in which lengths; `screw` is the diameter of a mounting screw."""

    def lengths(each: tuple[Mm, ...]) -> str:
        return ", ".join(write(length, unit) for length in each) or "none"

    yield f"Mounting screws, {screw_name(screw)} washer-head", lengths(stock.screw_lengths)
    depth = show_with_unit(stock.knob_thread_depth, unit)
    knobs = f"Knob screws, {stock.knob_thread}, {depth} of thread in the knob"
    yield knobs, lengths(stock.knob_screw_lengths)
    yield "Plain slides, where none is entered", lengths(stock.slide_lengths)
