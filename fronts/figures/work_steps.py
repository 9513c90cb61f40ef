"""The order of work that a fitting sheet gives, by how a front is hung."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.figures.knobs import has_own_hole
from fronts.figures.sizes import size
from fronts.rules.hanging_method import HangingMethod, hanging_method
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Fitting, Front

HEADINGS: dict[HangingMethod, str] = {
    "jig": "front on a box, with the jig",
    "inset-jig": "inset front on a box, with the jig",
    "shims": "inset front on a box, with shims",
    "no-jig": "front on a box, without a jig",
    "hinges": "hinged door",
    "top-hung": "door hinged at its top",
    "bottom-hung": "door hinged at its bottom",
    "fixed": "fixed front",
}

_KNOB = "<knob>"
_BOX_IN = "Box in, slides screwed, running true."
_BORE = "Bore the box front's holes (stop: see Drill)."
_PULL = "Pull the box out; clamp the jig beneath."
_LEDGES = "Front on the ledges, at its side offset; clamp."
_PILOT = "Pilot holes in its back, through the box's."
_SCREW = "Screws from inside, centred; not yet tight."
_OFF = "Jig and clamps off; close the box."
_TRY = "Try it, thin shim behind; adjust; tighten."
_SIDES = "Side shims in, flush with the face; tighten."
_FIXED = "Cabinet fixed to the wall, plumb and level."
_CUPS = "Bore the cups in the door's back; set a stop."
_REACH = "Adjust across, up and down, in and out."
_LAST = "Check the gaps and write them down."

_STEPS: dict[HangingMethod, tuple[str, ...]] = {
    "jig": (
        _BOX_IN, _BORE, _PULL, _LEDGES, _PILOT, _SCREW, _OFF, _TRY, _KNOB, _LAST,
    ),
    "inset-jig": (
        _BOX_IN, _BORE, _PULL, _LEDGES, _PILOT, _SCREW, _OFF, _SIDES, _KNOB, _LAST,
    ),
    "shims": (
        _BOX_IN,
        _BORE,
        "Two bottom shims in, the front on them.",
        "Side shims in, flush with the face; clamp.",
        _PILOT, _SCREW,
        "Clamps off; try it; adjust, flush; tighten.",
        _KNOB, _LAST,
    ),
    "no-jig": (
        _BOX_IN, _BORE,
        "Box out; front at its offset and height; clamp.",
        _PILOT, _SCREW,
        "Clamps off; close the box.",
        _TRY, _KNOB, _LAST,
    ),
    "hinges": (
        _FIXED, _CUPS,
        "Plates in the cabinet, at their own heights.",
        "Hang the door, top hinge first; hold it.",
        _REACH, _KNOB, "Bumpers in the corners of the free side.", _LAST,
    ),
    "top-hung": (
        _FIXED, _CUPS,
        "Plates under the opening's top, from its left.",
        "A helper or prop holds the door to its plates.",
        "Hang it, outer hinges first; don't let go yet.",
        "Stay by its maker's sheet; it carries the door.",
        _REACH, _KNOB, "Bumpers in the bottom corners.", _LAST,
    ),
    "bottom-hung": (
        _FIXED, _CUPS,
        "Plates on the opening's bottom, from its left.",
        "A helper or prop holds the door open, level.",
        "Hang it, outer hinges first; don't let go yet.",
        "Stays by their maker's sheet; they carry it.",
        _REACH, _KNOB, "Bumpers in the top corners.", _LAST,
    ),
    "fixed": (
        "Set the front with shims to its gaps; clamp.",
        "Screw from behind; nothing through its face.",
        _LAST,
    ),
}  # fmt: skip


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
        found.append(Work(method, heading, _steps(method, here, kitchen), tape))
    return found


def _steps(method: HangingMethod, fronts: Sequence[Front], kitchen: Kitchen) -> tuple[str, ...]:
    steps = (_knob(fronts, kitchen) if each == _KNOB else each for each in _STEPS[method])
    return tuple(each for each in steps if each)


def _tape(kitchen: Kitchen) -> str:
    tape = size(kitchen.job.unit, kitchen.practice.tape_width, kitchen.practice.tape_thickness)
    return (
        f"Or foam tape {tape}: front set to its gaps, pressed on the box (there it stays); open, "
        "pilot, screw."
    )


def _knob(fronts: Sequence[Front], kitchen: Kitchen) -> str:
    knobbed = [each for each in fronts if each.knobs]
    own = [each.label for each in knobbed if has_own_hole(each, kitchen)]
    if not knobbed:
        return ""
    if not own:
        return "Drill for the knob last, backing block behind."
    if len(own) == len(knobbed):
        return "Knob: use the door's own hole."
    return f"Knob: {', '.join(own)} use the door's own hole; drill the rest last, block behind."
