"""What an installer needs to hang one door on its hinges, in words and figures."""

from collections.abc import Iterator, Sequence

from fronts.figures.knobs import Line, knob_lines
from fronts.rules.hinge_drilling import PLATE_PITCH, PLATE_ROW, hinges_upright, plate_centres
from fronts.rules.hinge_results import DoorHinge
from fronts.rules.kinds import CABINET_BUILDS, Hinged, is_inset
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.lifts import choose_lift, moment
from fronts.rules.results import Front
from fronts.rules.swing_above import swing_top, swings_up

_FROM_BACK: dict[Hinged, str] = {
    "left": "right", "right": "left", "top": "top", "bottom": "bottom",
}  # fmt: skip


def hinge_figures(front: Front, kitchen: Kitchen) -> list[Line]:
    """Hinges, their centres on the door, their cups, their plates in the opening, and the knob."""
    return [
        *_hinges(front, kitchen), *_upwards(front, kitchen), *knob_lines(front, None, kitchen),
    ]  # fmt: skip


def _upwards(front: Front, kitchen: Kitchen) -> Iterator[Line]:
    """What holds a front that opens upwards, and how high it comes."""
    if not swings_up(front):
        return
    lifts = kitchen.hardware.lifts
    lift = choose_lift(moment(front.weight_kg, front.height), lifts)
    if lift is not None:
        named = f"{lift.code}, {lift.name}" if lift in lifts and lift.name else ""
        yield Line("Lift", named or lift.name or lift.code)
    top = show(swing_top(front, lifts), kitchen.job.unit)
    yield Line("Comes up to", top, "above the floor; nothing may hang lower")


def _hinges(front: Front, kitchen: Kitchen) -> Iterator[Line]:
    if not front.hinge_centres or front.hinged is None:
        return
    unit, hinge = kitchen.job.unit, front.hinge
    side = f"at its {front.hinged}"
    if _FROM_BACK[front.hinged] != front.hinged:
        side = "mirrored on its back"
    count = f"{front.hinges} pc, {hinge.code}" if hinge else str(front.hinges)
    yield Line("Hinges", count, side if hinge else f"{side}; none of the shop's fits", key=True)
    centres = _listed(front.hinge_centres, unit)
    yield Line("On the door", centres, _measured_from(front, "its"), key=True)
    if hinge is not None:
        size, place = _cups(hinge)
        yield Line("Cups", size, f"{place}; bored by the door maker" if front.bought else place)
    plates = plate_centres(front)
    if plates:
        opening = "opening's"
        high = ""
        if hinge is not None and hinge.plate is not None:
            high = f"; {show(hinge.plate, 'mm')} mm high"
        more = f"{_measured_from(front, opening)}; {_plate_row(front, kitchen)}{high}"
        yield Line("Plates", _listed(plates, unit), more, key=True)


def _cups(hinge: DoorHinge) -> tuple[str, str]:
    """How wide and deep, and where: B is from the door's edge to the cup's rim."""
    wide, deep = show(hinge.cup_diameter, "mm"), show(hinge.cup_depth, "mm")
    rim, centre = show(hinge.bore_from_edge, "mm"), show(hinge.cup_from_edge, "mm")
    return f"⌀ {wide} mm, {deep} deep", f"B {rim} mm, centre {centre} mm in"


def _measured_from(front: Front, of: str) -> str:
    if hinges_upright(front):
        return f"up from {of} bottom"
    return f"from {of} left, seen from the front" + ("; from its right on its back" * (of == "its"))


def _plate_row(front: Front, kitchen: Kitchen) -> str:
    """Where the plates' screws go on a cabinet's side; on a frame their maker's sheet says."""
    if CABINET_BUILDS[kitchen.cabinet(front.cabinet).build].framed:
        return "see their maker's sheet"
    row, pitch = show(PLATE_ROW, "mm"), show(PLATE_PITCH, "mm")
    behind = "behind the door" if is_inset(front.plane) else "back"
    return f"{row} mm {behind}, {pitch} mm apart (practice)"


def _listed(places: Sequence[Mm], unit: str) -> str:
    return " · ".join(show(each, unit) for each in places)
