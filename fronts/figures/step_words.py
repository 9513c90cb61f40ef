"""The words of each step of an order of work; those that depend on the fronts as functions.

A caution that belongs to one step stands in it, where the hand is.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from fronts.figures.knobs import handle_word
from fronts.figures.weights import needs_two_people
from fronts.rules.fitting_results import Fitting
from fronts.rules.hanging_method import HangingMethod
from fronts.rules.kinds import FRONT_KINDS, is_inset
from fronts.rules.kitchen import Kitchen
from fronts.rules.knob_fixing import has_own_hole
from fronts.rules.results import Front


@dataclass(frozen=True, slots=True)
class Hung:
    """The fronts that are hung in one way, with what their steps depend on."""

    fronts: Sequence[Front]
    fittings: Mapping[str, Fitting]
    kitchen: Kitchen

    def has_recess(self, front: Front) -> bool:
        """Whether the knob's screw hides its head behind the front, so that it goes on first."""
        fitting = self.fittings.get(front.label)
        screw = None if fitting is None else fitting.knob_screw
        return screw is not None and screw.recess is not None

    def named(self, fronts: Sequence[Front]) -> str:
        """`B2.a.1, B2.a.2: `; "" where all of them are meant."""
        if len(fronts) == len(self.fronts):
            return ""
        return f"{', '.join(each.label for each in fronts)}: "


def _handles(fronts: Sequence[Front]) -> str:
    return handle_word([handle for each in fronts for handle in each.handles])


Step: TypeAlias = str | Callable[[Hung], str]
"""A step's words, or how they come of the fronts; "" where there is nothing to do."""


def _fixed_first(hung: Hung) -> str:
    if not any(FRONT_KINDS[each.kind].tips for each in hung.fronts):
        return ""
    return "Cabinet fixed to the wall or weighted before it is loaded: it can tip."


def _knob_first(hung: Hung) -> str:
    recessed = [each for each in hung.fronts if each.knobs and hung.has_recess(each)]
    if not recessed:
        return ""
    return f"{hung.named(recessed)}Recess for its screw; {_handles(recessed)} on first."


def _pulled_first(hung: Hung) -> str:
    pulled = [each for each in hung.fronts if each.knobs]
    if not pulled:
        return ""
    return f"{hung.named(pulled)}Drill for its {_handles(pulled)}, and put it on, before it hangs."


def _cups(hung: Hung) -> str:
    """A door maker bores what is bought: that is held against the figures before it hangs."""
    bought = [each for each in hung.fronts if each.bought and each.hinge]
    own = [each for each in hung.fronts if each not in bought]
    if not bought:
        return "Bore the cups in its back, stop set."
    checked = f"{hung.named(bought)}Bored by its maker: check the cups."
    return f"{checked} {hung.named(own)}Bore the cups, stop set." if own else checked


def _lift(hung: Hung) -> str:
    heavy = [each for each in hung.fronts if needs_two_people(each)]
    return f"{hung.named(heavy)}Two people: over 20 kg (44 lb)." if heavy else ""


def _pull(hung: Hung) -> str:
    bare = [each for each in hung.fronts if is_inset(each.plane) and not _has_knob(hung, each)]
    if not bare:
        return ""
    return f"{hung.named(bare)}No handle yet: a pull of tape, or a screw in its hole."


def _has_knob(hung: Hung, front: Front) -> bool:
    """Whether there is a knob to pull at before the front hangs."""
    return bool(front.knobs) and (hung.has_recess(front) or has_own_hole(front, hung.kitchen))


def _knob(hung: Hung) -> str:
    knobbed = [each for each in hung.fronts if each.knobs and not hung.has_recess(each)]
    own = [each for each in knobbed if has_own_hole(each, hung.kitchen)]
    if not knobbed:
        return ""
    handle = _handles(knobbed)
    if not own:
        return f"{hung.named(knobbed)}Drill for the {handle} last, backing block behind."
    if len(own) == len(knobbed):
        return f"{hung.named(own)}{handle.capitalize()}: use the door's own hole."
    labels = ", ".join(each.label for each in own)
    return (
        f"{handle.capitalize()}: {labels} use the door's own hole; drill the rest last, "
        "backing block behind."
    )


_BOX_IN = "Box in, slides screwed, running true."
_BORE = "Bore the box front, stop set (see Drill)."
_PULL_OUT = "Box out; clamp the jig beneath."
_LEDGES = "Front on the ledges, at its offset; clamp."
_PILOT = "Pilot holes in its back, through the box."
_SCREW = "Screws from inside, centred, not tight."
_TRY = "Jig and clamps off; try it on a thin shim."
_TIGHTEN = "Open gently; tighten inside; try again."
_SIDES = "Side shims in, flush with the face; adjust."
_FIXED = "Cabinet fixed to the wall, plumb, level."
_STAYS = "Stays by their maker's sheet: fingers clear."
_HELD = "Hang it, outer hinges first; don't let go yet."
_REACH = "Adjust across, up and down, in and out."
_LAST = "Check the gaps and write them down."

_ON_BOX: tuple[Step, ...] = (_fixed_first, _BOX_IN, _BORE, _knob_first)
_SCREWED: tuple[Step, ...] = (_PILOT, _SCREW)
_TRIED: tuple[Step, ...] = (_TIGHTEN, _knob, _LAST)

STEPS: dict[HangingMethod, tuple[Step, ...]] = {
    "jig": (*_ON_BOX, _PULL_OUT, _lift, _LEDGES, *_SCREWED, _TRY, *_TRIED),
    "inset-jig": (
        *_ON_BOX, _PULL_OUT, _lift, _LEDGES, *_SCREWED, _pull, _TRY, _SIDES, *_TRIED,
    ),
    "packers": (
        *_ON_BOX,
        "Box out; clamp packers beneath, at both ends.",
        _lift,
        "Front level with their lower face; clamp.",
        *_SCREWED,
        "Packers and clamps off; try it on a thin shim.",
        *_TRIED,
    ),
    "shims": (
        *_ON_BOX,
        _lift,
        "Two bottom shims in, the front on them.",
        "Side shims in, flush with the face; clamp.",
        *_SCREWED, _pull,
        "Clamps off; try it on a thin shim.",
        *_TRIED,
    ),
    "no-jig": (
        *_ON_BOX, _lift,
        "Box out; front at its offset and height; clamp.",
        *_SCREWED,
        _pull,
        "Clamps off; try it on a thin shim.",
        *_TRIED,
    ),
    "hinges": (
        _FIXED, _cups,
        "Plates in the cabinet, at their heights.",
        _lift,
        "Hang the door, top hinge first; hold it.",
        _pull, _REACH, _knob, "Bumpers in the corners of the free side.", _LAST,
    ),
    "top-hung": (
        _FIXED, _cups,
        "Plates under the opening's top, from its left.",
        _lift,
        "A helper or prop holds the door to its plates.",
        _HELD, _STAYS, _pull, _REACH, _knob, "Bumpers in the bottom corners.", _LAST,
    ),
    "bottom-hung": (
        _FIXED, _cups,
        "Plates on the opening's bottom, from its left.",
        _lift,
        "A helper or prop holds the door open, level.",
        _HELD, _STAYS, _pull, _REACH, _knob, "Bumpers in the top corners.", _LAST,
    ),
    "tip-out": (
        _FIXED,
        "Its hinges by their maker's sheet; no cups.",
        _lift,
        "Hang it on both; springs: fingers clear.",
        "Try it past the sink; then its tray, short screws.",
        _pull, _knob, "Bumpers in the top corners.", _LAST,
    ),
    "machine": (
        "Machine in its place, level, fixed as it wants.",
        "Its template on the panel's back; bore by it.",
        _pulled_first, _lift,
        "Panel on the machine's own fixings; no hinges.",
        "Set it to its neighbours; fasten; open and close.",
        _LAST,
    ),
    "fixed": (
        _lift,
        "Set the front with shims to its gaps; clamp.",
        "Screw from behind; nothing through its face.",
        _LAST,
    ),
}  # fmt: skip
"""What is done in each way of hanging, in working order."""
