"""A kitchen to a job file: what `read` takes back to exactly the same kitchen."""

import json
from collections.abc import Iterable
from dataclasses import fields
from typing import TypeAlias

from fronts.jobfile import doors, shop_numbers, shop_tables
from fronts.jobfile.read import VERSION
from fronts.rules import lengths
from fronts.rules.kitchen import (
    SIDES,
    Box,
    Cabinet,
    DoorOnHand,
    FrontWish,
    JobFacts,
    Kitchen,
    Opening,
    Point,
    Reveal,
    ShelfPins,
    Sides,
    Standard,
    Stock,
    Unit,
)
from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE, Practice

Json: TypeAlias = bool | int | str | list["Json"] | dict[str, "Json"] | None


def write(kitchen: Kitchen) -> str:
    """The job file, in UTF-8 text; what the kitchen leaves to others stays left out."""
    said = _Writer(kitchen.job.unit).kitchen(kitchen)
    return json.dumps(said, ensure_ascii=False, indent=1) + "\n"


class _Writer:
    def __init__(self, unit: Unit) -> None:
        self.unit = unit

    def kitchen(self, kitchen: Kitchen) -> Json:
        return {
            "version": VERSION,
            "job": self.job(kitchen.job),
            **_said("standard", self.standard(kitchen.standard)),
            **_said("doors_on_hand", [self.door(each) for each in kitchen.doors_on_hand]),
            "cabinets": [self.cabinet(each) for each in kitchen.cabinets],
            "stock": self.stock(kitchen.stock),
            **_said("practice", self.practice(kitchen.practice)),
        }

    def job(self, job: JobFacts) -> Json:
        return {
            "number": job.number,
            **_said("client", job.client),
            **_said("site", job.site),
            "unit": job.unit,
            "step": self.length(job.step),
            **_said("fit_on", job.fit_on.isoformat() if job.fit_on else None),
        }

    def standard(self, standard: Standard) -> dict[str, Json]:
        said: dict[str, Json] = {}
        for each in fields(Standard):
            match getattr(standard, each.name):
                case None:
                    continue
                case Sides() as sides:
                    said[each.name] = self.sides(sides)
                case Reveal(between, end):
                    said[each.name] = {"between": self.length(between), "end": self.sides(end)}
                case Mm() as length:
                    said[each.name] = self.length(length)
                case mount:
                    said[each.name] = mount
        return said

    def door(self, door: DoorOnHand) -> Json:
        said = self.given(door, "label", "width", "height", "thickness", "build")
        said |= self.given(door, "stile", "rail", "panel_thickness")
        if hole := door.knob_hole:
            usual = hole.diameter == doors.KNOB_HOLE
            said["knob_hole"] = self.given(hole, "x", "y", *(() if usual else ("diameter",)))
        said |= _said("hinge_bores", self.points(door.hinge_bores))
        if door.hinge_bores or door.bore_diameter != doors.BORE:
            said["bore_diameter"] = self.length(door.bore_diameter)
        return said | self.given(door, "material")

    def cabinet(self, cabinet: Cabinet) -> Json:
        return {
            **self.given(cabinet, "label", "kind", "build", "wall"),
            **self.given(cabinet, "x", "y", "width", "height", "depth"),
            "openings": [self.opening(each) for each in cabinet.openings],
            **_said("standard", self.standard(cabinet.standard)),
        }

    def opening(self, opening: Opening) -> Json:
        said = self.given(opening, "label", "x", "y", "width", "height", "closed_by", "hinged")
        if opening.closed_by == "drawers":
            said["count"] = opening.count
            said |= _said("heights", [self.maybe(each) for each in opening.heights])
        names = [each.name for each in fields(opening.measured)]
        said |= _said("measured", self.given(opening.measured, *names))
        said |= _said("front", self.front(opening.front))
        said |= self.boxes(opening)
        return said | _said("standard", self.standard(opening.standard))

    def front(self, front: FrontWish) -> dict[str, Json]:
        said = self.given(front, "door_on_hand", "width", "height", "thickness")
        said |= self.given(front, "build", "material")
        shifts = [each for each in ("shift_x", "shift_y") if getattr(front, each)]
        return said | self.given(front, *shifts)

    def boxes(self, opening: Opening) -> dict[str, Json]:
        boxes = [None if each is None else self.box(each) for each in opening.boxes]
        if opening.closed_by == "drawers":
            return _said("boxes", boxes)
        return _said("box", boxes[0] if boxes else None)

    def box(self, box: Box) -> Json:
        return {
            **self.given(box, "width", "height", "depth", "front_thickness", "rise"),
            **self.given(box, "side_clearance", "slide", "slide_width", "slide_height"),
            **_said("shelf_pins", [self.pins(each) for each in box.shelf_pins]),
        }

    def pins(self, pins: ShelfPins) -> Json:
        return {
            **self.given(pins, "x", "y", "pitch"),
            "count": pins.count,
            "diameter": self.length(pins.diameter),
        }

    def stock(self, stock: Stock) -> Json:
        return {
            "screw_lengths": self.lengths(stock.screw_lengths),
            "knob_screw_lengths": self.lengths(stock.knob_screw_lengths),
            "knob_thread": stock.knob_thread,
            "knob_thread_depth": self.length(stock.knob_thread_depth),
            "slide_lengths": self.lengths(stock.slide_lengths),
        }

    def practice(self, practice: Practice) -> dict[str, Json]:
        return {
            key: self.shop_number(key, getattr(practice, key))
            for key in shop_numbers.KEYS
            if getattr(practice, key) != getattr(PRACTICE, key)
        } | self.tables(practice)

    def tables(self, practice: Practice) -> dict[str, Json]:
        heights, weights = practice.hinges_by_height, practice.hinges_by_weight
        said: dict[str, Json] = {
            "hinges_by_height": [
                {shop_tables.HEIGHT: self.length(most), shop_tables.HINGES: hinges}
                for most, hinges in heights
            ],
            "hinges_by_weight": [
                {shop_tables.WEIGHT: lengths.exact(most), shop_tables.HINGES: hinges}
                for most, hinges in weights
            ],
            "slide_classes": [lengths.exact(each) for each in practice.slide_classes],
            "material": practice.material,
            "frame_material": practice.frame_material,
        }
        changed = (key for key in said if getattr(practice, key) != getattr(PRACTICE, key))
        return {key: said[key] for key in changed}

    def shop_number(self, key: str, value: Mm) -> str:
        return lengths.exact(value) if key in shop_numbers.PLAIN else self.length(value)

    def given(self, thing: object, *names: str) -> dict[str, Json]:
        """The named fields that say something: words as they are, lengths in the job's unit."""
        values = ((name, getattr(thing, name)) for name in names)
        return {
            name: self.length(value) if isinstance(value, Mm) else value
            for name, value in values
            if value is not None
        }

    def sides(self, sides: Sides[Mm]) -> Json:
        return {side: self.length(sides[side]) for side in SIDES}

    def points(self, points: Iterable[Point]) -> list[Json]:
        return [self.given(each, "x", "y") for each in points]

    def lengths(self, several: Iterable[Mm]) -> list[Json]:
        return [self.length(each) for each in several]

    def maybe(self, length: Mm | None) -> str | None:
        return None if length is None else self.length(length)

    def length(self, length: Mm) -> str:
        return lengths.write(length, self.unit)


def _said(key: str, value: Json) -> dict[str, Json]:
    """The key with its value; nothing where there is nothing to say."""
    return {key: value} if value else {}
