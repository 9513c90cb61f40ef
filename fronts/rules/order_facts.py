"""What a line of the hardware order depends on: its amounts, and facts of each front in it.

That is what somebody checks it against. Whatever is no part of these may change without
opening the line again: they are what its item was picked by (common practice, no source).
"""

import hashlib
import json
from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from functools import cached_property
from typing import Any, Literal

from fronts.rules.banded_edges import Banding
from fronts.rules.box_results import BoxOnSlide
from fronts.rules.lengths import exact
from fronts.rules.results import Front, Need, Schedule

COUNT = "count"
Figure = Literal["word", "length", "metric", "weight"]
FrontFacts = dict[str, str]
"""What is known of one front, by name; figures as exact text, lengths in mm, weights in kg."""
_NAME_LENGTH = 16


@dataclass(frozen=True, slots=True)
class FactKind:
    """A fact of a front that an item was picked by: of which thing, what it is called, its kind.

    `metric`: a length that is in millimetres wherever it is sold.
    """

    of: str
    says: str
    figure: Figure = "word"


FRONT_FACTS: Mapping[str, FactKind] = {
    "mount": FactKind("hinge", ""),
    "overlay": FactKind("hinge", "overlay", "length"),
    "hinge": FactKind("hinge", ""),
    "plate": FactKind("hinge", "mm plate", "metric"),
    "bore": FactKind("hinge", "mm from the edge to the cup", "metric"),
    "cup": FactKind("hinge", "mm cup", "metric"),
    "cup deep": FactKind("hinge", "mm deep cup", "metric"),
    "lift": FactKind("lift", ""),
    "high": FactKind("front", "high", "length"),
    "weight": FactKind("front", "heavy", "weight"),
    "slide": FactKind("slide", ""),
    "runs": FactKind("slide", ""),
    "long": FactKind("slide", "long", "length"),
    "carries": FactKind("slide", "load class", "weight"),
    "load": FactKind("box", "expected in it", "weight"),
    "handle": FactKind("handle", ""),
    "apart": FactKind("handle", "from hole to hole", "length"),
    "thread": FactKind("handle", "thread"),
    "band thick": FactKind("band", "thick", "length"),
    "band wide": FactKind("band", "wide", "length"),
}
"""Every fact but how many a front takes, in the order in which a change of it is told."""


@dataclass(frozen=True)
class LineFacts:
    """A line of the order: how many, spares beside them, of which unit; each front by its label.

    A front's facts hold how many it takes under `COUNT`.
    """

    need: int
    spares: int = 0
    unit: str = ""
    fronts: Mapping[str, FrontFacts] = field(default_factory=dict)

    @property
    def amount(self) -> int:
        """How many are ordered."""
        return self.need + self.spares

    def share(self, front: str) -> Fraction:
        """How many of them a front takes."""
        return Fraction(self.fronts[front][COUNT]) if front in self.fronts else Fraction(0)

    @property
    def as_json(self) -> dict[str, Any]:
        """It as it is kept; `line_facts_from` reads it again."""
        fronts = {label: dict(facts) for label, facts in self.fronts.items()}
        return {"need": self.need, "spares": self.spares, "unit": self.unit, "fronts": fronts}

    @cached_property
    def short_name(self) -> str:
        """The same for a line that says exactly this."""
        return short_name_of([json.dumps(self.as_json, sort_keys=True)])


NOTHING_NEEDED = LineFacts(0)


def line_facts_from(kept: Mapping[str, Any]) -> LineFacts:
    """A line as it was kept."""
    return LineFacts(kept["need"], kept["spares"], kept["unit"], kept["fronts"])


def short_name_of(texts: Iterable[str]) -> str:
    """A name for exactly these texts in this order, to tell that somebody saw them."""
    return hashlib.sha256(repr(list(texts)).encode()).hexdigest()[:_NAME_LENGTH]


def order_facts(schedule: Schedule) -> dict[str, LineFacts]:
    """What each line of the schedule's hardware depends on, by its item."""
    fronts = {front.label: front for front in schedule.fronts}
    boxes = {box.front: box for box in schedule.boxes}
    banded: dict[str, list[Banding]] = defaultdict(list)
    for part in schedule.parts:
        if part.banding:
            banded[part.front].append(part.banding)
    return {
        need.item: LineFacts(
            need.need,
            need.spares,
            need.unit,
            {
                label: {COUNT: exact(Fraction(count))}
                | _front_facts(need, fronts.get(label), boxes.get(label), banded[label])
                for label, count in need.per_front.items()
            },
        )
        for need in schedule.hardware
    }


def _front_facts(
    need: Need, front: Front | None, box: BoxOnSlide | None, banded: Iterable[Banding]
) -> FrontFacts:
    if need.is_screw or front is None:
        return {}
    match need.group:
        case "hinge":
            found = _hinge(front)
        case "slides":
            found = _slide(box) if box is not None else iter(())
        case "knob":
            found = _handle(front)
        case "lift":
            found = _lift(need, front)
        case "edge band":
            found = _band(need, banded)
        case _:
            found = iter(())
    return {name: _text(value) for name, value in found if value not in (None, "")}


def _hinge(front: Front) -> Iterator[tuple[str, Any]]:
    """A hinge is picked by how the door is mounted and by its overlay."""
    yield "mount", front.plane
    yield "overlay", front.edges[front.hinged].overlay if front.hinged else None
    if front.hinge is not None:
        yield "hinge", front.hinge.code
        yield "plate", front.hinge.plate
        yield "bore", front.hinge.bore_from_edge
        yield "cup", front.hinge.cup_diameter
        yield "cup deep", front.hinge.cup_depth


def _slide(box: BoxOnSlide) -> Iterator[tuple[str, Any]]:
    yield "slide", box.slide
    yield "runs", box.kind
    yield "long", box.slide_length
    yield "carries", box.class_kg
    yield "load", box.load_kg


def _handle(front: Front) -> Iterator[tuple[str, Any]]:
    first = front.handles[0] if front.handles else None
    if first is not None:
        yield "handle", first.code
        yield "thread", first.thread
        across = first.holes[-1].x - first.holes[0].x
        up = first.holes[-1].y - first.holes[0].y
        yield "apart", max(abs(across), abs(up)) or None


def _lift(need: Need, front: Front) -> Iterator[tuple[str, Any]]:
    """A lift is picked by the front's weight times its height."""
    yield "lift", need.code
    yield "high", front.height
    yield "weight", front.weight_kg


def _band(need: Need, banded: Iterable[Banding]) -> Iterator[tuple[str, Any]]:
    bands = (band for banding in banded for _, band, _ in banding.edges())
    band = next((band for band in bands if band.code == need.code), None)
    if band is not None:
        yield "band thick", band.thickness
        yield "band wide", band.width


def _text(value: Any) -> str:
    return exact(value) if isinstance(value, Fraction) else str(value)
