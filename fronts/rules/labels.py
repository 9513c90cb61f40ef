"""What openings and fronts are called: cabinet, opening, and a number where there are several."""

from collections.abc import Iterable

from fronts.rules.kitchen import Cabinet, Opening


def opening_label(cabinet: str, opening: str) -> str:
    """What an opening is called outside its cabinet, as `B1.a`."""
    return f"{cabinet}.{opening}"


def front_labels(cabinet: str, opening: Opening) -> tuple[str, ...]:
    """Labels of an opening's fronts: a pair from the left, a stack from the top."""
    return numbered(opening_label(cabinet, opening.label), len(opening.fronts))


def front_labels_in(cabinets: Iterable[Cabinet]) -> frozenset[str]:
    """Labels of all fronts of these cabinets."""
    return frozenset(
        label
        for cabinet in cabinets
        for opening in cabinet.openings
        for label in front_labels(cabinet.label, opening)
    )


def numbered(label: str, count: int) -> tuple[str, ...]:
    """The opening's own label for a single front, else a number behind it for each."""
    if count == 1:
        return (label,)
    return tuple(f"{label}.{index + 1}" for index in range(count))


def labels_taken(cabinet: str, opening: str, count: int) -> tuple[str, ...]:
    """Every name that an opening takes up: its own, and those of its several fronts."""
    label = opening_label(cabinet, opening)
    return tuple(dict.fromkeys((label, *numbered(label, count))))
