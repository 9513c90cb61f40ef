"""The box sheet: boxes to be made, one page a kind, with all its sizes, pieces and the work."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from fronts.figures import cautions
from fronts.figures.box_letters import OUTSIDE, WORDS, lengths_by_letter
from fronts.figures.box_steps import BoxStep, box_steps
from fronts.figures.box_tables import (
    PieceColumn,
    PieceSize,
    StandRow,
    piece_columns,
    piece_sizes,
    stand_rows,
)
from fronts.figures.findings import findings_of
from fronts.rules.box_kinds import BoxKind, BoxSize, kinds_of_boxes
from fronts.rules.finding_words import FindingWords
from fronts.rules.item_kinds import JOINTS
from fronts.rules.kinds import SlideKind, Unit
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show
from fronts.rules.results import Finding, Schedule
from fronts.sheets.box_drawings import box_drawings
from fronts.sheets.fitting_drawings import Drawn
from fronts.sheets.sheet_page import SheetSource, page
from shopjobs.words import capitalized


@dataclass(frozen=True, slots=True)
class SizeRow:
    """Boxes of one size; `lengths` in the order of the table's letters, and their pieces."""

    count: int
    fronts: tuple[str, ...]
    lengths: tuple[str, ...]
    weight: str
    slide: str
    load: str
    pieces: tuple[PieceSize, ...]


@dataclass(frozen=True, slots=True)
class KindPage:
    """A kind of box on its page: drawings in rows, tables, steps and what to look out for.

    The first page has the job's stops, each other one those about its own boxes.
    """

    heading: str
    count: int
    about: str
    stops: tuple[Finding, ...]
    drawings: tuple[tuple[Drawn, ...], ...]
    letters: tuple[tuple[str, str], ...]
    sizes: tuple[SizeRow, ...]
    pieces: tuple[PieceColumn, ...]
    stands: tuple[StandRow, ...]
    has_middle: bool
    steps: tuple[BoxStep, ...]
    notes: tuple[str, ...]


def has_boxes(source: SheetSource) -> bool:
    """Whether any box is to be made."""
    return any(box.made for box in source.schedule.boxes)


def content(source: SheetSource) -> str:
    """The box sheet as HTML."""
    schedule, kitchen = source.schedule, source.kitchen
    pages = [_page(kind, schedule, kitchen) for kind in kinds_of_boxes(schedule, kitchen)]
    if pages:
        pages[0] = replace(pages[0], stops=findings_of(schedule).stops)
    context = {
        "title": "Boxes to make",
        "pages": pages,
        "cautions": cautions.at_boxes(),
    }
    return page("boxes.html", source, context)


def _page(kind: BoxKind, schedule: Schedule, kitchen: Kitchen) -> KindPage:
    unit, fronts = kitchen.job.unit, _fronts(kind)
    findings = findings_of(schedule, fronts)
    letters = [letter for letter in lengths_by_letter(kind, kind.sizes[0]) if letter in OUTSIDE]
    return KindPage(
        heading=_heading(kind),
        count=kind.count,
        about=_about(kind, unit),
        stops=findings.stops,
        drawings=box_drawings(kind, unit),
        letters=tuple((letter, WORDS[letter]) for letter in letters),
        sizes=tuple(_size_row(kind, alike, FindingWords(unit)) for alike in kind.sizes),
        pieces=piece_columns(kind, unit),
        stands=tuple(stand_rows(kind, schedule, unit)),
        has_middle=kind.slide == "side",
        steps=box_steps(kind, unit),
        notes=tuple(_notes(kind, findings.others)),
    )


_HEADINGS: Mapping[SlideKind, str] = {
    "bottom": "On a bottom slide", "side": "On side slides", "under": "On under slides",
}  # fmt: skip


def _heading(kind: BoxKind) -> str:
    """`On under slides`; what has tiers says so."""
    tiers = f", {1 + kind.shelves} tiers" if kind.shelves else ""
    return f"{_HEADINGS[kind.slide]}{', low sides' if kind.low else ''}{tiers}"


def _about(kind: BoxKind, unit: Unit) -> str:
    stock = kind.stock
    return (
        f"{capitalized(stock.material)} {show(stock.side, unit)} thick, bottom "
        f"{show(stock.bottom, unit)}. Corners: {JOINTS[kind.joint].lower()}."
    )


def _size_row(kind: BoxKind, alike: BoxSize, words: FindingWords) -> SizeRow:
    unit, box = words.unit, alike.like
    carries = "" if box.class_kg is None else f" of {words.say_weight(box.class_kg)}"
    length = "" if box.slide_length is None else f", {show(box.slide_length, unit)} long"
    lengths = lengths_by_letter(kind, alike)
    return SizeRow(
        count=alike.count,
        fronts=tuple(each.front for each in alike.boxes),
        lengths=tuple(show(lengths[letter], unit) for letter in lengths if letter in OUTSIDE),
        weight=words.say_weight(alike.weight_kg),
        slide=f"{box.slide}{length}",
        load=f"{words.say_weight(alike.load_kg)}{carries}",
        pieces=piece_sizes(kind, alike, unit),
    )


_SAID_HERE = frozenset({"stile-wants-blocking", "box-wants-guide", "material-unknown"})
"""Findings that whoever builds or hangs a box must know."""


def _notes(kind: BoxKind, findings: Sequence[Finding]) -> list[str]:
    meets = [
        f"{', '.join(box.front for box in alike.boxes)}: its tiers are closer than its sides are "
        "high; fewer shelves, or lower sides."
        for alike in kind.sizes
        if alike.tiers_meet
    ]
    return meets + [each.message for each in findings if each.code in _SAID_HERE]


def _fronts(kind: BoxKind) -> list[str]:
    return [box.front for alike in kind.sizes for box in alike.boxes]
