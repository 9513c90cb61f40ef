"""A shop with a row in every table that a shop has, and its rows as values to compare."""

from dataclasses import replace
from datetime import date
from decimal import Decimal
from fractions import Fraction
from typing import Any

from django.apps import apps
from django.db.models import ForeignKey, Model, QuerySet

from fronts.models import (
    ApprovedLine,
    CutPlan,
    FitRecord,
    Front,
    Offcut,
    OrderApproval,
    OrderArrival,
    OrderSending,
    SentLine,
    StockEntry,
)
from fronts.models.shelf import RECEIVED
from fronts.rules.date_facts import ClosedDays, JobDates, ShopDates
from fronts.rules.fits import FitFacts, Gaps, hung_as
from fronts.rules.money import Price
from fronts.rules.offcuts import OffcutFacts
from fronts.rules.practice import inches
from fronts.rules.shown_figures import ShownFigure
from fronts.rules.snags import SnagFacts
from fronts.selectors.kitchens import placed_kitchen_of
from fronts.selectors.schedules import schedule_of
from fronts.services.budgets import job_budget_set
from fronts.services.cabinets import cabinet_delete
from fronts.services.calendar_feeds import feed_make
from fronts.services.dates import closed_days_add, job_dates_set, shop_dates_set, stage_finish
from fronts.services.fits import fit_record
from fronts.services.front_cuts import fronts_mark_cut
from fronts.services.imports import job_import
from fronts.services.offcuts import offcut_enter, offcut_throw_away
from fronts.services.photos import photo_add
from fronts.services.plan_offcuts import plan_mark_sawn
from fronts.services.printed_sheets import SheetShown, printed_sheets_keep
from fronts.services.receipts import fronts_receive
from fronts.services.saved_faces import face_save
from fronts.services.snags import snag_raise, snag_settle
from fronts.services.stock import practice_set
from fronts.services.work_ticks import step_tick
from shopjobs.models import Job, Person, Shop
from shopjobs.services.shop_files.tables import rows_of, shop_tables
from tests.factories import NOW, PersonFactory, ShopFactory
from tests.facts.whole_kitchen import whole_kitchen
from tests.ordering import facts_of, line_checked
from tests.own_ways import own_ways
from tests.pictures import picture_put
from tests.saying import cabinet_create, opening_create, stock_set
from tests.services.test_cutting import begin
from tests.stocked import counted, moved

OURS, THEIRS = Fraction(9, 10), Fraction(3, 5)
"""Parts of what is usual, so that no two values agree."""
BODY: dict[str, Any] = {
    "label": "Z9", "kind": "base", "build": "face-frame", "wall": "Porch", "x": 0, "y": 0,
    "width": inches(20), "height": inches(30), "depth": inches(24),
}  # fmt: skip
HOLE: dict[str, Any] = {
    "label": "a", "x": inches(2), "y": inches(2), "width": inches(15), "height": inches(26),
    "closed_by": "door", "hinged": "left",
}  # fmt: skip


def whole_shop(name: str, part: Fraction) -> Shop:
    """A shop that has its own ways, with a job in which every fact has a value of its own."""
    shop = ShopFactory.create(name=name)
    owner = PersonFactory.create(shop=shop, owner=True, first_name=name)
    fitter = PersonFactory.create(shop=shop, installer=True)
    own_ways(shop, part)
    job = job_import(kitchen=whole_kitchen(), shop=shop, at=NOW, by=owner)
    practice_set(owner=job, values={"spares": Fraction(7)}, by=owner, at=NOW)
    stock_set(owner=job, at=NOW, by=owner, knob_thread="M5")
    face_save(shop=shop, name="sink base", words="tip-out 6 over pair", at=NOW, by=owner)
    _worked_on(job, owner, fitter)
    _in_stock(job, owner, part)
    return shop


def _worked_on(job: Job, owner: Person, fitter: Person) -> None:
    """A front was fitted and has gone since, another is there; a line is checked; a plan begun."""
    schedule = schedule_of(job)
    line_checked(job, schedule.hardware[0].item, owner, note="as «last» time")
    _ordered(job, owner)
    gaps = Gaps(left=inches(1, 8))
    for front in Front.objects.filter(opening__cabinet__job=job):
        facts = FitFacts(label=str(front), gaps=gaps, note="planed «twice»")
        fit_record(front=front, facts=facts, hung="9c2", fingerprint="77-ab", by=fitter, at=NOW)
        step_tick(front=front, step="Box in, running true.", by=fitter, at=NOW)
    kitchen = placed_kitchen_of(job)
    first = schedule.fronts[0]
    fronts_mark_cut(
        job=job, kitchen=kitchen, schedule=schedule, seen={first.label: hung_as(first)},
        by=owner, at=NOW,
    )  # fmt: skip
    gone = FitRecord.objects.filter(job=job)[0]
    FitRecord.objects.filter(pk=gone.pk).update(front=None)
    plan = begin(job, fitter)
    _offcuts(job, plan, owner)
    line = schedule.bought[0].front.short_name
    fronts_receive(job=job, schedule=schedule, line=line, count=1, note="late", by=owner, at=NOW)
    image = picture_put(job=job, picture=b"as a camera makes it")
    photo_add(job=job, wall="Porch", image=image, by=fitter, at=NOW)
    _snags(job, owner, fitter)
    _dates(job, owner, fitter)
    job_budget_set(job=job, price=Price(Decimal("4711.13"), "USD"), by=owner, at=NOW)
    shown = (ShownFigure("B1.a", "width", "15 1/2"), ShownFigure("B1", "stop", "too «wide»"))
    sheet = SheetShown(schedule.fronts[0].cabinet, "3f9a-07c2", shown)
    printed_sheets_keep(job=job, sheets=[sheet], at=NOW)
    extra = cabinet_create(job=job, at=NOW, by=owner, **BODY)
    opening_create(cabinet=extra, at=NOW, by=owner, **HOLE)
    cabinet_delete(cabinet=extra, at=NOW, by=owner)


def _offcuts(job: Job, plan: CutPlan, owner: Person) -> None:
    """One that the job's plan left and has since been laid by for it, one that was thrown away."""
    plan_mark_sawn(plan=plan, by=owner, at=NOW)
    facts = OffcutFacts("«birch»", inches(3, 4), inches(30), inches(20), is_grained=False)
    beside = {"from_job": job, "plan": plan, "place": "0/0.0.1", "by_plan": True}
    kept = offcut_enter(shop=job.shop, facts=facts, job=job, by=owner, at=NOW)
    Offcut.objects.filter(pk=kept.pk).update(**beside, is_there=False)
    stick = replace(facts, is_stick=True)
    gone = offcut_enter(shop=job.shop, facts=stick, job=None, by=owner, at=NOW)
    offcut_throw_away(row=gone, why="«split»", by=owner, at=NOW)


def _ordered(job: Job, owner: Person) -> None:
    """The list approved whatever stops there are, an order sent, and part of it come."""
    by = {"approved_by": owner, "approved_at": NOW}
    whole = OrderApproval.objects.create(job=job, kind="order", **by)
    left = OrderApproval.objects.create(job=job, kind="dismissed", note="«on the shelf»", **by)
    sending = OrderSending.objects.create(
        job=job, supplier="Northfield", reference="«R»", sent_on=NOW.date(), sent_by=owner,
        sent_at=NOW,
    )  # fmt: skip
    for item, facts in facts_of(job).items():
        ApprovedLine.objects.create(
            approval=whole, item=item, amount=facts.amount, facts=facts.as_json
        )
        line = SentLine.objects.create(
            sending=sending, item=item, amount=facts.amount, unit=facts.unit
        )
    ApprovedLine.objects.create(approval=left, item=item, amount=0, facts=facts.as_json)
    OrderArrival.objects.create(
        line=line, amount=1, came_on=NOW.date(), note="«dented»", received_by=owner, received_at=NOW
    )


def _in_stock(job: Job, owner: Person, part: Fraction) -> None:
    """Something counted, of which some is laid by for the job; something that came for it."""
    goods = counted(job.shop, owner, 100 * part.numerator)
    moved(goods, job, owner, 9)
    StockEntry.objects.create(
        shop=job.shop, goods=goods, job=job, amount=1, kind=RECEIVED, reason="«dented»",
        entered_by=owner, entered_at=NOW, arrival=OrderArrival.objects.get(line__sending__job=job),
    )  # fmt: skip


def _snags(job: Job, owner: Person, fitter: Person) -> None:
    """One on a front with a photo, which is settled; one on the job, for somebody, by a day."""
    front = Front.objects.filter(opening__cabinet__job=job).select_related("opening__cabinet")[0]
    snag = snag_raise(
        job=job, facts=SnagFacts("front", "scratched", str(front)), front=front,
        cabinet=front.opening.cabinet, images=[picture_put(job=job, picture=b"a scratch")],
        by=fitter, at=NOW,
    )  # fmt: skip
    snag_settle(snag=snag, note="planed", by=owner, at=NOW)
    facts = SnagFacts("job", "paint on the floor", due=date(2027, 3, 12))
    snag_raise(job=job, facts=facts, who=fitter, by=owner, at=NOW)


def _dates(job: Job, owner: Person, fitter: Person) -> None:
    """The shop's days and those of the job, a stage that is done; a calendar, which stays here."""
    usual = ShopDates(saturday=True, cut_days=3, fit_at_once=2)
    shop_dates_set(shop=job.shop, facts=usual, by=owner, at=NOW)
    closed = ClosedDays(date(2027, 8, 2), date(2027, 8, 13), "summer holidays")
    closed_days_add(shop=job.shop, facts=closed, by=owner, at=NOW)
    job_dates_set(job=job, facts=JobDates(cut_days=7, lead_days=0), by=owner, at=NOW)
    stage_finish(job=job, stage="measure", on=NOW.date(), by=fitter, at=NOW)
    feed_make(person=fitter, at=NOW)


Rows = dict[str, list[dict[str, Any]]]
Places = dict[tuple[str, Any], int]


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
    values = {label: [_values(row, places) for row in several] for label, several in rows.items()}
    _name_by_place(values["shopjobs.revision"], places)
    return values


def _name_by_place(revisions: list[dict[str, Any]], places: Places) -> None:
    """History names rows by their keys: put their places there, and a number for one that is gone.

    A row is gone under the same number wherever history names it.
    """
    gone: dict[tuple[str, Any], str] = {}

    def place(label: str, key: Any) -> Any:
        if (label, key) in places:
            return places[label, key]
        return gone.setdefault((label, key), f"gone {len(gone)}")

    def named(label: str, values: dict[str, Any] | None) -> dict[str, Any] | None:
        columns = {each.attname: each for each in apps.get_model(label)._meta.concrete_fields}
        return values and {
            name: place(target.related_model._meta.label_lower, value)
            if isinstance(target := columns[name], ForeignKey) and value is not None
            else value
            for name, value in values.items()
        }

    for revision in revisions:
        revision["changes"] = [
            [label, place(label, key), named(label, before), named(label, after), *name]
            for label, key, before, after, *name in revision["changes"]
        ]


def _values(row: Model, places: Places) -> dict[str, Any]:
    values: dict[str, Any] = {}
    for field in row._meta.concrete_fields:
        value = getattr(row, field.attname)
        if isinstance(field, ForeignKey):
            label = field.related_model._meta.label_lower
            values[field.name] = None if value is None else (label, places[label, value])
        elif not field.primary_key:
            values[field.name] = value
    return values
