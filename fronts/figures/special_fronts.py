"""What an installer needs for a front that is fixed, tips out, or hangs on a machine."""

from collections.abc import Iterator

from fronts.figures.knobs import Line, knob_lines, pieces
from fronts.rules.finding_words import FindingWords
from fronts.rules.fitting_results import FixedScrews, Tray
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.machine_facts import Machine
from fronts.rules.results import Front
from fronts.rules.screws import screw_name


def special_figures(front: Front, kitchen: Kitchen) -> list[Line]:
    """Its screws, its hinges and tray, or its machine's limits; then its knob."""
    found: list[Line] = []
    unit = kitchen.job.unit
    if front.fixed_by is not None:
        found += _fixed(front.fixed_by, screw_name(kitchen.practice.screw_diameter), unit)
    if front.tray is not None:
        found += _tip_out(front.tray, unit)
    if front.machine is not None:
        found += _machine(front.machine, FindingWords(unit))
    return [*found, *knob_lines(front, None, kitchen)]


def _fixed(screws: FixedScrews, name: str, unit: str) -> Iterator[Line]:
    behind = f"from behind, through {show(screws.behind, unit)}"
    if screws.length is None:
        yield Line("Screws", "none in stock fits", behind)
    elif screws.count:
        yield Line("Screws", pieces(screws.count, name, show(screws.length, unit)), behind)


def _tip_out(tray: Tray, unit: str) -> Iterator[Line]:
    yield Line("Tip-out hinges", "1 pair", "no cups; by their maker's sheet", key=True)
    yield Line("Tray", f"at most {show(tray.length, unit)} long", "on its back")
    room = "measure up to the sink" if tray.room is None else f"measured {show(tray.room, unit)}"
    yield Line("Depth for it", show(tray.depth, unit), f"behind the front; {room}")


def _machine(machine: Machine, words: FindingWords) -> Iterator[Line]:
    yield Line("Fixed", "by the machine's template", "on its own fixings; no hinges")
    sizes = (
        ("wide", _span(machine.least_width, machine.most_width, words.unit)),
        ("high", _span(machine.least_height, machine.most_height, words.unit)),
    )
    takes = [f"{span} {way}" for way, span in sizes if span]
    if machine.most_kg is not None:
        takes.append(f"at most {words.say_weight(machine.most_kg)}")
    yield Line("Machine takes", ", ".join(takes) or "not known", "" if takes else "see its booklet")


def _span(least: Mm | None, most: Mm | None, unit: str) -> str:
    """`23 3/8 to 23 5/8`, or the end that is known."""
    if least is not None and most is not None:
        return f"{show(least, unit)} to {show(most, unit)}"
    if least is not None:
        return f"at least {show(least, unit)}"
    return "" if most is None else f"at most {show(most, unit)}"
