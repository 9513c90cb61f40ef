"""A kitchen from a file into a shop: what the file says, and what it leaves to the defaults."""

import dataclasses
from datetime import datetime

from django.core.exceptions import ValidationError
from django.db.models import Model

from fronts import models
from fronts.facts.rows import columns_of
from fronts.rules.job_facts import JobFacts
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import LengthError, as_decimal
from fronts.rules.practice import NUMBER_NAMES, TABLES, Practice
from fronts.rules.records import NO_RECORDS, Records
from fronts.rules.standard_keys import Standard
from fronts.rules.standards import DEFAULTS
from fronts.selectors.order_units import unit_held
from fronts.services.hardware import hardware_saved, list_of
from fronts.services.kitchen_rows import kitchen_empty, kitchen_save
from fronts.services.records import NOTHING_RECORDED, fronts_recorded, records_add
from fronts.services.saving import checked, enter, job_changed, saved
from fronts.services.standards import tables_set
from fronts.services.stock import practice_set
from fronts.snapshot.hardware import boxes_made_of_in_force, hardware_in_force
from fronts.snapshot.standards import standard_of
from fronts.snapshot.stock import practice_in_force, stock_in_force
from shopjobs.models import Job, Person, Shop
from shopjobs.services.clients import client_named, site_at
from shopjobs.services.locks import shop_lock
from shopjobs.services.recording import deleted, recorded
from shopjobs.services.refused import Refused


@recorded
def job_import(
    *,
    kitchen: Kitchen,
    shop: Shop,
    at: datetime,
    records: Records = NO_RECORDS,
    by: Person | None = None,
    replace: bool = False,
) -> Job:
    """Put a kitchen into the shop as a job; refuse a number that is there, unless `replace`.

    The job comes out just as the kitchen states it, whatever the shop's own standard is:
    where that differs from what a file's silence means, the job says so itself. What was
    recorded on the job that is replaced stays; `records` are added to it.
    """
    shop_lock(shop.pk)  # One import at a time, whatever its number.
    there = Job.objects.filter(shop=shop, number=kitchen.job.number).first()
    before = fronts_recorded(there) if there else NOTHING_RECORDED
    job = _job(kitchen.job, shop, there, replace=replace)
    shop_level = models.ShopStandard.objects.filter(shop=shop).first()
    _import_standard(kitchen.standard, job, shop_level)
    _import_stock(kitchen, job)
    _import_hardware(kitchen, job)
    _import_practice(kitchen.practice, job, shop_level, by, at)
    kitchen_save(kitchen, job)
    records_add(job=job, records=records, before=before)
    text = f"Imported job {job.number}"
    job_changed(job=job, text=text, by=by, at=at, stays=there is None)
    return job


def _job(facts: JobFacts, shop: Shop, job: Job | None, *, replace: bool) -> Job:
    if job is not None and not replace:
        raise Refused(
            f"There is already a job {facts.number} in this shop. "
            "Say that the file is to replace it, or give the file another number.",
            field="number",
        )
    if job is None:
        job = Job(shop=shop, number=facts.number)
    else:
        if facts.unit != job.unit and (why := unit_held(job)):
            raise Refused(why, field="unit")
        _empty(job)
    try:
        step = as_decimal(facts.step)
    except LengthError as error:
        raise ValidationError({"step": str(error)}) from error
    job.client = client_named(shop, facts.client)
    job.site = site_at(shop, job.client, facts.site)
    job.unit, job.step, job.fit_on = facts.unit, step, facts.fit_on
    checked(job)
    saved(job)
    return job


def _empty(job: Job) -> None:
    """Take out all that a file states; what was checked and recorded on the job stays."""
    kitchen_empty(job)
    for table in _OF_JOB:
        deleted(table._default_manager.filter(job=job))


_OF_JOB: tuple[type[Model], ...] = (
    models.JobStandard, models.Stock, models.HardwareList, models.BoxesMadeOf, models.ShopNumber,
)  # fmt: skip
"""What a job may say otherwise than its shop."""


def _import_standard(standard: Standard, job: Job, shop_level: models.ShopStandard | None) -> None:
    said = spelled_out(standard, standard_of(shop_level))
    if said == Standard():
        return
    level = models.JobStandard(job=job)
    enter(level, columns_of(said))
    checked(level)
    saved(level)


def spelled_out(standard: Standard, shop: Standard) -> Standard:
    """What the job must say itself so that the shop's level changes nothing that it says.

    Overlay and reveal have no default that could be written down.
    """
    silent = [
        each.name for each in dataclasses.fields(Standard) if getattr(standard, each.name) is None
    ]
    return dataclasses.replace(
        standard,
        **{
            name: getattr(DEFAULTS, name)
            for name in silent
            if getattr(shop, name) not in (None, getattr(DEFAULTS, name))
            and getattr(DEFAULTS, name) is not None
        },
    )


def _import_stock(kitchen: Kitchen, job: Job) -> None:
    if kitchen.stock == stock_in_force(job.shop):
        return
    row = models.Stock(shop=job.shop, job=job, **columns_of(kitchen.stock))
    checked(row)
    saved(row)


def _import_hardware(kitchen: Kitchen, job: Job) -> None:
    """What the file lists differs from the shop's list: the job has its own, however short."""
    if kitchen.hardware != hardware_in_force(job.shop):
        hardware_saved(list_of(job), kitchen.hardware)
    if kitchen.boxes_made_of != boxes_made_of_in_force(job.shop):
        row = models.BoxesMadeOf(shop=job.shop, job=job, **columns_of(kitchen.boxes_made_of))
        checked(row)
        saved(row)


def _import_practice(
    practice: Practice,
    job: Job,
    shop_level: models.ShopStandard | None,
    by: Person | None,
    at: datetime,
) -> None:
    held = practice_in_force(job.shop, shop_level)
    values = {name: getattr(practice, name) for name in NUMBER_NAMES}
    changed = {name: value for name, value in values.items() if value != getattr(held, name)}
    if changed:
        practice_set(owner=job, values=changed, by=by, at=at)
    if any(getattr(practice, name) != getattr(held, name) for name in TABLES):
        tables = {name: getattr(practice, name) for name in TABLES}
        tables_set(owner=job, by=by, at=at, **tables)
