"""What the numbers of a hinge mean: a door on a cabinet's side, cut through level at its cup."""

from dataclasses import dataclass

from fronts.drawings.dimension import Chain, Piece, dimension_chain
from fronts.drawings.drawing import SCREEN, Drawing
from fronts.drawings.geometry import Area
from fronts.drawings.lettering import line_height
from fronts.drawings.scale import Scale
from fronts.rules.items import HingeItem
from fronts.rules.kinds import is_inset
from fronts.rules.lengths import NOTHING, Mm, write

SIDE, DOOR, DEEP = Mm(18), Mm(19), Mm(48)
"""A cabinet's side, a door and how much of the side is shown, where nothing is known of them."""
WIDE, SEEN_BORE, SEEN_PLATE, SEEN_LAP, SEEN_GAP = Mm(66), Mm(5), Mm(4), Mm(12), Mm(3)
_FINGER = Mm(9)
_SIZE, _NOTE = 11_00, 12_00
_ROW = 12_00


@dataclass(frozen=True, slots=True)
class _Seen:
    """A hinge as it is drawn; what it leaves out is drawn too, without a figure."""

    cup: Mm
    deep: Mm
    bore: Mm
    plate: Mm
    lap: Mm
    inset: bool


def hinge_item_drawing(hinge: HingeItem, unit: str) -> str:
    """The section as an `<svg>`, with the hinge's own figures where it has them."""
    seen, drawing = _seen(hinge), Drawing(SCREEN)
    scale = Scale(3_200)
    edge = SIDE - seen.lap
    low = NOTHING if seen.inset else -DOOR
    inner = low + DOOR
    drawing.rect("cabinet", scale.area(NOTHING, NOTHING, SIDE, DEEP))
    drawing.rect("front", scale.area(edge, low, WIDE, DOOR))
    cup = scale.area(edge + seen.bore, inner - seen.deep, seen.cup, seen.deep)
    drawing.rect("hidden", cup)
    foot = inner + _FINGER
    drawing.rect("box", scale.area(SIDE, foot, max(seen.plate, Mm(1)), DEEP - foot))
    _arm(drawing, scale, SIDE + seen.plate, foot, edge + seen.bore + seen.cup / 2, inner)
    _named(drawing, scale.area(NOTHING, NOTHING, SIDE, DEEP), "side")
    _named(drawing, scale.area(edge + seen.bore + seen.cup, low, Mm(20), DOOR), "door")
    _dimensions(drawing, scale, hinge, seen, unit)
    return drawing.svg(f"Hinge {hinge.code}", "hinge")


def _seen(hinge: HingeItem) -> _Seen:
    inset = is_inset(hinge.mount)
    bore, plate, lap = _bore(hinge), _plate(hinge), _lap(hinge)
    if lap is None:
        lap = -SEEN_GAP if inset else SEEN_LAP
    return _Seen(
        hinge.cup_diameter,
        hinge.cup_depth,
        SEEN_BORE if bore is None else bore,
        SEEN_PLATE if plate is None else plate,
        max(-WIDE / 4, min(SIDE, lap)),
        inset,
    )


def _bore(hinge: HingeItem) -> Mm | None:
    """Its usual B, else the least."""
    if hinge.usual_bore is None and hinge.bore is not None:
        return hinge.bore.least
    return hinge.usual_bore


def _plate(hinge: HingeItem) -> Mm | None:
    """Its first plate; one with a fixed distance that lists none stands on 0."""
    if hinge.plates or hinge.fixed_distance is None:
        return next(iter(hinge.plates), None)
    return NOTHING


def _lap(hinge: HingeItem) -> Mm | None:
    """What it makes on that plate with that B, else the first that it lists; inset below 0."""
    bore, plate = _bore(hinge), _plate(hinge)
    if hinge.fixed_distance is not None and bore is not None and plate is not None:
        return hinge.fixed_distance + bore - plate
    if hinge.overlays:
        return hinge.overlays[0]
    return -hinge.gaps[0] if hinge.gaps else None


def _arm(drawing: Drawing, scale: Scale, x: Mm, y: Mm, cup: Mm, inner: Mm) -> None:
    """The arm from the plate over the door's edge into the cup."""
    ends = [(x, y + _FINGER), (x + _FINGER, y + _FINGER), (cup, y), (cup, inner)]
    drawing.path("box", [(scale.x(one), scale.y(other)) for one, other in ends])


def _named(drawing: Drawing, area: Area, name: str) -> None:
    drawing.text(*area.middle, name, _NOTE, kind="note")


def _dimensions(drawing: Drawing, scale: Scale, hinge: HingeItem, seen: _Seen, unit: str) -> None:
    edge, low = SIDE - seen.lap, NOTHING if seen.inset else -DOOR
    rim = scale.x(edge + seen.bore)
    across = Chain("x", scale.y(low) + _ROW, 1, scale.y(low), _SIZE)
    outer = dimension_chain(drawing, across, [
        Piece(scale.x(edge), rim, _figure("B", _bore(hinge), unit)),
        Piece(rim, scale.x(edge + seen.bore + seen.cup),
              _figure("cup ⌀", seen.cup, unit)),
    ])  # fmt: skip
    lap = sorted((scale.x(edge), scale.x(SIDE)))
    word, made = "inset gap" if seen.inset else "overlay", _lap(hinge)
    chain = Chain("x", outer + _ROW // 2, 1, scale.y(low), _SIZE)
    dimension_chain(drawing, chain, [
        Piece(lap[0], lap[1], _figure(word, None if made is None else abs(made), unit)),
    ])  # fmt: skip
    right = scale.x(edge + WIDE)
    deep = Chain("y", right + _ROW, 1, right, _SIZE)
    inner = scale.y(low + DOOR)
    dimension_chain(drawing, deep, [
        Piece(inner, inner + scale.length(seen.deep),
              _figure("cup depth", seen.deep, unit)),
    ])  # fmt: skip
    top = scale.y(DEEP)
    above = Chain("x", top - _ROW, -1, top, _SIZE)
    dimension_chain(drawing, above, [
        Piece(scale.x(SIDE), scale.x(SIDE + max(seen.plate, Mm(1))),
              _figure("plate", _plate(hinge), unit)),
    ])  # fmt: skip
    _relation(drawing, hinge, unit)


def _relation(drawing: Drawing, hinge: HingeItem, unit: str) -> None:
    """How the overlay comes about, where it does so by plate and B."""
    if hinge.fixed_distance is None:
        return
    bounds = drawing.bounds()
    for line, text in enumerate((
        "overlay = FD + B − plate",
        f"FD {write(hinge.fixed_distance, unit)}: the overlay at B 0, plate 0",
    ), start=2):  # fmt: skip
        drawing.text(
            bounds.left,
            bounds.bottom + line * line_height(_NOTE),
            text,
            _NOTE,
            "start",
            kind="note",
        )


def _figure(says: str, length: Mm | None, unit: str) -> str:
    return says if length is None else f"{says} {write(length, unit)}"
