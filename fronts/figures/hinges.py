"""What an installer needs to hang one door on its hinges, in words and figures."""

from collections.abc import Iterator, Sequence

from fronts.figures.knobs import Line, knob_lines
from fronts.rules.hinge_drilling import PLATE_PITCH, PLATE_ROW, hinges_upright, plate_centres
from fronts.rules.kinds import CABINET_BUILDS, Hinged, is_inset
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front

_FROM_BACK: dict[Hinged, str] = {
    "left": "right", "right": "left", "top": "top", "bottom": "bottom",
}  # fmt: skip


def hinge_figures(front: Front, kitchen: Kitchen) -> list[Line]:
    """Hinges, their centres on the door, their plates in the opening, cups and knob."""
    return [*_hinges(front, kitchen), *knob_lines(front, None, kitchen)]


def _hinges(front: Front, kitchen: Kitchen) -> Iterator[Line]:
    if not front.hinge_centres or front.hinged is None:
        return
    unit, practice = kitchen.job.unit, kitchen.practice
    back = _FROM_BACK[front.hinged]
    lying = f" ({back} as it lies on its face)" if back != front.hinged else ""
    cup = f"{show(practice.cup_diameter, 'mm')} mm cup, centre"
    inset = f"{show(practice.cup_from_edge, 'mm')} mm from the edge"
    yield Line("Hinges", str(front.hinges), f"at its {front.hinged}{lying}; {cup} {inset}")
    centres = _listed(front.hinge_centres, unit)
    yield Line("On the door", centres, _measured_from(front, "its"), key=True)
    plates = plate_centres(front)
    if plates:
        opening = "the opening's"
        more = f"{_measured_from(front, opening)}; {_plate_row(front, kitchen)}"
        yield Line("Plates", _listed(plates, unit), more, key=True)


def _measured_from(front: Front, of: str) -> str:
    if hinges_upright(front):
        return f"up from {of} bottom"
    return f"from {of} left, seen from the front" + ("; from its right on its back" * (of == "its"))


def _plate_row(front: Front, kitchen: Kitchen) -> str:
    """Where the plates' screws go on a cabinet's side; on a frame their maker's sheet says."""
    row, pitch = show(PLATE_ROW, "mm"), show(PLATE_PITCH, "mm")
    behind = "behind the door" if is_inset(front.plane) else "back"
    build = CABINET_BUILDS[kitchen.cabinet(front.cabinet).build]
    framed = "frame plates by their maker; " if build.framed else ""
    return f"{framed}on a side {row} mm {behind}, {pitch} mm apart (practice)"


def _listed(places: Sequence[Mm], unit: str) -> str:
    return " · ".join(show(each, unit) for each in places)
