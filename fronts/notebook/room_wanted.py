"""The room that a cabinet's openings want: which size is too small for them, and what would do.

Where words say its face, openings go along with the cabinet's size: those without a size of
their own share what is left, and each wants the least that an opening is. Elsewhere they stay
where they are, and want the cabinet to reach as far as they do.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from fronts.notebook.openings import LEAST
from fronts.notebook.regular_face import RegularFace, regular_face
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Cabinet, Opening
from fronts.rules.lengths import NOTHING, Mm, ceiling_to, floor_to
from fronts.rules.past_cabinet import ends_past

Dimension = Literal["width", "height"]
_Parts = Sequence[tuple[str, Mm | None]]
"""What fills a span: each part's first opening by its label, and its size where it has one."""


@dataclass(frozen=True, slots=True)
class NoRoom:
    """A size is too small: what it `leaves` an opening, which wants more, and what would do.

    The opening `follows` the cabinet's size, or stays until somebody changes it.
    """

    opening: str
    leaves: Mm
    wants: Mm
    would_do: Mm
    follows: bool


def room_wanted(
    cabinet: Cabinet, width: Mm, height: Mm, unit: Unit, step: Mm
) -> Mapping[Dimension, NoRoom]:
    """Which of a cabinet's new sizes are too small for its openings; empty: neither is."""
    sizes: dict[Dimension, Mm] = {"width": width, "height": height}
    known = regular_face(cabinet, unit, step)
    if known is None:
        wanting = list(_that_stay(cabinet.openings, sizes, step))
    else:
        wanting = list(_that_follow(cabinet.openings, known, sizes, LEAST[unit], step))
    return {
        size: max((one for at, one in wanting if at == size), key=lambda one: one.would_do)
        for size, _ in wanting
    }


@dataclass(frozen=True, slots=True)
class _Sized:
    width: Mm
    height: Mm


def _that_stay(
    openings: Sequence[Opening], sizes: Mapping[Dimension, Mm], step: Mm
) -> Iterator[tuple[Dimension, NoRoom]]:
    for opening in openings:
        for size, past in ends_past(opening, _Sized(sizes["width"], sizes["height"])).items():
            wants: Mm = getattr(opening, size)
            would_do = ceiling_to(sizes[size] + past, step)
            yield size, NoRoom(opening.label, wants - past, wants, would_do, follows=False)


def _that_follow(
    openings: Sequence[Opening],
    known: RegularFace,
    sizes: Mapping[Dimension, Mm],
    least: Mm,
    step: Mm,
) -> Iterator[tuple[Dimension, NoRoom]]:
    wants = ceiling_to(least, step)
    for size, parts in _spans(openings, known):
        taken = sum((own for _, own in parts if own is not None), NOTHING)
        taken += known.member * (len(parts) + 1)
        sharing = [label for label, own in parts if own is None]
        would_do = taken + wants * len(sharing)
        if sharing and would_do > sizes[size]:
            leaves = floor_to((sizes[size] - taken) / len(sharing), step)
            would_do = ceiling_to(would_do, step)
            yield size, NoRoom(sharing[0], leaves, wants, would_do, follows=True)


def _spans(openings: Sequence[Opening], known: RegularFace) -> Iterator[tuple[Dimension, _Parts]]:
    """The face from the top, and each of its rows from the left."""
    down = iter(sorted(openings, key=lambda opening: (-opening.y, opening.x)))
    heights: list[tuple[str, Mm | None]] = []
    for row in known.face:
        widths = [(next(down).label, cell.width) for cell in row.cells]
        heights.append((widths[0][0], row.height))
        yield "width", widths
    yield "height", heights
