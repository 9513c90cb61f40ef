"""What must agree between the things of one kitchen, so that a drawing names each once."""

from collections import Counter
from collections.abc import Iterator

from fronts.models import Cabinet, Opening
from fronts.rules.lengths import Mm, show_with_unit
from shopjobs.models import Job


def labels_of(cabinet: str, opening: str, closed_by: str, count: int) -> Iterator[str]:
    """The names that an opening takes up: its own, and those of its several fronts."""
    yield f"{cabinet}.{opening}"
    several = 2 if closed_by == "pair" else count
    if several > 1:
        yield from (f"{cabinet}.{opening}.{index + 1}" for index in range(several))


def label_taken_twice(job: Job) -> str | None:
    """A front's name that two openings of the job would share, or None."""
    rows = Opening.objects.filter(cabinet__job=job).values_list(
        "cabinet__label", "label", "closed_by", "count"
    )
    named = Counter(name for row in rows for name in labels_of(*row))
    return next((name for name, times in named.items() if times > 1), None)


def past_cabinet(opening: Opening, cabinet: Cabinet, unit: str) -> dict[str, str]:
    """Where the opening goes past its cabinet's outline, at `width` and `height`."""
    faults: dict[str, str] = {}
    spans: tuple[tuple[str, Mm, Mm, Mm], ...] = (
        ("width", opening.x, opening.width, cabinet.width),
        ("height", opening.y, opening.height, cabinet.height),
    )
    for name, start, size, whole in spans:
        if start + size > whole:
            past = show_with_unit(start + size - whole, unit)
            faults[name] = f"the opening ends {past} past cabinet {cabinet.label}"
    return faults
