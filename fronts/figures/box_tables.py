"""Boxes to be made as tables: their pieces, one column a kind of piece, and where they stand."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.figures.box_letters import lengths_by_letter, piece_letters
from fronts.figures.parts import part_words
from fronts.figures.sizes import size
from fronts.rules.box_kinds import BoxKind, BoxSize
from fronts.rules.box_parts import BACK, BOTTOM, FRONT, SHELF, SIDE
from fronts.rules.box_results import BoxOnSlide
from fronts.rules.kinds import Unit, is_inset
from fronts.rules.lengths import Mm, show, terminating
from fronts.rules.results import Schedule


@dataclass(frozen=True, slots=True)
class PieceSize:
    """A piece of one size of box; `exact` in millimetres where no inch rule shows it."""

    figure: str
    exact: str


@dataclass(frozen=True, slots=True)
class PieceColumn:
    """One kind of piece: how many a box has, and all boxes; its size by letters."""

    name: str
    each: int
    count: int
    letters: str
    thickness: str
    cut: str


@dataclass(frozen=True, slots=True)
class StandRow:
    """Where a box stands in its opening; `middle` is the line of slides at its sides."""

    front: str
    rise: str
    middle: str
    free: str
    set_back: str


def piece_columns(kind: BoxKind, unit: Unit) -> tuple[PieceColumn, ...]:
    """The pieces that boxes of a kind consist of."""
    cut = _cut_in(kind)
    return tuple(
        PieceColumn(
            name=part_words(name),
            each=(part := kind.sizes[0].parts[name]).count,
            count=sum(alike.parts[name].count * alike.count for alike in kind.sizes),
            letters=f"{long} × {wide}",
            thickness=show(part.thickness, unit),
            cut=cut[name],
        )
        for name, (long, wide) in piece_letters(kind).items()
    )


def piece_sizes(kind: BoxKind, alike: BoxSize, unit: Unit) -> tuple[PieceSize, ...]:
    """The pieces of one size, in the order of the columns."""
    lengths = lengths_by_letter(kind, alike)
    return tuple(
        _piece_size(lengths[long], lengths[wide], unit)
        for long, wide in piece_letters(kind).values()
    )


def _piece_size(long: Mm, wide: Mm, unit: Unit) -> PieceSize:
    figure = size(unit, long, wide)
    decimals = [terminating(length) for length in (long, wide)]
    exact = " × ".join(decimal for decimal in decimals if decimal) if "≈" in figure else ""
    return PieceSize(figure, f"{exact} mm" if exact and all(decimals) else "")


def _cut_in(kind: BoxKind) -> dict[str, str]:
    """What is cut in each piece, once it has its size."""
    sides, ends = {
        "butt": ("", ""),
        "rabbet": (", rabbets", ""),
        "dado": (", dados", ", tongues"),
        "through-dovetail": (", tails", ", pins"),
    }[kind.joint]
    many = "grooves" if kind.shelves else "groove"
    behind = "grooves for shelves" if kind.shelves else "no groove"
    return {
        SIDE: f"groove{sides}",
        FRONT: f"{many}{ends}",
        BACK: f"{behind if kind.open_behind else many}{ends}",
        BOTTOM: "",
        SHELF: "",
    }


def stand_rows(kind: BoxKind, schedule: Schedule, unit: Unit) -> Iterator[StandRow]:
    """Each box of a kind in its opening."""
    for alike in kind.sizes:
        for box in alike.boxes:
            yield _stand_row(box, alike, schedule, unit)


def _stand_row(box: BoxOnSlide, alike: BoxSize, schedule: Schedule, unit: Unit) -> StandRow:
    front, fitting = schedule.front(box.front), schedule.fitting(box.front)
    return StandRow(
        front=box.front,
        rise=show(box.rise, unit),
        middle=show(box.rise + alike.parts[SIDE].width / 2, unit),
        free="" if fitting is None else show(fitting.side_clearance, unit),
        set_back=show(front.thickness, unit) if is_inset(front.plane) else "flush",
    )
