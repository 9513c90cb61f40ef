"""A line of the door maker's list in words, and as cells of a table: the same on page and paper."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.facts.changes import changes
from fronts.facts.column_words import column_words, in_words
from fronts.figures.sizes import size
from fronts.rules.bought_results import CALLED, BoughtFront
from fronts.rules.fact_kinds import Length, Lengths
from fronts.rules.kinds import is_upright
from fronts.rules.lengths import show, show_with_unit

_METRIC = frozenset({"bore_diameter", "bore_depth", "bore_from_edge"})
"""Hinges are metric wherever they are sold."""
NOTHING = "nothing"


@dataclass(frozen=True, slots=True)
class Told:
    """One thing that the maker is told."""

    says: str
    words: str


@dataclass(frozen=True, slots=True)
class BoughtWords:
    """A line: what it is, its finished width × height × thickness, and all else."""

    what: str
    size: str
    told: tuple[Told, ...]


def bought_words(front: BoughtFront, unit: str) -> BoughtWords:
    """The line in the job's unit."""
    hand = f", hinged {front.hand}" if front.hand else ""
    return BoughtWords(
        what=f"{front.build} {CALLED[front.kind]}{hand}",
        size=size(unit, front.width, front.height, front.thickness),
        told=tuple(Told(says, words) for says, words in _told(front, unit) if words),
    )


def _told(front: BoughtFront, unit: str) -> Iterator[tuple[str, str]]:
    yield "Style", front.style
    yield "Material", ", ".join(filter(None, (front.material, front.species)))
    if front.stile is not None and front.rail is not None:
        middle = ", with a middle rail" if front.middle_rail else ""
        yield "Frame", f"stiles {show(front.stile, unit)}, rails {show(front.rail, unit)}{middle}"
    if front.panel_thickness is not None:
        thick = show(front.panel_thickness, unit)
        yield "Panel", ", ".join(filter(None, (f"{front.panel} {thick}", front.panel_profile)))
    yield "Edge", front.edge_profile
    yield "Grain", front.grain
    yield "Bores", _bores(front, unit)
    yield "Glass", "ready for glass, no panel; the pane is put in here" if front.glass else ""
    yield "Finish", front.finish


def _bores(front: BoughtFront, unit: str) -> str:
    """`2 of ⌀ 35 mm, 13 mm deep, centres 3 1/2 · 25 up from the bottom, 22.5 mm in …`."""
    wide, deep, inward = front.bore_diameter, front.bore_depth, front.bore_from_edge
    if not front.bores or wide is None or deep is None or inward is None:
        return ""
    whence = "up from the bottom" if is_upright(front.hand) else "from the left"
    centres = " · ".join(show(centre, unit) for centre in front.bores)
    return (
        f"{len(front.bores)} of ⌀ {show_with_unit(wide, 'mm')}, {show_with_unit(deep, 'mm')} deep, "
        f"centres {centres} {whence}, "
        f"{show_with_unit(inward, 'mm')} in from the {front.hand} edge"
    )


def bought_heads(unit: str) -> list[str]:
    """What heads each column of a table of lines, lengths with their unit."""
    heads = []
    for name, (says, declared) in column_words(BoughtFront).items():
        is_length = isinstance(declared, Length | Lengths)
        heads.append(f"{says}, {_unit_of(name, unit)}" if is_length else says)
    return heads


def bought_cells(front: BoughtFront, unit: str) -> list[str]:
    """What a line says, in the order of the heads; "" where it says nothing."""
    cells = []
    for name, (_, declared) in column_words(BoughtFront).items():
        words = in_words(getattr(front, name), declared, _unit_of(name, unit))
        cells.append("" if words in (NOTHING, "no") else words)
    return cells


def what_changed(was: BoughtFront, now: BoughtFront, unit: str) -> str:
    """`width 15 → 16, hinged Left → Right`."""
    words = {says: (name, declared) for name, (says, declared) in column_words(BoughtFront).items()}
    said = []
    for change in changes(was, now):
        name, declared = words[change.says]
        before, after = (
            in_words(value, declared, _unit_of(name, unit)) for value in (change.was, change.now)
        )
        if before != after:
            said.append(f"{change.says} {before} → {after}")
    return ", ".join(said)


def _unit_of(name: str, unit: str) -> str:
    return "mm" if name in _METRIC else unit
