"""What was measured of an opening on site, in words beside its drawing."""

from collections.abc import Iterator

from fronts.rules.kitchen import Cabinet, Measured
from fronts.rules.labels import opening_label
from fronts.rules.lengths import Mm, show

_SIZES = (
    ("width", (("width_top", "at the top"), ("width_bottom", "at the bottom"))),
    ("height", (("height_left", "at the left"), ("height_right", "at the right"))),
    ("diagonal", (("diagonal_1", "↗"), ("diagonal_2", "↘"))),
)


def measured_openings(cabinet: Cabinet, unit: str) -> list[tuple[str, str]]:
    """Openings of the cabinet that were measured, each with its sizes in words."""
    said = [
        (opening_label(cabinet.label, opening.label), "; ".join(_sizes(opening.measured, unit)))
        for opening in cabinet.openings
    ]
    return [(label, words) for label, words in said if words]


def _sizes(measured: Measured, unit: str) -> Iterator[str]:
    """`width 15 at the top, 14 31/32 at the bottom`."""
    for name, taken in _SIZES:
        sizes: list[tuple[Mm | None, str]] = [(getattr(measured, key), at) for key, at in taken]
        figures = [f"{show(size, unit)} {at}" for size, at in sizes if size is not None]
        if figures:
            yield f"{name} {', '.join(figures)}"
