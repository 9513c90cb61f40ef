"""Every single fact followed all the way: form, database, snapshot, file, and the same schedule."""

from collections.abc import Iterator
from dataclasses import fields, is_dataclass, replace
from itertools import chain
from typing import Any

import pytest
from django import forms

from fronts.facts.rows import columns_of
from fronts.jobfile import read, write
from fronts.pages.hardware.views.kinds import ITEM_PAGES, ItemPage
from fronts.pages.measure.forms.boxes import BoxForm, BoxToMakeForm, PinsForm
from fronts.pages.measure.forms.cabinets import CabinetForm
from fronts.pages.measure.forms.fronts import FrontForm, PlaceForm
from fronts.pages.measure.forms.openings import OpeningForm
from fronts.pages.measure.things.registry import THING_PAGES
from fronts.pages.shared.boxes_form import BoxesForm
from fronts.pages.shared.standard_form import StandardForm
from fronts.pages.shared.stock_form import StockForm
from fronts.pages.shared.thing_addresses import path_of
from fronts.rules.box_facts import USUAL_BOXES, BoxToMake
from fronts.rules.fact_kinds import Group, Rows, Word
from fronts.rules.facts import facts_of, rows_of
from fronts.rules.fingerprint import fingerprint
from fronts.rules.job_facts import Stock
from fronts.rules.kitchen import BESIDE_CABINETS, HandlePlace, Kitchen, Opening
from fronts.rules.practice import Practice
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from fronts.services.imports import job_import
from fronts.services.named_items import IN_STANDARD
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Shop
from tests.factories import NOW
from tests.facts.distinct import DOOR, Distinct, at, changed, paths
from tests.facts.whole_kitchen import whole_kitchen

KITCHEN = whole_kitchen()
CABINET = KITCHEN.cabinets[0]
STACK = CABINET.openings[0]


def parts_of(kitchen: Kitchen) -> dict[str, Any]:
    """What a kitchen consists of, by what a test calls it."""
    return {
        "job": kitchen.job,
        "standard": kitchen.standard,
        "stock": kitchen.stock,
        "hardware": kitchen.hardware,
        "boxes": kitchen.boxes_made_of,
    } | {declared.one: getattr(kitchen, fact.name)[0] for fact, declared in rows_of(Kitchen)}


FACTS = [
    (name, path)
    for name, thing in parts_of(KITCHEN).items()
    for path in paths(thing)
    if at(thing, path) not in (None, ())
]


def left_out(thing: Any, path: str) -> Any:
    """The thing as it would be if something on its way forgot the fact at the path."""
    above, _, name = path.rpartition(".")
    around = at(thing, above) if above else thing
    facts = () if isinstance(around, Sides) else facts_of(type(around))
    fact = next((fact for fact in facts if fact.name == name), None)
    if fact is not None and isinstance(fact.declared, Word) and not fact.has_default:
        held = at(thing, path)
        return changed(thing, path, next(word for word in fact.declared.words if word != held))
    return changed(thing, path, fact.default if fact and fact.has_default else None)


@pytest.mark.parametrize(("name", "path"), FACTS, ids=[f"{n}.{p}" for n, p in FACTS])
def test_a_forgotten_fact_would_be_noticed(name: str, path: str) -> None:
    """No value here is what stands where it is left out: losing it makes a difference."""
    thing = parts_of(KITCHEN)[name]

    assert left_out(thing, path) != thing


def kinds_in(kind: type) -> Iterator[type]:
    """Every kind of thing of which one of this kind consists."""
    for fact in facts_of(kind):
        if isinstance(fact.declared, Group | Rows) and fact.kind is not Practice:
            yield fact.kind
            yield from kinds_in(fact.kind)


@pytest.mark.parametrize("kind", dict.fromkeys(kinds_in(Kitchen)), ids=lambda kind: kind.__name__)
def test_every_fact_has_a_value_of_its_own_somewhere(kind: type) -> None:
    """Nothing that is declared is missing in the kitchen that is followed."""
    said = {name for thing in everything(KITCHEN, kind) for name in vars_of(thing)}

    assert said == {fact.name for fact in facts_of(kind)}


def everything(thing: Any, kind: type) -> Iterator[Any]:
    """Every thing of a kind within a thing."""
    if isinstance(thing, kind):
        yield thing
    if isinstance(thing, tuple):
        for one in thing:
            yield from everything(one, kind)
    elif is_dataclass(thing) and not isinstance(thing, Practice):
        for one in fields(thing):
            yield from everything(getattr(thing, one.name), kind)


def vars_of(thing: Any) -> set[str]:
    """The facts of which the thing says something that is not said anyway."""
    return {
        fact.name
        for fact in facts_of(type(thing))
        if getattr(thing, fact.name) is not None
        and not (fact.has_default and getattr(thing, fact.name) == fact.default)
    }


def test_every_fact_comes_back_from_a_file() -> None:
    """Written and read again, it is the same kitchen."""
    assert parts_of(read(write(KITCHEN))) == parts_of(KITCHEN)


def test_every_fact_comes_back_from_the_database(shop: Shop) -> None:
    """Into the tables and out again, it is the same kitchen, with the same schedule and name."""
    job = job_import(kitchen=KITCHEN, shop=shop, at=NOW)
    kitchen = kitchen_of(Job.objects.get(pk=job.pk))

    assert parts_of(kitchen) == parts_of(KITCHEN)
    assert schedule(kitchen) == schedule(KITCHEN)
    again = read(write(kitchen))
    assert fingerprint(schedule(again)) == fingerprint(schedule(KITCHEN))


def typed(form: forms.BaseForm) -> dict[str, str]:
    """What a browser would post of the form as it is shown."""
    return {bound.html_name: "" if bound.value() is None else str(bound.value()) for bound in form}


def test_every_fact_of_a_standard_comes_back_from_its_form() -> None:
    """Shown and posted as it stands, the level says the same."""
    new = Distinct()
    items = dict.fromkeys(chain.from_iterable(IN_STANDARD.values()), list)
    for level in (new.standard("overlay"), new.standard("reveal")):
        said = columns_of(level)
        asked: dict[str, Any] = {"unit": "mm", "levels": {}, "items": items, "initial": said}
        form = StandardForm(typed(StandardForm(**asked)), **asked)

        assert form.is_valid(), form.errors
        assert form.entered == level


def test_every_fact_of_a_cabinet_comes_back_from_its_form() -> None:
    """What is in it, and what it says of the standard, has forms of its own."""
    bare = replace(CABINET, openings=(), standard=Standard())
    form = CabinetForm(typed(CabinetForm(unit="mm", cabinet=bare)), unit="mm")

    assert form.is_valid(), form.errors
    assert form.entered == bare


@pytest.mark.parametrize("opening", CABINET.openings, ids=lambda opening: opening.closed_by)
def test_every_fact_of_an_opening_comes_back_from_its_form(opening: Opening) -> None:
    """Fronts that differ stay as they are; what they have in common is said once."""
    asked: dict[str, Any] = {"unit": "mm", "before": opening, "doors": lambda: [DOOR]}
    form = OpeningForm(typed(OpeningForm(**asked)), **asked)

    assert form.is_valid(), form.errors
    assert form.entered == opening


@pytest.mark.parametrize("opening", CABINET.openings, ids=lambda opening: opening.closed_by)
def test_every_fact_of_a_front_comes_back_from_its_form(opening: Opening) -> None:
    """What its way of closing has no use for is not asked."""
    for front in opening.fronts:
        asked: dict[str, Any] = {
            "unit": "mm", "before": front, "closing": opening.closing, "doors": lambda: [DOOR],
        }  # fmt: skip
        form = FrontForm(typed(FrontForm(**asked)), **asked)

        assert form.is_valid(), form.errors
        assert form.entered == front


def test_every_fact_of_a_box_comes_back_from_its_forms() -> None:
    """The box and each of its rows of holes."""
    for box in (front.box for front in STACK.fronts if front.box):
        form = BoxForm(typed(BoxForm(unit="mm", box=box)), unit="mm", box=None)
        assert form.is_valid(), form.errors
        assert form.entered == replace(box, shelf_pins=())
        for pins in box.shelf_pins:
            row = PinsForm(typed(PinsForm(unit="mm", initial=columns_of(pins))), unit="mm")
            assert row.is_valid(), row.errors
            assert row.row == pins


def test_every_fact_of_a_box_to_be_made_comes_back_from_its_form() -> None:
    """What is decided about it; its sizes are the rules'."""
    (box,) = everything(KITCHEN, BoxToMake)
    form = BoxToMakeForm(typed(BoxToMakeForm(unit="mm", box=box)), unit="mm", box=None)

    assert form.is_valid(), form.errors
    assert form.entered == box


def test_every_place_of_a_handle_comes_back_from_its_row() -> None:
    """In the small table of its front's form."""
    for place in everything(KITCHEN, HandlePlace):
        row = PlaceForm(typed(PlaceForm(unit="mm", initial=columns_of(place))), unit="mm")
        assert row.is_valid(), row.errors
        assert row.row == place


@pytest.mark.parametrize("kind", BESIDE_CABINETS, ids=lambda kind: kind.__name__)
def test_every_fact_of_a_thing_comes_back_from_its_forms(kind: type) -> None:
    """The thing and each of the rows in it: a door and its bores."""
    page = THING_PAGES[path_of(kind)]
    (thing,) = everything(KITCHEN, kind)
    form = page.form(typed(page.form(unit="mm", held=thing)), unit="mm")
    assert form.is_valid(), form.errors
    assert form.entered == replace(thing, **{fact.name: () for fact, _ in rows_of(kind)})
    for fact, _ in rows_of(kind):
        assert page.inside is not None
        assert page.inside.fact == fact.name
        for held in getattr(thing, fact.name):
            shown = page.inside.form(unit="mm", initial=columns_of(held))
            row = page.inside.form(typed(shown), unit="mm")
            assert row.is_valid(), row.errors
            assert row.row == held


def test_every_fact_of_the_stock_comes_back_from_its_form() -> None:
    """Lists and the thread."""
    stock = KITCHEN.stock
    form = StockForm(typed(StockForm(unit="mm", stock=stock)), unit="mm", stock=Stock())

    assert form.is_valid(), form.errors
    assert form.entered == stock


@pytest.mark.parametrize("page", ITEM_PAGES.values(), ids=lambda page: page.path)
def test_every_fact_of_an_item_comes_back_from_its_form(page: ItemPage) -> None:
    """Each of the shop's list."""
    for item in getattr(KITCHEN.hardware, page.path):
        form = page.form(typed(page.form(unit="mm", held=item)), unit="mm")

        assert form.is_valid(), form.errors
        assert form.entered == item


def test_every_fact_of_how_boxes_are_made_comes_back_from_its_form() -> None:
    """Thicknesses, joint, heights and material."""
    made = KITCHEN.boxes_made_of
    form = BoxesForm(typed(BoxesForm(unit="mm", boxes=made)), unit="mm", boxes=USUAL_BOXES)

    assert form.is_valid(), form.errors
    assert form.entered == made
