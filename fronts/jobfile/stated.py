"""Declared facts as a file states them: every key of a thing, read by what it is declared as."""

from collections.abc import Callable, Mapping
from functools import partial
from typing import Any, TypeVar

from fronts.jobfile import sizes, values
from fronts.jobfile.reader import Place, Record
from fronts.rules.box_facts import Box
from fronts.rules.fact_kinds import (
    Count,
    Day,
    DoorName,
    EachSide,
    Group,
    ItemCode,
    Label,
    Length,
    Lengths,
    Number,
    Rows,
    Text,
    Thread,
    Word,
    YesNo,
)
from fronts.rules.facts import Fact, facts_of
from fronts.rules.items import EDGE_WORDS
from fronts.rules.kinds import SIDES
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.screws import A_THREAD, is_thread
from fronts.rules.standard_keys import Sides, Standard

T = TypeVar("T")


_NEWER: Mapping[type, frozenset[str]] = {
    Kitchen: frozenset({"others", "walls", "kind_standards", "hardware", "boxes_made_of"}),
    FrontFacts: frozenset(
        {
            "handle",
            "hinge",
            "glass",
            "machine",
            "room_behind",
            "handles",
            "grain",
            "grain_set",
            "made_by",
        }
    ),
    Box: frozenset({"shelves", "load_kg"}),
    Standard: frozenset(
        {
            "front_build",
            "front_material",
            "front_handle",
            "front_hinge",
            "back",
            "band",
            "premill",
            "made_by",
            "door_style",
            "species",
            "edge_profile",
            "panel_profile",
            "finish",
        }
    ),
}
"""Keys that a file of version 1 does not have."""
_BESIDE: Mapping[type, frozenset[str]] = {FrontFacts: frozenset({"box_to_make"})}
"""Facts that a file says under another one's key."""


def keys_of(kind: type, version: int = 2) -> tuple[str, ...]:
    """The keys of a thing in a file of this version: the names of its facts."""
    left_out = _BESIDE.get(kind, frozenset())
    if version == 1:
        left_out |= _NEWER.get(kind, frozenset())
    return tuple(fact.name for fact in facts_of(kind) if fact.name not in left_out)


def stated(kind: type[T], record: Record, **beside: Any) -> T:
    """The thing that a record states; `beside` is what is read in a way of its own."""
    return kind(**{
        fact.name: beside[fact.name] if fact.name in beside else _fact(fact, record)
        for fact in facts_of(kind)
    })  # fmt: skip


def given(kind: type, record: Record, *, but: tuple[str, ...] = ()) -> dict[str, Any]:
    """What a record states of a thing, by the names of its facts; nothing of what it leaves out."""
    facts = (fact for fact in facts_of(kind) if fact.name not in but and record.has(fact.name))
    said = {fact.name: record.take(fact.name, _reader(fact)) for fact in facts}
    return {name: value for name, value in said.items() if value is not None}


def thing(kind: type[T]) -> Callable[[Place], T | None]:
    """A reader of an object with a thing's facts; None where one is wrong, with the fault told."""

    def read(place: Place) -> T | None:
        keys = keys_of(kind, place.page.version)
        record = Record(place, keys)
        found = stated(kind, record)
        return found if record.sound(*keys) else None

    return read


def _fact(fact: Fact, record: Record) -> Any:
    """What stands at the fact's key, else what holds where it is left out."""
    read = _reader(fact)
    if fact.optional or fact.has_default:
        value = record.take(fact.name, read)
        return fact.default if value is None and fact.has_default else value
    return record.need(fact.name, read, _stand_in(fact), _wanted(fact))


def _reader(fact: Fact) -> Callable[[Place], Any]:
    """How a value is read that is declared so."""
    return _READERS[type(fact.declared)](fact.declared, fact)


_READERS: Mapping[type, Callable[[Any, Fact], Callable[[Place], Any]]] = {
    Length: lambda declared, _: partial(sizes.length, limits=sizes.limits_of(declared)),
    Lengths: lambda declared, _: partial(_lengths, declared=declared),
    Number: lambda declared, _: values.number(declared.least, declared.most, declared.unit),
    YesNo: lambda *_: values.yes_or_no,
    ItemCode: lambda declared, _: values.label(declared.most),
    Count: lambda declared, _: values.whole(declared.least, declared.most),
    Word: lambda declared, _: values.one_of({word: word for word in declared.words}),
    Text: lambda declared, _: values.text(declared.most),
    Label: lambda declared, _: values.label(declared.most),
    DoorName: lambda *_: values.label(),
    Thread: lambda *_: _thread,
    Day: lambda *_: values.day,
    EachSide: lambda declared, _: partial(_each_side, side=declared.side),
    Group: lambda _, fact: thing(fact.type),
    Rows: lambda declared, fact: partial(_rows, fact, most=declared.most),
}


def _lengths(place: Place, declared: Lengths) -> tuple[Mm, ...]:
    return sizes.every_length(place.items(declared.most), sizes.Limits(zero=declared.zero))


def _rows(fact: Fact, place: Place, most: int) -> Any:
    if most == 1:
        return thing(fact.type)(place)
    kind, places = fact.kind, place.items(most)
    if not places and place.value != []:
        return None
    records = (Record(each, keys_of(kind)) for each in places)
    return tuple(stated(kind, record) for record in records)


def _each_side(place: Place, side: Length | ItemCode) -> Sides[Any]:
    record = Record(place, SIDES)
    if isinstance(side, ItemCode):
        read = values.label(side.most)
        return Sides(*(record.need(each, read, "", _A_CODE) for each in SIDES))
    limits = sizes.limits_of(side)
    return Sides(*(sizes.needed(record, each, limits) for each in SIDES))


def _thread(place: Place) -> str | None:
    said = place.value
    if isinstance(said, str) and is_thread(said):
        return said
    place.fault(A_THREAD)
    return None


_A_CODE = f"the code of a band, or {' or '.join(EDGE_WORDS)}"
_NOWHERE = Sides(Mm(0), Mm(0), Mm(0), Mm(0))


def _stand_in(fact: Fact) -> Any:
    """Read on with this where a key is at fault; the file is refused in the end."""
    match fact.declared:
        case Length():
            return sizes.STAND_IN
        case Word(words=words):
            return next(iter(words))
        case Count(least=least):
            return least
        case EachSide():
            return _NOWHERE
        case Number(least=least):
            return least
        case Lengths():
            return (sizes.STAND_IN,)
        case _:
            return ""


def _wanted(fact: Fact) -> str:
    match fact.declared:
        case Length() as length:
            return str(sizes.limits_of(length))
        case Word(words=words):
            return f"one of {', '.join(words)}"
        case Count(least=least, most=most):
            return f"a count, {least} to {most}"
        case EachSide():
            return "a length for left, right, top and bottom"
        case Label(says=says):
            return f"the {says}, as text"
        case Number(says=says, unit=unit):
            return f"the {says}, in {unit}"
        case Lengths(says=says):
            return f"the {says}, a list of lengths"
        case declared:
            article = "an" if declared.says[0] in "aeiou" else "a"
            return f"{article} {declared.says}"
