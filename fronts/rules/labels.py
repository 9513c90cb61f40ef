"""What fronts are called: cabinet, opening, and a number where an opening has several."""

from fronts.rules.kitchen import Opening


def front_labels(cabinet: str, opening: Opening) -> tuple[str, ...]:
    """Labels of an opening's fronts: a pair from the left, a stack from the top."""
    count = front_count(opening)
    if count == 1:
        return (f"{cabinet}.{opening.label}",)
    return tuple(f"{cabinet}.{opening.label}.{index + 1}" for index in range(count))


def front_count(opening: Opening) -> int:
    """How many fronts close an opening."""
    match opening.closed_by:
        case "open":
            return 0
        case "pair":
            return 2
        case "drawers":
            return opening.count
        case _:
            return 1
