"""How several lengths are written as one size."""

from fronts.rules.lengths import INCH, Mm, show


def size(unit: str, *lengths: Mm) -> str:
    """`15 1/2 × 28 1/2`."""
    return " × ".join(show(each, unit) for each in lengths)


def bought_length(length: Mm, unit: str) -> str:
    """A long length as it is bought: feet or metres, rounded up to a tenth."""
    size, name = (INCH * 12, "ft") if unit == "in" else (Mm(1000), "m")
    tenths = -(-length * 10 // size)
    return f"{tenths // 10}.{tenths % 10} {name}"
