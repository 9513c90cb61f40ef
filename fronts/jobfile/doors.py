"""Doors on hand, as a job file gives them."""

from fronts.jobfile import sizes, values, words
from fronts.jobfile.reader import Place, Record
from fronts.rules.kitchen import CHOOSE, DoorOnHand, KnobHole, Point
from fronts.rules.lengths import INCH, Mm

KEYS = (
    "label", "width", "height", "thickness", "build", "stile", "rail", "panel_thickness",
    "knob_hole", "hinge_bores", "bore_diameter", "material",
)  # fmt: skip
MOST_DOORS = 5000
MOST_BORES = 50
THICKNESS = INCH * 3 / 4
KNOB_HOLE = INCH * 3 / 16
BORE = Mm(35)


def doors(record: Record) -> tuple[DoorOnHand, ...]:
    """The doors of key `doors_on_hand`, each under a label of its own."""
    found: list[DoorOnHand] = []
    labels: set[str] = set()
    for place in record.entries("doors_on_hand", MOST_DOORS):
        entry = Record(place, KEYS)
        door = _door(entry)
        if entry.sound("label"):
            if door.label in labels:
                entry.fault("label", "a label that no other door has")
            labels.add(door.label)
        found.append(door)
    return tuple(found)


def _door(record: Record) -> DoorOnHand:
    door = DoorOnHand(
        label=record.need("label", values.label(), "", "a label"),
        width=sizes.needed(record, "width"),
        height=sizes.needed(record, "height"),
        thickness=sizes.given_or(record, "thickness", THICKNESS),
        build=record.take("build", values.one_of(words.FRONT_BUILDS)) or "slab",
        stile=sizes.given(record, "stile"),
        rail=sizes.given(record, "rail"),
        panel_thickness=sizes.given(record, "panel_thickness"),
        knob_hole=record.take("knob_hole", _knob_hole),
        hinge_bores=tuple(_bore(each) for each in record.entries("hinge_bores", MOST_BORES)),
        bore_diameter=sizes.given_or(record, "bore_diameter", BORE),
        material=record.take("material", values.text(values.LONGEST_MATERIAL)) or None,
    )
    if door.label == CHOOSE:
        record.fault("label", f"a label other than the word {CHOOSE}")
    if record.sound("width", "height"):
        _check_on_door(record, door)
    return door


def _knob_hole(place: Place) -> KnobHole:
    record = Record(place, ("x", "y", "diameter"))
    return KnobHole(
        x=sizes.needed(record, "x", sizes.OR_ZERO),
        y=sizes.needed(record, "y", sizes.OR_ZERO),
        diameter=sizes.given_or(record, "diameter", KNOB_HOLE),
    )


def _bore(place: Place) -> Point:
    record = Record(place, ("x", "y"))
    return Point(
        sizes.needed(record, "x", sizes.OR_ZERO),
        sizes.needed(record, "y", sizes.OR_ZERO),
    )


def _check_on_door(record: Record, door: DoorOnHand) -> None:
    """What is in the door lies on it."""
    on_it = "a place on the door"
    if door.knob_hole and not _on(door, door.knob_hole):
        record.fault("knob_hole", on_it, "a place outside the door")
    places = record.entries("hinge_bores", MOST_BORES)
    for place, bore in zip(places, door.hinge_bores, strict=False):
        if not _on(door, bore):
            place.fault(on_it, "a place outside the door")
    if door.stile and record.sound("stile") and 2 * door.stile >= door.width:
        record.fault("stile", "less than half the door's width")
    if door.rail and record.sound("rail") and 2 * door.rail >= door.height:
        record.fault("rail", "less than half the door's height")


def _on(door: DoorOnHand, place: KnobHole | Point) -> bool:
    return place.x <= door.width and place.y <= door.height
