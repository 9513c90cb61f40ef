"""The cuts of a layout in the order in which they are made, each piece by a name that is seen."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import NamedTuple

from fronts.cutting.blocks_on_sheet import block_boxes
from fronts.cutting.model import Cut, Layout
from fronts.rules.lengths import NOTHING, Mm, show


@dataclass(frozen=True, slots=True)
class Step:
    """One cut: what is cut, how the fence or stop is set, what is kept and what falls off."""

    number: int
    what: str
    piece: str
    fence: str
    keeps: str
    falls: str
    hold: str


class _Piece(NamedTuple):
    x: Mm
    y: Mm
    right: Mm
    top: Mm


_WORDS = {"trim": "trim", "rip": "rip", "cross": "cross-cut", "block": "cut up the block"}


def steps_of(layout: Layout, kerf: Mm, unit: str) -> list[Step]:
    """The cuts in words; a piece that is a part by now is called by its label."""
    names = dict(_names(layout, kerf))
    whole = "the stick" if layout.stock.width is None else "the sheet"
    names["sheet"] = whole
    return [
        Step(
            number=cut.number,
            what=_WORDS[cut.kind],
            piece=names.get(cut.piece, f"piece {cut.piece}"),
            fence=show(cut.fence, unit),
            keeps=names.get(cut.keeps, f"piece {cut.keeps}"),
            falls=_falls(cut, names),
            hold=cut.hold or "",
        )
        for cut in layout.cuts
    ]


def _falls(cut: Cut, names: Mapping[str, str]) -> str:
    if cut.falls is None:
        return ""
    return "the edge" if cut.kind == "trim" else names.get(cut.falls, f"piece {cut.falls}")


def stops_of(layout: Layout, kerf: Mm, unit: str) -> str:
    """A stick's cuts in one line: where the stop is set, and for which part."""
    steps = steps_of(layout, kerf, unit)
    said = [f"{step.fence} ({step.keeps})" for step in steps if step.what != _WORDS["trim"]]
    trimmed = "Trim both ends, then stop at " if len(said) < len(steps) else "Stop at "
    holds = dict.fromkeys(step.hold for step in steps if step.hold)
    return ". ".join([trimmed + ", ".join(said), *holds]) + "."


def _names(layout: Layout, kerf: Mm) -> Iterator[tuple[str, str]]:
    """What each piece is in the end: a part, an offcut to keep, or waste."""
    places = {(each.x, each.y, each.length, each.width): each.part for each in layout.placed}
    rests = {
        (each.x, each.y, each.length, each.width): "offcut to keep" if each.usable else "waste"
        for each in layout.offcuts
    }
    blocks = {box: name for name, box in block_boxes(layout)}
    cut_again = {cut.piece for cut in layout.cuts}
    for name, piece in _pieces(layout, kerf).items():
        width = None if layout.stock.width is None else piece.top - piece.y
        key = (piece.x, piece.y, piece.right - piece.x, width)
        found = places.get(key) or rests.get(key)
        if found and name not in cut_again:
            yield name, found
        elif name in cut_again and key in blocks:
            yield name, blocks[key]


def _pieces(layout: Layout, kerf: Mm) -> dict[str, _Piece]:
    """Every piece that the cuts make, by name, each cut replayed on the full stock."""
    width = NOTHING if layout.stock.width is None else layout.stock.width
    found = {"sheet": _Piece(NOTHING, NOTHING, layout.stock.length, width)}
    for cut in layout.cuts:
        low, high = _divided(found[cut.piece], cut, kerf)
        start = low.x if cut.along == "width" else low.y
        kept, fallen = (low, high) if cut.at - start == cut.fence else (high, low)
        found[cut.keeps] = kept
        if cut.falls is not None:
            found[cut.falls] = fallen
    return found


def _divided(piece: _Piece, cut: Cut, kerf: Mm) -> tuple[_Piece, _Piece]:
    if cut.along == "length":
        return piece._replace(top=cut.at), piece._replace(y=cut.at + kerf)
    return piece._replace(right=cut.at), piece._replace(x=cut.at + kerf)
