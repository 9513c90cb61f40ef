"""The order of work that a fitting sheet gives, by how a front is hung."""

from dataclasses import dataclass
from typing import Literal, TypeAlias

Way: TypeAlias = Literal["jig", "shims", "hinges", "fixed"]


@dataclass(frozen=True, slots=True)
class Work:
    """One way of hanging, its heading, and its steps in working order."""

    way: Way
    heading: str
    steps: tuple[str, ...]


_BOX_IN = "Box in, slides screwed, running true."
_BORE = "Bore the box front's holes; mind the stop."
_SCREW = "Screws from inside, centred in their holes."
_TRY = "Try it, not quite shut: thin shim behind."
_ADJUST = "Adjust in the holes, then tighten."
_KNOB = "Drill for the knob last, backing block behind."
_LAST = "Check the gaps and write them down below."

_WAYS: dict[Way, Work] = {
    "jig": Work("jig", "Order of work: front on a box, with the jig", (
        _BOX_IN,
        _BORE,
        "Clamp the jig under the box, ends in line.",
        "Front on the ledges, at its side offset; clamp.",
        _SCREW, _TRY, _ADJUST, _KNOB, _LAST,
    )),
    "shims": Work("shims", "Order of work: inset front on a box, with shims", (
        _BOX_IN,
        _BORE,
        "Lay two bottom shims, stand the front on them.",
        "Side shims in, front flush with the face; clamp.",
        _SCREW, _TRY, _ADJUST, _KNOB, _LAST,
    )),
    "hinges": Work("hinges", "Order of work: hinged door", (
        "Cabinet fixed to the wall, plumb and level.",
        "Bore the cups in the door's back; set a stop.",
        "Plates into the cabinet at the same heights.",
        "Hang the door, top hinge first; hold it.",
        "Adjust across, up and down, in and out.",
        _KNOB,
        "Bumpers in the corners of the free side.",
        _LAST,
    )),
    "fixed": Work("fixed", "Order of work: fixed front", (
        "Set the front with shims to its gaps; clamp.",
        "Screw from behind; nothing through its face.",
        _LAST,
    )),
}  # fmt: skip


def work_for(ways: frozenset[Way]) -> list[Work]:
    """The ways that a cabinet's fronts are hung, in the order they are done."""
    return [work for way, work in _WAYS.items() if way in ways]
