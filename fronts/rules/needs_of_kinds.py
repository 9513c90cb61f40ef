"""Hardware that goes with a kind of front: tip-outs, fixed ones, flaps, glass, tape for boxes.

What is bought by length is counted in feet or metres. Counts are the shop's numbers or
common practice, no source.
"""

from collections.abc import Iterator
from typing import Any

from fronts.rules.buying_names import STOP, TAPE
from fronts.rules.finding_words import FindingWords
from fronts.rules.fitting_results import Fitting
from fronts.rules.glass import pane_in, panes_in, stops_round
from fronts.rules.kinds import FRONT_KINDS, Unit
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import BOUGHT_IN, UNITS, Mm
from fronts.rules.need_lines import NeedLine
from fronts.rules.parts import has_panel
from fronts.rules.practice import Practice
from fronts.rules.results import Front
from fronts.rules.screws import screw_name

TAPE_STRIPS = 2
"""One along each side of a box's front."""


def for_kind(
    front: Front, fitting: Fitting | None, kitchen: Kitchen, words: FindingWords
) -> Iterator[NeedLine]:
    """All that the front needs for being what it is."""
    yield from _tip_out(front, words)
    yield from _flap(front)
    yield from _glass(front, kitchen, words)
    yield from _fixed(front, kitchen.practice, words)
    if fitting is not None and fitting.tape.suggested:
        yield from _tape(front, fitting, kitchen.practice, words)


def _tip_out(front: Front, words: FindingWords) -> Iterator[NeedLine]:
    if not FRONT_KINDS[front.kind].tips_out:
        return
    yield NeedLine(
        "tip-out", "tip-out hinges, pair", front.label, 1, "one pair a front that tips out",
        spared=False,
    )  # fmt: skip
    if front.tray is not None:
        tray = f"tip-out tray, at most {words.say(front.tray.length)} long"
        deep = f"goes in between the opening's sides; about {words.say(front.tray.depth)} deep"
        yield NeedLine("tip-out", tray, front.label, 1, deep, spared=False)


def _flap(front: Front) -> Iterator[NeedLine]:
    if FRONT_KINDS[front.kind].swings and front.hinged == "bottom":
        why = "holds a door that opens downwards"
        yield NeedLine("lift", "flap stay", front.label, 1, why, spared=False)


def _fixed(front: Front, practice: Practice, words: FindingWords) -> Iterator[NeedLine]:
    screws = front.fixed_by
    if screws is None or not screws.count:
        return
    length = "none in stock fits" if screws.length is None else words.say(screws.length)
    item = f"{screw_name(practice.screw_diameter)} washer-head screw, {length}"
    why = f"{screws.count} a fixed front, from behind through {words.say(screws.behind)}"
    yield NeedLine("mounting screw", item, front.label, screws.count, why, is_screw=True)


def _tape(
    front: Front, fitting: Fitting, practice: Practice, words: FindingWords
) -> Iterator[NeedLine]:
    size = f"{words.say(practice.tape_width)} × {words.say(practice.tape_thickness)}"
    length = TAPE_STRIPS * fitting.box_height
    why = "in place of jig and clamps: a strip along each side of the box's front"
    yield NeedLine(
        "foam tape", f"{TAPE} {size}", front.label, why=why, **_by_length(length, words.unit)
    )


def _glass(front: Front, kitchen: Kitchen, words: FindingWords) -> Iterator[NeedLine]:
    """The panes of a new front, and the stops that hold them."""
    frame, practice = (front.width, front.height, front.stile, front.rail), kitchen.practice
    if not front.glass or not front.is_new or not has_panel(*frame, practice):
        return
    across, up = pane_in(*frame, practice)
    count = panes_in(front.height, practice)
    pane = f"glass {words.say(across)} × {words.say(up)}, {words.say(front.panel_thickness)}"
    why = "the opening in the frame + 2 × (rabbet − play), held by stops"
    yield NeedLine("glass", pane, front.label, count, why, spared=False, kind="glass")
    length = count * stops_round(across, up)
    yield NeedLine(
        "glass", STOP, front.label, why="round each pane, mitred", **_by_length(length, words.unit)
    )


def _by_length(length: Mm, unit: Unit) -> dict[str, Any]:
    """So many feet or metres, and which."""
    return {"count": length / UNITS[BOUGHT_IN[unit]], "unit": BOUGHT_IN[unit]}
