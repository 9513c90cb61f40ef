"""Changes as a test says them: only what changes, by the names of columns; the rest stays."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from typing import Any

from fronts.facts.rows import column_names, columns_of, from_row, from_values
from fronts.models import Box, Cabinet, DoorOnHand, Front, Opening, Stock
from fronts.rules.box_facts import Box as BoxFacts
from fronts.rules.box_facts import ShelfPins
from fronts.rules.kinds import CLOSINGS
from fronts.rules.kitchen import CHOOSE, FrontFacts, Point
from fronts.rules.kitchen import Cabinet as CabinetFacts
from fronts.rules.kitchen import DoorOnHand as DoorFacts
from fronts.rules.kitchen import Opening as OpeningFacts
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Standard
from fronts.selectors.kitchens import opening_of
from fronts.services import boxes, cabinets, openings, standards, stock, things
from fronts.services.standards import Level, Owner
from fronts.snapshot.standards import standard_of
from fronts.snapshot.stock import stock_in_force
from fronts.snapshot.things import at_hand, bare
from shopjobs.models import Job, Person, Shop
from shopjobs.services import jobs

LAPS = {"overlay": "reveal", "reveal": "overlay"}
_OF_FRONTS = ("width", "height", "thickness", "build", "material")
_ABOUT_FRONTS = (
    *(f"front_{name}" for name in _OF_FRONTS), "front_door", "front_choose", "hinged", "count",
    "heights", "shift_x", "shift_y",
)  # fmt: skip


def client_set(job: Job, client: str, at: datetime, by: Person) -> Job:
    """The job is for another client."""
    said = {name: getattr(job, name) for name in ("number", "unit", "step", "fit_on")}
    said |= {"client": client, "site": job.site_address, "responsible": job.responsible_id}
    return jobs.job_change(job=job, at=at, by=by, **said)


def standard_set(*, owner: Owner, at: datetime, by: Person | None = None, **said: Any) -> Level:
    """A level says this too; an overlay lets go of the reveal, and the other way round."""
    _only_known(said, Standard)
    held = columns_of(standard_of(standards.level_of(owner)))
    for lap, other in LAPS.items():
        if f"{lap}_left" in said and f"{other}_left" not in said:
            held |= {name: None for name in held if name.startswith(f"{other}_")}
    standard = from_values(Standard, held | said)
    return standards.standard_set(owner=owner, standard=standard, at=at, by=by)


def stock_set(*, owner: Shop | Job, at: datetime, by: Person | None = None, **said: Any) -> Stock:
    """The shelf holds this, the rest as before."""
    told: dict[str, Any] = {
        name: tuple(value) if isinstance(value, list) else value for name, value in said.items()
    }
    return stock.stock_set(owner=owner, stock=replace(stock_in_force(owner), **told), at=at, by=by)


def cabinet_create(*, job: Job, at: datetime, by: Person | None = None, **said: Any) -> Cabinet:
    """A cabinet of these columns."""
    _only_known(said, CabinetFacts)
    values = columns_of(Standard()) | said
    facts = from_values(CabinetFacts, values, openings=())
    return cabinets.cabinet_create(job=job, facts=facts, at=at, by=by)


def cabinet_change(
    *, cabinet: Cabinet, at: datetime, by: Person | None = None, **said: Any
) -> Cabinet:
    """The cabinet is otherwise in this."""
    _only_known(said, CabinetFacts)
    values = columns_of(bare(cabinet)) | said
    facts = from_values(CabinetFacts, values, openings=())
    return cabinets.cabinet_change(cabinet=cabinet, facts=facts, at=at, by=by)


def opening_create(
    *, cabinet: Cabinet, at: datetime, by: Person | None = None, **said: Any
) -> Opening:
    """An opening of these columns, and fronts of which this is said."""
    nowhere = Mm(0)
    bare = OpeningFacts("", nowhere, nowhere, nowhere, nowhere, closed_by=said["closed_by"])
    facts = _otherwise(bare, said)
    return openings.opening_create(cabinet=cabinet, facts=facts, at=at, by=by)


def opening_change(
    *,
    opening: Opening,
    at: datetime,
    by: Person | None = None,
    **said: Any,
) -> Opening:
    """The opening, or each of its fronts, is otherwise in this."""
    row = opening_of(opening.cabinet.job, opening.pk)
    facts = _otherwise(at_hand(row), said)
    changed = openings.opening_change(opening=row, facts=facts, at=at, by=by)
    opening.refresh_from_db()
    return changed


def _otherwise(held: OpeningFacts, said: Mapping[str, Any]) -> OpeningFacts:
    """The opening with what is said; what is said of a front is said of each."""
    _only_known(said, OpeningFacts, *_ABOUT_FRONTS)
    # A word that no opening is closed by is refused by the service, which is what a test is after.
    closing = CLOSINGS.get(said.get("closed_by", held.closed_by), CLOSINGS["open"])
    count = said.get("count", len(held.fronts)) if closing.stack else closing.fronts[0]
    heights = said.get("heights") or [None] * count
    together = _of_each_front(said)
    fronts = [replace(front, **together) for front in (*held.fronts, *[FrontFacts()] * count)]
    if "heights" in said:
        fronts = [
            replace(front, own_height=height)
            for front, height in zip(fronts, heights, strict=False)
        ]
    columns = columns_of(held)
    own = {name: value for name, value in said.items() if name in columns}
    return from_values(OpeningFacts, columns | own, fronts=tuple(fronts[:count]))


def _of_each_front(said: Mapping[str, Any]) -> dict[str, Any]:
    facts = {name: said[f"front_{name}"] or None for name in _OF_FRONTS if f"front_{name}" in said}
    facts |= {name: said[name] for name in ("shift_x", "shift_y") if name in said}
    if "hinged" in said:
        facts["hinged"] = said["hinged"] or None
    if "front_door" in said:
        facts["door_on_hand"] = said["front_door"] and said["front_door"].label
    if "front_choose" in said:
        facts["door_on_hand"] = CHOOSE if said["front_choose"] else None
    return facts


def front_of(opening: Opening, index: int = 0) -> Front:
    """A front of the opening, from the left or the top."""
    return Front.objects.select_related("opening__cabinet__job").get(
        opening=opening, position=index
    )


def box_set(
    *, opening: Opening, at: datetime, index: int = 0, by: Person | None = None, **said: Any
) -> Box:
    """The box behind a front is so, the rest as before."""
    _only_known(said, BoxFacts)
    front = front_of(opening, index)
    row = Box.objects.filter(front=front).first()
    held = columns_of(bare(row)) if row else _nothing(BoxFacts)
    pins = row.shelf_pins.order_by("position") if row else ()
    rows = tuple(from_row(ShelfPins, pin) for pin in pins)
    facts = from_values(BoxFacts, held | said, shelf_pins=rows)
    return boxes.box_enter(front=front, facts=facts, at=at, by=by)


def shelf_pins_set(
    *, box: Box, rows: Sequence[ShelfPins], at: datetime, by: Person | None = None
) -> Box:
    """The box's front has these rows of holes."""
    facts = replace(bare(box), shelf_pins=tuple(rows))
    return boxes.box_enter(front=box.front, facts=facts, at=at, by=by)


def door_create(
    *,
    job: Job,
    at: datetime,
    hinge_bores: Sequence[Point] = (),
    by: Person | None = None,
    **said: Any,
) -> DoorOnHand:
    """A door on hand of these columns."""
    _only_known(said, DoorFacts)
    values = _nothing(DoorFacts) | said
    facts = from_values(DoorFacts, values, hinge_bores=tuple(hinge_bores))
    made: DoorOnHand = things.thing_create(job=job, facts=facts, at=at, by=by)
    return made


def door_change(
    *,
    door: DoorOnHand,
    at: datetime,
    hinge_bores: Sequence[Point] | None = None,
    by: Person | None = None,
    **said: Any,
) -> DoorOnHand:
    """The door is otherwise in this."""
    _only_known(said, DoorFacts)
    held = at_hand(door)
    bores = held.hinge_bores if hinge_bores is None else tuple(hinge_bores)
    facts = from_values(DoorFacts, columns_of(held) | said, hinge_bores=bores)
    things.thing_change(row=door, facts=facts, at=at, by=by)
    return door


def _only_known(said: Mapping[str, Any], kind: type, *also: str) -> None:
    """A test that says something of no fact would say nothing, unseen."""
    unknown = said.keys() - {*column_names(kind).values(), *also}
    if unknown:
        raise TypeError(f"{kind.__name__} has no {', '.join(sorted(unknown))}")


def _nothing(kind: type) -> dict[str, Any]:
    return dict.fromkeys(column_names(kind).values())
