"""A kitchen to a job file: what `read` takes back to exactly the same kitchen."""

import json
from datetime import date
from typing import Any, TypeAlias

from fronts.jobfile import shop_tables
from fronts.jobfile.read import VERSION
from fronts.rules import lengths
from fronts.rules.facts import Fact, facts_of, rows_of
from fronts.rules.kinds import SIDES, Unit
from fronts.rules.kitchen import Cabinet, FrontFacts, Kitchen, Opening
from fronts.rules.lengths import Mm
from fronts.rules.practice import NUMBER_NAMES, PLAIN, PRACTICE, Practice
from fronts.rules.standard_keys import Sides

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
            "job": self.thing(kitchen.job),
            **_said("standard", self.thing(kitchen.standard)),
            **self.things(kitchen),
            "stock": self.thing(kitchen.stock, whole=True),
            **_said("practice", self.practice(kitchen.practice)),
        }

    def things(self, kitchen: Kitchen) -> dict[str, Json]:
        """Every kind of thing that there is any of; cabinets even where there is none."""
        said: dict[str, Json] = {}
        for fact, _ in rows_of(Kitchen):
            things = getattr(kitchen, fact.name)
            if things or fact.kind is Cabinet:
                said[fact.name] = [self.thing(thing) for thing in things]
        return said

    def thing(self, thing: Any, *, whole: bool = False) -> dict[str, Json]:
        """Every fact that says something, under its name; all of them where it is to be whole."""
        said: dict[str, Json] = {}
        for fact in facts_of(type(thing)):
            value = getattr(thing, fact.name)
            if isinstance(thing, Opening) and fact.name == "fronts":
                said |= self.fronts(thing)
            elif whole or not _says_nothing(fact, value):
                said[fact.name] = self.value(value)
        return said

    def value(self, value: Any) -> Json:
        match value:
            case Mm():
                return self.length(value)
            case None | bool() | int() | str():
                return value
            case date():
                return value.isoformat()
            case tuple():
                return [self.value(one) for one in value]
            case Sides():
                return {side: self.length(value[side]) for side in SIDES}
            case _:
                return self.thing(value)

    def fronts(self, opening: Opening) -> dict[str, Json]:
        """A stack's number of fronts, and an entry for each if one says anything."""
        entries = [self.front(front, stack=opening.closing.stack) for front in opening.fronts]
        count: dict[str, Json] = {"count": len(entries)} if opening.closing.stack else {}
        return {**count, **({"fronts": [*entries]} if any(entries) else {})}

    def front(self, front: FrontFacts, *, stack: bool) -> dict[str, Json]:
        said = self.thing(front)
        alone = "own_height" in said and not {"width", "height"} & said.keys()
        if stack and alone:
            return {"height": said.pop("own_height"), **said}
        return said

    def practice(self, practice: Practice) -> dict[str, Json]:
        return {
            key: self.shop_number(key, getattr(practice, key))
            for key in NUMBER_NAMES
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
            "slide_classes": [lengths.exact(load) for load in practice.slide_classes],
            "material": practice.material,
            "frame_material": practice.frame_material,
        }
        changed = (key for key in said if getattr(practice, key) != getattr(PRACTICE, key))
        return {key: said[key] for key in changed}

    def shop_number(self, key: str, value: Mm) -> str:
        return lengths.exact(value) if key in PLAIN else self.length(value)

    def length(self, length: Mm) -> str:
        return lengths.write(length, self.unit)


def _says_nothing(fact: Fact, value: Any) -> bool:
    """Nothing decided, or what may be left out and is as if it were; a size is always said."""
    if value is None:
        return True
    if not fact.has_default or value != fact.default:
        return False
    return not isinstance(value, Mm | str) or not value


def _said(key: str, value: Json) -> dict[str, Json]:
    """The key with its value; nothing where there is nothing to say."""
    return {key: value} if value else {}
