"""Items in their lists: what each is, in one line a kind."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, cast

from fronts.rules.finding_words import FindingWords
from fronts.rules.item_kinds import HANDLE_WAYS, HINGE_FRAMES
from fronts.rules.items import BandItem, HandleItem, HingeItem, LiftItem, SlideItem, Span
from fronts.rules.kinds import MOUNTS, SLIDES, Unit, words_of
from fronts.rules.lengths import Mm, terminating, write


@dataclass(frozen=True, slots=True)
class ItemRow:
    """One item as its list shows it; `key` is None of one that is not kept anywhere."""

    code: str
    name: str
    what: str
    notes: tuple[str, ...]
    key: int | None = None
    first: bool = False
    last: bool = False


def item_rows(items: Sequence[Any], unit: str, keys: Sequence[int] | None = None) -> list[ItemRow]:
    """The items in the shop's order."""
    end = len(items) - 1
    return [
        ItemRow(
            item.code,
            item.name,
            "; ".join(_WHAT[type(item)](item, unit)),
            tuple(_NOTES[type(item)](item, unit)),
            None if keys is None else keys[place],
            place == 0,
            place == end,
        )
        for place, item in enumerate(items)
    ]


def _hinge(hinge: HingeItem, unit: str) -> Iterator[str]:
    yield words_of(MOUNTS)[hinge.mount]
    yield HINGE_FRAMES[hinge.frame].lower()
    if hinge.fixed_distance is not None:
        yield f"FD {write(hinge.fixed_distance, unit)}, plates {_list(hinge.plates, unit) or '0'}"
    for says, listed, span in (
        ("makes", hinge.overlays, hinge.overlay_span), ("gaps", hinge.gaps, hinge.gap_span),
    ):  # fmt: skip
        if listed or span is not None:
            yield f"{says} {_list(listed, unit) or _span(span, unit)}"


def _hinge_notes(hinge: HingeItem, unit: str) -> Iterator[str]:
    if hinge.bore is not None or hinge.usual_bore is not None:
        usual = [] if hinge.usual_bore is None else [f"usually {write(hinge.usual_bore, unit)}"]
        span = [] if hinge.bore is None else [_span(hinge.bore, unit)]
        yield f"B {', '.join([*span, *usual])}"
    yield f"cup ⌀ {write(hinge.cup_diameter, unit)}, {write(hinge.cup_depth, unit)} deep"
    yield f"opens {terminating(hinge.angle)}°"


def _slide(slide: SlideItem, unit: str) -> Iterator[str]:
    yield words_of(SLIDES)[slide.kind]
    yield f"lengths {_list(slide.lengths, unit)}"
    weight = FindingWords(cast(Unit, unit)).say_weight(slide.load_kg, places=0)
    yield f"carries {weight}"


def _slide_notes(slide: SlideItem, unit: str) -> Iterator[str]:
    for says, length in (
        ("clearance a side", slide.clearance), ("inside clearance", slide.inside_clearance),
        ("recess", slide.recess), ("side at most", slide.most_side),
    ):  # fmt: skip
        if length is not None:
            yield f"{says} {write(length, unit)}"


def _handle(handle: HandleItem, unit: str) -> Iterator[str]:
    if handle.centres is None:
        yield "Knob, one screw"
    else:
        yield f"Pull, {write(handle.centres, unit)} between its holes"
    if handle.projection is not None:
        yield f"stands out {write(handle.projection, unit)}"
    if handle.thread:
        yield handle.thread


def _handle_notes(handle: HandleItem, unit: str) -> Iterator[str]:
    if handle.centres is not None:
        door, drawer = HANDLE_WAYS[handle.door].lower(), HANDLE_WAYS[handle.drawer].lower()
        yield f"{door} on a door, {drawer} on a drawer"


def _lift(lift: LiftItem, unit: str) -> Iterator[str]:
    yield f"{terminating(lift.least)} to {terminating(lift.most)} kg·m, weight × height"
    if lift.rise is not None:
        yield f"opens {terminating(lift.rise)} % of its height above its top"


def _band(band: BandItem, unit: str) -> Iterator[str]:
    yield f"{write(band.thickness, unit)} thick"
    if band.width is not None:
        yield f"{write(band.width, unit)} wide"


def _nothing(item: Any, unit: str) -> Iterator[str]:
    yield from ()


_WHAT: Mapping[type, Callable[[Any, str], Iterator[str]]] = {
    HingeItem: _hinge, SlideItem: _slide, HandleItem: _handle, LiftItem: _lift,
    BandItem: _band,
}  # fmt: skip
_NOTES: Mapping[type, Callable[[Any, str], Iterator[str]]] = {
    HingeItem: _hinge_notes, SlideItem: _slide_notes, HandleItem: _handle_notes, LiftItem: _nothing,
    BandItem: _nothing,
}  # fmt: skip


def _list(lengths: Sequence[Mm], unit: str) -> str:
    return ", ".join(write(each, unit) for each in lengths)


def _span(span: Span | None, unit: str) -> str:
    return "" if span is None else f"{write(span.least, unit)} to {write(span.most, unit)}"
