"""How lengths are written: several as one size, one with its sign, one as it is bought."""

from fronts.rules.lengths import INCH, Mm, show


def size(unit: str, *lengths: Mm) -> str:
    """`15 1/2 × 28 1/2`."""
    return " × ".join(show(each, unit) for each in lengths)


def signed(length: Mm, unit: str) -> str:
    """`+1/8`, `−1/8` or `0`."""
    sign = "+" if length > 0 else "−" if length < 0 else ""
    return f"{sign}{show(abs(length), unit)}"


def bought_length(length: Mm, unit: str) -> str:
    """A long length as it is bought: feet or metres, rounded up to a tenth."""
    size, name = (INCH * 12, "ft") if unit == "in" else (Mm(1000), "m")
    tenths = -(-length * 10 // size)
    return f"{tenths // 10}.{tenths % 10} {name}"
