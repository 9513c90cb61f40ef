"""A shop with a row in every table that a shop has, and its rows as values to compare."""

from fractions import Fraction
from typing import Any

from django.db.models import ForeignKey, Model, QuerySet

from fronts.models import FitRecord, Front
from fronts.rules.fits import FitFacts, GapsMeasured
from fronts.rules.practice import inches
from fronts.selectors.kitchens import schedule_of
from fronts.services.fits import fit_record
from fronts.services.imports import job_import
from fronts.services.order_lists import order_line_check
from fronts.services.stock import practice_set
from shopjobs.models import Job, Person, Shop
from shopjobs.services.shop_files.tables import rows_of, shop_tables
from tests.factories import NOW, PersonFactory, ShopFactory
from tests.facts.whole_kitchen import whole_kitchen
from tests.own_ways import own_ways
from tests.saying import stock_set
from tests.services.test_cutting import begin


def whole_shop(name: str, part: Fraction) -> Shop:
    """A shop that has its own ways, with a job in which every fact has a value of its own."""
    shop = ShopFactory.create(name=name)
    owner = PersonFactory.create(shop=shop, owner=True, first_name=name)
    fitter = PersonFactory.create(shop=shop, installer=True)
    own_ways(shop, part)
    job = job_import(kitchen=whole_kitchen(), shop=shop, at=NOW, by=owner)
    practice_set(owner=job, values={"spares": Fraction(7)}, by=owner, at=NOW)
    stock_set(owner=job, at=NOW, by=owner, knob_thread="M5")
    _worked_on(job, owner, fitter)
    return shop


def _worked_on(job: Job, owner: Person, fitter: Person) -> None:
    """A front was fitted and has gone since, another is there; a line is checked; a plan begun."""
    schedule = schedule_of(job)
    item = schedule.hardware[0]
    order_line_check(job=job, schedule=schedule, item=item.item, seen=item.need, by=owner, at=NOW)
    gaps = GapsMeasured(left=inches(1, 8))
    for front in Front.objects.filter(opening__cabinet__job=job):
        facts = FitFacts(label=str(front), gaps=gaps, note="planed «twice»")
        fit_record(front=front, facts=facts, hung="9c2", fingerprint="77-ab", by=fitter, at=NOW)
    gone = FitRecord.objects.filter(job=job)[0]
    FitRecord.objects.filter(pk=gone.pk).update(front=None)
    begin(job, fitter)


Rows = dict[str, list[dict[str, Any]]]


def rows_in(shop: Shop) -> Rows:
    """The shop's rows in this database by table, in their order, keys as places in that order."""
    return _by_value({label: rows_of(shop, table) for label, table in shop_tables().items()})


def all_rows() -> Rows:
    """Every row of this database, whose only shop it is."""
    return _by_value({label: table._base_manager.all() for label, table in shop_tables().items()})


def _by_value(tables: dict[str, QuerySet[Model]]) -> Rows:
    rows = {label: list(table.order_by("pk")) for label, table in tables.items()}
    places = {
        (label, row.pk): place
        for label, several in rows.items()
        for place, row in enumerate(several)
    }
    return {label: [_values(row, places) for row in several] for label, several in rows.items()}


def _values(row: Model, places: dict[tuple[str, Any], int]) -> dict[str, Any]:
    values: dict[str, Any] = {}
    for field in row._meta.concrete_fields:
        value = getattr(row, field.attname)
        if isinstance(field, ForeignKey):
            label = field.related_model._meta.label_lower
            values[field.name] = None if value is None else (label, places[label, value])
        elif not field.primary_key:
            values[field.name] = value
    return values
