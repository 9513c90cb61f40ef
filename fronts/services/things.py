"""Things of a job that stand by themselves: entered, changed, deleted.

What kinds there are, and what each consists of, is declared with the kitchen.
"""

from collections.abc import Callable, Sequence
from datetime import datetime
from typing import Any

from fronts.facts.rows import by_column, columns_of
from fronts.models import Thing
from fronts.models.kept import Kept, order_of, table_of
from fronts.rules.facts import rows_of
from fronts.rules.kitchen import BESIDE_CABINETS
from fronts.rules.validity import faults_of
from fronts.services.ordering import last_position
from fronts.services.rows import row_for, rows_replaced
from fronts.services.saving import checked, enter, job_changed, saved_under_its_label
from fronts.services.standing import followed, let_follow, standing_faults
from fronts.services.what_goes import settled_in
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded


@recorded
def thing_create(*, job: Job, facts: Any, at: datetime, by: Person | None = None) -> Any:
    """Enter a thing, last in the job's order of its kind; the row that was made."""
    table = table_of(type(facts))
    row = row_for(
        table, job, facts, last_position(table._default_manager.filter(**{table.owner: job}))
    )
    _save(row, facts)
    job_changed(job=job, text=f"Entered {called(row)}", by=by, at=at)
    return row


@recorded
def thing_change(*, row: Any, facts: Any, at: datetime, by: Person | None = None) -> Any:
    """Change what is known of a thing."""
    was = followed(row) if isinstance(row, Thing) else None
    enter(row, columns_of(facts))
    _save(row, facts)
    if was is not None:
        let_follow(was, row)
    job_changed(job=row.job, text=f"Changed {called(row)}", by=by, at=at)
    return row


@recorded
def thing_delete(
    *,
    row: Any,
    at: datetime,
    by: Person | None = None,
    let_go: Callable[[], Sequence[str]] = tuple,
) -> None:
    """Delete a thing; what holds on to it is `let_go` first, which says what that was.

    What followed it along its wall follows what stands before it.
    """
    job, name, before = row.job, called(row), settled_in(row.job)
    went = list(let_go())
    if isinstance(row, Thing):
        let_follow(followed(row), None)
    deleted([row])
    went += before.lost(job)
    job_changed(job=job, text=f"Deleted {name}", by=by, at=at, went=went)


def called(row: Any) -> str:
    """What a thing is called within a sentence: `door D1`."""
    return f"{BESIDE_CABINETS[row.facts].one} {row.label}"


def _save(row: Any, facts: Any) -> None:
    """Save the row, and replace the rows of what is in it."""
    inside: list[tuple[type[Kept], list[Kept]]] = []
    faults = by_column(row.facts, faults_of(facts))
    if isinstance(row, Thing):
        faults |= standing_faults(row, facts)
    for fact, declared in rows_of(row.facts):
        table, things = table_of(fact.kind), getattr(facts, fact.name)
        if len(things) > declared.most:
            faults[fact.name] = f"enter at most {declared.most} {declared.one}s"
        rows = [row_for(table, row, thing, position) for position, thing in enumerate(things)]
        inside.append((table, rows))
    checked(row, faults)
    for _, rows in inside:
        for each in rows:
            checked(each)
    saved_under_its_label(row, taken=f"there is already a {called(row)} in this job")
    for table, rows in inside:
        held = table._default_manager.filter(**{table.owner: row})
        rows_replaced(table, list(held.order_by(*order_of(table))), rows)
    if inside:  # What was fetched with it holds no longer.
        row.refresh_from_db(fields=[fact.name for fact, _ in rows_of(row.facts)])
