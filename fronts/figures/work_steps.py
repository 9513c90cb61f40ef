"""The order of work that a fitting sheet gives, by how a front is hung."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.figures.sizes import size
from fronts.figures.step_words import STEPS, Hung
from fronts.rules.fitting_results import Fitting
from fronts.rules.hanging_method import HangingMethod, hanging_method
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Front

HEADINGS: dict[HangingMethod, str] = {
    "jig": "front on a box, with the jig",
    "inset-jig": "inset front on a box, with the jig",
    "packers": "front on a box, with packers",
    "shims": "inset front on a box, with shims",
    "no-jig": "front on a box, without a jig",
    "hinges": "hinged door",
    "top-hung": "door hinged at its top",
    "bottom-hung": "door hinged at its bottom",
    "tip-out": "front that tips out",
    "machine": "panel on a machine",
    "fixed": "fixed front",
}


@dataclass(frozen=True, slots=True)
class Work:
    """One method of hanging: heading, steps in working order, and the other method if any."""

    method: HangingMethod
    heading: str
    steps: tuple[str, ...]
    other: str = ""


def work_for(
    fronts: Sequence[Front], fittings: Mapping[str, Fitting], kitchen: Kitchen
) -> list[Work]:
    """How these fronts are hung, in the order they are done, each with its fronts."""
    found = []
    methods = {each.label: hanging_method(each, fittings.get(each.label)) for each in fronts}
    several = len({each for each in methods.values() if each}) > 1
    for method in HEADINGS:
        here = [each for each in fronts if methods[each.label] == method]
        if not here:
            continue
        names = f"{', '.join(each.label for each in here)}, " if several else ""
        fits = [fit for each in here if (fit := fittings.get(each.label))]
        tape = _tape(kitchen) if any(each.tape.suggested for each in fits) else ""
        heading = f"Order of work: {names}{HEADINGS[method]}"
        found.append(Work(method, heading, _steps(method, Hung(here, fittings, kitchen)), tape))
    return found


def _steps(method: HangingMethod, hung: Hung) -> tuple[str, ...]:
    steps = (each if isinstance(each, str) else each(hung) for each in STEPS[method])
    return tuple(each for each in steps if each)


def _tape(kitchen: Kitchen) -> str:
    tape = size(kitchen.job.unit, kitchen.practice.tape_width, kitchen.practice.tape_thickness)
    return (
        f"Or foam tape {tape}: front set to its gaps, pressed on the box (there it stays); open, "
        "pilot, screw."
    )
