"""The fitting sheet: a page for each cabinet, with all that an installer needs at it."""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.figures.cabinet_words import CabinetWords, cabinet_words
from fronts.figures.findings import places_at
from fronts.figures.shown_figures import code_of
from fronts.rules.kinds import FRONT_KINDS
from fronts.rules.kitchen import Cabinet
from fronts.sheets.figure_list import BESIDE_JIG, NARROW, SIDE_BY_SIDE, FigureList, figure_list
from fronts.sheets.fitting_drawings import CabinetDrawings
from fronts.sheets.fitting_layout import Drawings, lay_out
from fronts.sheets.hole_tables import HoleTable, hole_table
from fronts.sheets.page_height import Above, Below
from fronts.sheets.sheet_code import CodeOnSheet, code_on_sheet, printed_since
from fronts.sheets.sheet_page import SheetSource, page


@dataclass(frozen=True, slots=True)
class CabinetPage:
    """Everything on one cabinet's page, or on its two pages.

    With `one_box` its figures stand beside its jig, and the doors' under that; with `jig_aside`
    beside the doors', and the jig beside the drawings.
    """

    label: str
    title: str
    code: CodeOnSheet
    words: CabinetWords
    drawings: Drawings
    one_box: bool
    jig_aside: bool
    boxes: FigureList | None
    holes: HoleTable | None
    doors: FigureList | None


def content(source: SheetSource, labels: Sequence[str] | None = None) -> str:
    """The fitting sheets of the cabinets with these labels, or of all that have fronts."""
    wanted = fitted_cabinets(source) if labels is None else labels
    known = {cabinet.label: cabinet for cabinet in source.kitchen.cabinets}
    pages = [_page(source, known[label]) for label in wanted]
    title = f"Fitting sheet {wanted[0]}" if len(wanted) == 1 else "Fitting sheets"
    return page("fitting.html", source, {"title": title, "pages": pages})


def said_on(source: SheetSource, label: str) -> str:
    """All that the sheet of one cabinet follows from, told without drawing it.

    Its code stands for its figures; the rest is what stands at head and foot.
    """
    words = _words(source, source.kitchen.cabinet(label))
    code, job = code_of(words), source.kitchen.job
    since = printed_since(code, source)
    return repr((label, code, since, source.site, job.number, job.client, job.site, job.unit))


def fitted_cabinets(source: SheetSource) -> list[str]:
    """The cabinets that have a front or a finding, in the kitchen's order."""
    having = {front.cabinet for front in source.schedule.fronts}
    places = {place for finding in source.schedule.findings for place in finding.where}
    return [
        cabinet.label
        for cabinet in source.kitchen.cabinets
        if cabinet.label in having or not places.isdisjoint(places_at(cabinet))
    ]


def _words(source: SheetSource, cabinet: Cabinet) -> CabinetWords:
    return cabinet_words(source.schedule, source.kitchen, cabinet, source.jig_plan)


def _page(source: SheetSource, cabinet: Cabinet) -> CabinetPage:
    schedule, kitchen = source.schedule, source.kitchen
    words = _words(source, cabinet)
    drawings = CabinetDrawings(
        schedule, kitchen, cabinet, words.fronts, words.fittings, source.jig_plan
    )
    aside = _jig_aside(drawings)
    boxes = _boxes(words, SIDE_BY_SIDE if aside else BESIDE_JIG)
    doors = _doors(words, SIDE_BY_SIDE if aside else NARROW)
    holes = hole_table(words.holes)
    one_box = len(words.fittings) == 1
    title = cabinet.label, words.about
    above = Above(title, words.rows, words.laps, words.measured, words.ends, words.findings)
    below = Below(
        boxes, holes, doors, words.works, words.cautions, one_box=one_box, jig_aside=aside
    )
    return CabinetPage(
        label=cabinet.label,
        title=f"Fitting sheet {cabinet.label}",
        code=code_on_sheet(words, source),
        words=words,
        drawings=lay_out(drawings, above, below),
        one_box=one_box,
        jig_aside=aside,
        boxes=boxes,
        holes=holes,
        doors=doors,
    )


def _jig_aside(of: CabinetDrawings) -> bool:
    """Whether one box's narrow jig stands beside the drawings, since doors have figures too."""
    hinged = any(front.hinge_centres for front in of.fronts)
    return len(of.boxed) == 1 and hinged and [jig.slot for jig in of.jigs] == [None]


def _boxes(words: CabinetWords, letters: int) -> FigureList | None:
    """The figures of the fronts on boxes; those of one alone in so many letters' room."""
    labels = list(words.boxes)
    if not labels:
        return None
    heading = f"{', '.join(labels)} on {'its box' if len(labels) == 1 else 'their boxes'}"
    figures = list(words.boxes.values())
    return figure_list(heading, labels, figures, letters=letters if len(labels) == 1 else 0)


def _doors(words: CabinetWords, letters: int) -> FigureList | None:
    """The figures of the hinged doors, and of all else that stands on no box."""
    labels, figures = list(words.unboxed), list(words.unboxed.values())
    if not labels:
        return None
    fronts = (each for each in words.fronts if each.label in words.unboxed)
    swing = all(FRONT_KINDS[each.kind].swings for each in fronts)
    how = f"on {'its' if len(labels) == 1 else 'their'} hinges" if swing else "hung and fixed"
    heading = f"{', '.join(labels)} {how}"
    alone = len(words.fittings) == 1
    return figure_list(heading, labels, figures, letters=letters if alone else 0)
