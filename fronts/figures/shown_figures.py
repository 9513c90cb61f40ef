"""A cabinet's fitting sheet as a list of named figures: all that it says and all that it draws.

Its code is made from them, so that two sheets with one code say the same, and what differs
between two codes can be told figure by figure. What is drawn to scale without a figure stands
here with one.
"""

from collections.abc import Iterable, Iterator

from fronts.figures.boxes import HolePlace
from fronts.figures.cabinet_words import CabinetWords
from fronts.figures.front_rows import FrontRow
from fronts.figures.knobs import Line, handle_word, place
from fronts.figures.sizes import signed, size
from fronts.rules.fingerprint import sheet_code
from fronts.rules.fitting_results import Fitting
from fronts.rules.hinge_drilling import cup_centre
from fronts.rules.kinds import FRONT_BUILDS, SIDES
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.labels import opening_label
from fronts.rules.lengths import show
from fronts.rules.planned_gap import is_gap
from fronts.rules.results import Front
from fronts.rules.shown_figures import ShownFigure

UNITS = {"in": "inches", "mm": "millimetres"}
WORK, CARE, HOLE = "order of work", "take care", "hole"
"""Names of what there is much of; those of holes begin so."""


def code_of(words: CabinetWords) -> str:
    """The code of the sheet on which all this stands."""
    return sheet_code(shown_figures(words))


def shown_figures(words: CabinetWords) -> tuple[ShownFigure, ...]:
    """Every figure, in the order in which the sheet has them."""
    return tuple(_figures(words))


def _figures(words: CabinetWords) -> Iterator[ShownFigure]:
    cabinet, unit = words.cabinet, words.kitchen.job.unit
    yield from _cabinet(cabinet, unit)
    for finding in words.findings.every:
        yield ShownFigure(cabinet.label, finding.level, finding.message)
    for front, row in zip(words.fronts, words.rows, strict=True):
        yield from _front(front, row, cabinet, words.kitchen)
        fitting = words.fittings.get(front.label)
        if fitting is None:
            yield from _lines(front.label, words.unboxed.get(front.label, ()))
        else:
            yield from _lines(front.label, words.boxes[front.label])
            yield from _box(front.label, fitting, unit)
            yield from _holes(front.label, words.holes[front.label])
        yield from _bores(front, unit)
    yield from (ShownFigure(label, "as measured", said) for label, said in words.measured)
    yield from (ShownFigure(label, "hung square", said) for label, said in words.ends)
    for work in words.works:
        yield ShownFigure(cabinet.label, WORK, work.heading)
        for step in (*work.steps, *filter(None, [work.other])):
            yield ShownFigure(cabinet.label, WORK, step)
    yield from (ShownFigure(cabinet.label, CARE, each) for each in words.cautions)


def _cabinet(cabinet: Cabinet, unit: str) -> Iterator[ShownFigure]:
    said = {
        "label": cabinet.label,
        "all lengths in": UNITS[unit],
        "kind": cabinet.kind,
        "build": cabinet.build,
        "wall": cabinet.wall,
        "width": show(cabinet.width, unit),
        "height": show(cabinet.height, unit),
        "depth": show(cabinet.depth, unit),
        "from the left": show(cabinet.left, unit),
        "above the floor": show(cabinet.y, unit),
    }
    yield from _named(cabinet.label, said)
    for opening in cabinet.openings:
        said = {
            "opening's width": show(opening.width, unit),
            "opening's height": show(opening.height, unit),
            "opening from the cabinet's left": show(opening.x, unit),
            "opening above the cabinet's bottom": show(opening.y, unit),
        }
        yield from _named(opening_label(cabinet.label, opening.label), said)


def _front(
    front: Front, row: FrontRow, cabinet: Cabinet, kitchen: Kitchen
) -> Iterator[ShownFigure]:
    unit, line = kitchen.job.unit, row.line
    said = {
        "what": line.what,
        "width": line.width,
        "height": line.height,
        "thickness": line.thickness,
        "weight": row.weight + (", two people" if row.two_people else ""),
        "made from": line.made_from,
    }
    for side, planned in zip(SIDES, row.planned, strict=True):
        said[f"gap {side}"] = planned.removeprefix("plan ")
    for side in SIDES:
        overlay = front.edges[side].overlay
        said[f"lap {side}"] = "" if overlay is None else signed(overlay, unit)
    for side in SIDES:
        edge = front.edges[side]
        inside = edge.faces is not None and edge.faces.startswith(f"{cabinet.label}.")
        if inside and edge.gap is not None and is_gap(edge.gap, kitchen.practice.filler):
            said[f"to {edge.faces} at its {side}"] = show(edge.gap, unit)
    said["from the cabinet's left"] = signed(front.x - cabinet.left, unit)
    said["above the cabinet's bottom"] = signed(front.y - cabinet.y, unit)
    if FRONT_BUILDS[front.build].framed:
        frame = (f"{side} {show(front.frame[side], unit)}" for side in SIDES)
        said["stiles and rails"] = ", ".join(frame)
    yield from _named(front.label, {name: says for name, says in said.items() if says})


def _lines(label: str, lines: Iterable[Line]) -> Iterator[ShownFigure]:
    """Each by its name, and what is said beside it apart from it: often that alone stays."""
    for line in lines:
        name = line.name.lower()
        yield ShownFigure(label, name, line.figure)
        if line.more:
            yield ShownFigure(label, f"{name}, beside it", line.more)


def _box(label: str, fitting: Fitting, unit: str) -> Iterator[ShownFigure]:
    """What the drawings show of its box and its jig."""
    said = {
        "hung": f"with a {fitting.method}" if fitting.method == "jig" else f"with {fitting.method}",
        "box": size(unit, fitting.jig_length, fitting.box_height),
        "box above the front's bottom": signed(fitting.jig_thickness, unit),
    }
    if fitting.ledges is not None:
        said["jig's block, deep"] = show(fitting.ledges.block_depth, unit)
    yield from _named(label, said)


def _holes(label: str, holes: Iterable[HolePlace]) -> Iterator[ShownFigure]:
    for hole in holes:
        on_box, on_back = f"→ {hole.box_x} ↑ {hole.box_y}", f"→ {hole.back_x} ↑ {hole.back_y}"
        name = f"{HOLE} {hole.number}, {hole.corner}"
        yield ShownFigure(label, f"{name}, on the box", on_box)
        yield ShownFigure(label, f"{name}, on the back", on_back)


def _bores(front: Front, unit: str) -> Iterator[ShownFigure]:
    """What is bored into its back beside mounting holes, exactly where it is drawn."""
    for handle in front.handles:
        for hole in handle.holes:
            yield ShownFigure(front.label, f"{HOLE} of {handle_word([handle])}", place(hole, unit))
    for old in front.plugged:
        yield ShownFigure(front.label, f"{HOLE}, old", place(old, unit))
    if front.hinge is not None:
        for centre in front.hinge_centres:
            cup = cup_centre(front, centre, front.hinge.cup_from_edge)
            yield ShownFigure(front.label, f"{HOLE} of cup", place(cup, unit))


def _named(of: str, said: dict[str, str]) -> Iterator[ShownFigure]:
    return (ShownFigure(of, name, says) for name, says in said.items())
