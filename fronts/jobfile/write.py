"""A kitchen and its records to a job file: what `read_job` takes back exactly."""

import json
from datetime import date
from typing import Any, TypeAlias

from fronts.jobfile import boxes, items, shop_tables
from fronts.jobfile.checked_against import against_said
from fronts.jobfile.read import VERSION
from fronts.jobfile.snags_json import snag_said
from fronts.jobfile.values import moment_said
from fronts.rules import lengths
from fronts.rules.box_facts import USUAL_BOXES, BoxesMadeOf
from fronts.rules.cut_fronts import RecordedCut
from fronts.rules.fact_kinds import Declared, Number
from fronts.rules.facts import Fact, facts_of, rows_of
from fronts.rules.fits import FrontThen, Gaps, RecordedFit, at_ends
from fronts.rules.kinds import SIDES, Unit
from fronts.rules.kitchen import Cabinet, FrontFacts, Kitchen, Opening
from fronts.rules.lengths import Mm
from fronts.rules.practice import NUMBER_NAMES, PLAIN, PRACTICE, Practice
from fronts.rules.receipts import RecordedReceipt
from fronts.rules.records import NO_RECORDS, RecordedCheck, RecordedTick, Records
from fronts.rules.standard_keys import Sides

_KEYS = {span: key for key, span in items.SPANS.items()}
"""The keys under which a file says facts that have none of their own."""
Json: TypeAlias = bool | int | str | list["Json"] | dict[str, "Json"] | None


def write(kitchen: Kitchen, records: Records = NO_RECORDS, *, of_no_shop: bool = False) -> str:
    """The job file, in UTF-8 text; what the kitchen leaves to others stays left out.

    `of_no_shop`: so does the stock, which is no shop's own; lengths are all in the job's unit.
    """
    writer = _Writer(kitchen.job.unit, in_unit=of_no_shop)
    said = writer.kitchen(kitchen) | writer.records(records)
    if of_no_shop:
        del said["stock"]
    return json.dumps(said, ensure_ascii=False, indent=1) + "\n"


class _Writer:
    def __init__(self, unit: Unit, *, in_unit: bool) -> None:
        self.unit, self.in_unit = unit, in_unit

    def kitchen(self, kitchen: Kitchen) -> dict[str, Json]:
        return {
            "version": VERSION,
            "job": self.thing(kitchen.job),
            **_said("standard", self.thing(kitchen.standard)),
            **self.things(kitchen),
            "stock": self.thing(kitchen.stock, whole=True),
            **_said("hardware", self.thing(kitchen.hardware)),
            **_said("boxes_made_of", self.boxes(kitchen.boxes_made_of)),
            **_said("practice", self.practice(kitchen.practice)),
        }

    def boxes(self, made_of: BoxesMadeOf) -> dict[str, Json]:
        """Nothing where boxes are made as usual."""
        return {} if made_of == USUAL_BOXES else self.thing(made_of)

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
            elif fact.name != "box_to_make" and (whole or not _says_nothing(fact, value)):
                said[_KEYS.get(fact.name, fact.name)] = self.value(value, fact.declared)
        return said

    def value(self, value: Any, declared: Declared | None = None) -> Json:
        if isinstance(declared, Number):
            return lengths.exact(value)
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
                return {side: self.value(value[side]) for side in SIDES}
            case _:
                return self.thing(value)

    def fronts(self, opening: Opening) -> dict[str, Json]:
        """A stack's number of fronts, and an entry for each if one says anything."""
        entries = [self.front(front, stack=opening.closing.stack) for front in opening.fronts]
        count: dict[str, Json] = {"count": len(entries)} if opening.closing.stack else {}
        return {**count, **({"fronts": [*entries]} if any(entries) else {})}

    def front(self, front: FrontFacts, *, stack: bool) -> dict[str, Json]:
        said = self.thing(front)
        if front.box_to_make is not None:
            said["box"] = {boxes.MAKE: True, **self.thing(front.box_to_make)}
        alone = "own_height" in said and not {"width", "height"} & said.keys()
        if stack and alone:
            return {"height": said.pop("own_height"), **said}
        return said

    def records(self, records: Records) -> dict[str, Json]:
        """Each kind of record under its key, where there are any."""
        said: dict[str, list[Json]] = {
            "fits": [self.fit(fit) for fit in records.fits],
            "checks": [self.check(check) for check in records.checks],
            "receipts": [self.receipt(one) for one in records.receipts],
            "snags": [snag_said(snag) for snag in records.snags],
            "cuts": [self.cut(cut) for cut in records.cuts],
            "ticks": [self.tick(tick) for tick in records.ticks],
        }
        return {key: entries for key, entries in said.items() if entries}

    def fit(self, fit: RecordedFit) -> Json:
        facts = fit.facts
        return {
            "front": fit.front,
            "at": moment_said(fit.at),
            **_said("by", fit.by),
            "state": facts.state,
            **_said("gaps", self.gaps(facts.gaps)),
            **_said("planned", self.gaps(facts.planned)),
            **_said("was", self.front_then(facts.was)),
            **_said("note", facts.note),
            **_said("called", facts.label if facts.label != fit.front else ""),
            **_said("gone", fit.gone),
            **_said("hung", fit.hung),
            **_said("fingerprint", fit.fingerprint),
        }

    def front_then(self, was: FrontThen) -> dict[str, Json]:
        """The sizes and the hand that somebody noted."""
        sizes = (("width", was.width), ("height", was.height), ("thickness", was.thickness))
        said: dict[str, Json] = {
            name: self.length(size) for name, size in sizes if size is not None
        }
        return said | _said("hinged", was.hinged)

    def gaps(self, gaps: Gaps) -> dict[str, Json]:
        """Each side of which something is known: in one figure, or at both its ends."""
        said: dict[str, Json] = {}
        for side in SIDES:
            figures: list[Json] = [self.length(figure) for figure in gaps.figures(side)]
            at = at_ends(side, figures)
            if at is not None:
                said[side] = at
        return said

    def check(self, check: RecordedCheck) -> Json:
        if check.at is None:
            return {"item": check.facts.item}
        return {
            "item": check.facts.item,
            "need": check.facts.need,
            "at": moment_said(check.at),
            **_said("by", check.by),
            **_said("note", check.facts.note),
            **_said("open", check.facts.open),
            **_said("fingerprint", check.fingerprint),
            **_said("against", against_said(check.against)),
        }

    def receipt(self, receipt: RecordedReceipt) -> Json:
        facts = receipt.facts
        return {
            "front": receipt.front,
            "at": moment_said(receipt.at),
            **_said("by", receipt.by),
            "came": self.thing(facts.front),
            **_said("note", facts.note),
            **_said("called", facts.label if facts.label != receipt.front else ""),
            **_said("gone", receipt.gone),
        }

    def cut(self, cut: RecordedCut) -> Json:
        marked: dict[str, Json] = {"at": moment_said(cut.at), **_said("by", cut.by)}
        return {"front": cut.front, **marked, **self.thing(cut.facts)}

    def tick(self, tick: RecordedTick) -> Json:
        marked: dict[str, Json] = {"at": moment_said(tick.at), **_said("by", tick.by)}
        return {"front": tick.front, "step": tick.step, **marked}

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
        return lengths.write(length, self.unit, in_unit=self.in_unit)


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
