"""What is bored into a front's back beside its mounting holes, each drawn and named."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.drawings.drawing import Anchor, text_area
from fronts.drawings.front_view import CROSS, NOTE, View, cross, free
from fronts.figures.knobs import handle_word
from fronts.rules.hinge_drilling import cup_centre
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm


@dataclass(frozen=True, slots=True)
class _Bore:
    """What is bored at a place, by its name; what is `old` is plugged."""

    place: Point
    diameter: Mm
    name: str
    old: bool = False


def bored(view: View) -> None:
    """Handles' holes, old bores and hinge cups; each named where its name is free to stand."""
    bores = list(_bores(view))
    for bore in bores:
        _ring(view, bore)
    for bore in bores:
        _name(view, bore)


def _bores(view: View) -> Iterator[_Bore]:
    front = view.front
    for handle in front.handles:
        for hole in handle.holes:
            yield _Bore(hole, view.bores.knob, handle_word([handle]))
    for place in front.plugged:
        yield _Bore(place, view.bores.cup, "old bore", old=True)
    if front.hinge is None:
        return
    for centre in front.hinge_centres:
        place = cup_centre(front, centre, front.hinge.cup_from_edge)
        yield _Bore(place, front.hinge.cup_diameter, "cup")


def _ring(view: View, bore: _Bore) -> None:
    x, y = view.seen(bore.place)
    radius = view.ring(bore.diameter)
    view.drawing.circle("hidden" if bore.old else "cabinet", x, y, radius)
    cross(view.drawing, x, y, max(radius, min(radius + CROSS, view.reach)))


def _name(view: View, bore: _Bore) -> None:
    drawing, front = view.drawing, view.front
    x, y = view.seen(bore.place)
    radius = view.ring(bore.diameter)
    inside = view.scale.area(Mm(0), Mm(0), front.width, front.height).grown(-3_00)
    anchor: Anchor
    inwards = -1 if x > inside.middle[0] else 1
    beside = x + inwards * (radius + CROSS + 3_00)
    for at, down, anchor in (
        (x, radius + NOTE, "middle"),
        (x, -radius - NOTE, "middle"),
        (beside, 0, "end" if inwards < 0 else "start"),
    ):
        if free(drawing, text_area(at, y + down, bore.name, NOTE, anchor), inside):
            drawing.text(at, y + down, bore.name, NOTE, anchor, kind="note")
            return
