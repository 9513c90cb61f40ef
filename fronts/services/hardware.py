"""The list of hardware of a shop, or a job's own: item by item, or a whole kind at once."""

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from django.core.exceptions import ValidationError

from fronts.facts.rows import by_column, columns_of
from fronts.models import HardwareList
from fronts.models.items import Item, item_table
from fronts.rules.fact_kinds import Rows
from fronts.rules.facts import Fact, rows_of
from fronts.rules.items import Hardware
from fronts.rules.validity import faults_of
from fronts.services.named_items import name_anew, named_by
from fronts.services.ordering import last_position, put_at
from fronts.services.owned import list_faults, own_row
from fronts.services.rows import row_for
from fronts.services.saving import checked, checked_at, enter, job_changed, saved, ways_changed
from fronts.services.what_goes import settled_in
from fronts.snapshot.hardware import hardware_in_force
from shopjobs.models import Job, Person, Shop
from shopjobs.services.recording import deleted, made, recorded

ITEM_FACTS = {fact.kind: (fact, declared) for fact, declared in rows_of(Hardware)}
"""The kinds of item, each with the fact of a list that has its items."""


@recorded
def items_set(
    *, owner: Shop | Job, kind: type, items: Sequence[Any], at: datetime, by: Person | None = None
) -> list[str]:
    """Let the owner's list have these items of one kind, in this order, and no others.

    What names an item that is taken out goes on to, and is told.
    """
    fact, declared = ITEM_FACTS[kind]
    row = list_of(owner)
    stay = {item.code for item in items}
    named = [
        f"{called(out)}: {words}"
        for out in item_table(kind)._default_manager.filter(hardware=row)
        if out.code not in stay
        for words in named_by(owner, out)
    ]
    told = _kind_saved(row, fact, declared, items)
    ways_changed(owner=owner, what=f"{declared.says}: {told}", by=by, at=at, went=named)
    return named


@recorded
def item_add(*, owner: Shop | Job, item: Any, at: datetime, by: Person | None = None) -> Item:
    """Enter an item, last of its kind."""
    row = list_of(owner)
    _, declared = ITEM_FACTS[type(item)]
    table = item_table(type(item))
    others = table._default_manager.filter(hardware=row)
    if others.count() >= declared.most:
        raise ValidationError(f"the list has {declared.most} {declared.says}, the most")
    new = row_for(table, row, item, last_position(others))
    _save(new, item)
    ways_changed(owner=owner, what=f"hardware: entered {called(new)}", by=by, at=at)
    return new


@recorded
def item_change(*, row: Item, item: Any, at: datetime, by: Person | None = None) -> Item:
    """Change what is known of an item; what names it by its code goes on to."""
    was, owner = row.code, owner_of(row.hardware)
    enter(row, columns_of(item))
    _save(row, item)
    if row.code != was:
        name_anew(owner, row.facts, was, row.code)
    ways_changed(owner=owner, what=f"hardware: changed {called(row)}", by=by, at=at)
    return row


@recorded
def item_move(*, row: Item, to: int, at: datetime, by: Person | None = None) -> Item:
    """Put an item at place `to` of its kind, counted from 0: the first that serves is taken."""
    put_at(type(row)._default_manager.filter(hardware=row.hardware_id), row, to)
    owner = owner_of(row.hardware)
    ways_changed(owner=owner, what=f"hardware: moved {called(row)}", by=by, at=at)
    return row


@recorded
def item_delete(*, row: Item, at: datetime, by: Person | None = None) -> list[str]:
    """Take an item off its list; what names it goes on to, and is told: by whom it is named."""
    owner, name = owner_of(row.hardware), called(row)
    before = settled_in(owner) if isinstance(owner, Job) else None
    named = named_by(owner, row)
    deleted([row])
    lost = before.lost(owner) if before is not None and isinstance(owner, Job) else []
    went = [*named, *lost]
    ways_changed(owner=owner, what=f"hardware: took out {name}", by=by, at=at, went=went)
    return named


@recorded
def hardware_own(*, job: Job, at: datetime, by: Person | None = None) -> HardwareList:
    """Give the job a list of its own, which begins as the shop's."""
    row = list_of(job)
    hardware_saved(row, hardware_in_force(job.shop))
    text = "Gave the job a list of hardware of its own"
    job_changed(job=job, text=text, by=by, at=at)
    return row


@recorded
def hardware_clear(*, job: Job, at: datetime, by: Person | None = None) -> None:
    """Let the shop's list hold for this job again."""
    before = settled_in(job)
    if deleted(HardwareList.objects.filter(job=job)):
        went = ["this job's own list of hardware", *before.lost(job)]
        text = "Took the shop's hardware for this job again"
        job_changed(job=job, text=text, by=by, at=at, went=went)


def hardware_saved(row: HardwareList, hardware: Hardware) -> None:
    """Let a list have just these items; nothing is told of it."""
    for fact, declared in rows_of(Hardware):
        _kind_saved(row, fact, declared, getattr(hardware, fact.name))


def list_of(owner: Shop | Job) -> HardwareList:
    """The owner's own list, begun where there is none."""
    row = own_row(HardwareList, owner)
    return saved(row) if row._state.adding else row


def owner_of(row: HardwareList) -> Shop | Job:
    """Whose list it is."""
    return row.job or row.shop


def called(row: Item) -> str:
    """What an item is called within a sentence: `hinge H-1`."""
    return f"{ITEM_FACTS[row.facts][1].one} {row.code}"


def _kind_saved(row: HardwareList, fact: Fact, declared: Rows, items: Sequence[Any]) -> str:
    """Let one kind of a list be so, row by row by their codes; what that came to, in words."""
    if len(items) > declared.most:
        raise ValidationError(f"enter at most {declared.most} {declared.says}")
    table = item_table(fact.kind)
    held = {each.code: each for each in table._default_manager.filter(hardware=row)}
    new: list[Item] = []
    changed = 0
    for position, item in enumerate(items):
        here = held.pop(item.code, None)
        said = {"position": position, **columns_of(item)}
        if here is None:
            new.append(row_for(table, row, item, position))
            _check(new[-1], item)
        elif any(getattr(here, name) != value for name, value in said.items()):
            enter(here, said)
            _check(here, item)
            saved(here)
            changed += 1
    made(table, new)
    deleted(list(held.values()))
    return f"{len(new)} new, {changed} changed, {len(held)} taken out"


def _check(row: Item, item: Any) -> None:
    checked_at(row, called(row), _faults(item))


def _faults(item: Any) -> dict[str, str]:
    return by_column(type(item), faults_of(item)) | list_faults(item)


def _save(row: Item, item: Any) -> None:
    faults = _faults(item)
    others = type(row)._default_manager.filter(hardware=row.hardware_id, code=row.code)
    if others.exclude(pk=row.pk).exists():
        faults["code"] = f"there is already a {called(row)} on this list"
    checked(row, faults)
    saved(row)
