"""What an installer needs to hang one door on its hinges, in words and figures."""

from collections.abc import Iterator

from fronts.figures.knobs import Line, knob_lines
from fronts.rules.kitchen import Hinged, Kitchen, Side
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front

PLATE_ROW = Mm(37)
"""From a cabinet side's front edge to its row of plate screws (common practice, no source)."""
PLATE_PITCH = Mm(32)
"""From one screw of a hinge plate to the next (common practice, no source)."""

_FROM_BACK: dict[Hinged, str] = {
    "left": "right", "right": "left", "top": "top", "bottom": "bottom",
}  # fmt: skip


def hinge_figures(front: Front, kitchen: Kitchen) -> list[Line]:
    """Hinges, their centres on the door, their plates in the opening, cups and knob."""
    return [*_hinges(front, kitchen), *knob_lines(front, None, kitchen)]


def plate_places(front: Front) -> list[Mm]:
    """Plate centres in the opening: up from its bottom, or from its left where a door swings up.

    The centre less the overlay, or plus the gap of an inset door. None: the edge is not known.
    """
    from_side: Side = "bottom" if is_upright(front) else "left"
    overlay = front.edges[from_side].overlay
    return [] if overlay is None else [each - overlay for each in front.hinge_centres]


def is_upright(front: Front) -> bool:
    """Whether the hinges stand one over another, at the door's left or right."""
    return front.hinged in ("left", "right")


def _hinges(front: Front, kitchen: Kitchen) -> Iterator[Line]:
    if not front.hinge_centres or front.hinged is None:
        return
    unit, practice = kitchen.job.unit, kitchen.practice
    back = _FROM_BACK[front.hinged]
    lying = f" ({back} as it lies on its face)" if back != front.hinged else ""
    cup = f"{show(practice.cup_diameter, 'mm')} mm cup, centre"
    inset = f"{show(practice.cup_from_edge, 'mm')} mm from the edge"
    yield Line("Hinges", str(front.hinges), f"at its {front.hinged}{lying}; {cup} {inset}")
    centres = _listed(list(front.hinge_centres), unit)
    yield Line("On the door", centres, _measured_from(front, "its"), key=True)
    plates = plate_places(front)
    if plates:
        opening = "the opening's"
        more = f"{_measured_from(front, opening)}; {_plate_row(front, kitchen)}"
        yield Line("Plates", _listed(plates, unit), more, key=True)


def _measured_from(front: Front, of: str) -> str:
    if is_upright(front):
        return f"up from {of} bottom"
    return f"from {of} left, seen from the front" + ("; from its right on its back" * (of == "its"))


def _plate_row(front: Front, kitchen: Kitchen) -> str:
    """Where the plates' screws go on a cabinet's side; on a frame their maker's sheet says."""
    row, pitch = show(PLATE_ROW, "mm"), show(PLATE_PITCH, "mm")
    behind = "behind the door" if front.plane == "inset" else "back"
    cabinet = next(each for each in kitchen.cabinets if each.label == front.cabinet)
    framed = "frame plates by their maker; " if cabinet.build == "face-frame" else ""
    return f"{framed}on a side {row} mm {behind}, {pitch} mm apart (practice)"


def _listed(places: list[Mm], unit: str) -> str:
    return " · ".join(show(each, unit) for each in places)
