"""A job's order in tests: lines checked, approved, sent."""

from collections.abc import Mapping
from datetime import datetime

from fronts.models import OrderApproval, OrderCheck, OrderSending
from fronts.rules.order_facts import LineFacts, order_facts
from fronts.selectors.order_progress import Sent, order_progress
from fronts.selectors.schedules import schedule_of
from fronts.services.order_approvals import differences_settle, order_approve
from fronts.services.order_lists import order_line_check, order_lines_check
from fronts.services.order_sendings import order_send
from shopjobs.models import Job, Person
from tests.factories import NOW


def facts_of(job: Job) -> dict[str, LineFacts]:
    """What each line of the job's order depends on now."""
    return order_facts(schedule_of(job))


def line_checked(
    job: Job, item: str, by: Person, *, seen: int | None = None, at: datetime = NOW,
    note: str | None = None,
) -> OrderCheck:  # fmt: skip
    """An item checked as it is; or by somebody who saw another need of it."""
    facts = facts_of(job).get(item)
    need = seen if seen is not None or facts is None else facts.need
    return order_line_check(
        job=job, schedule=schedule_of(job), item=item, seen=need or 0,
        looked_at=facts.short_name if facts else "", note=note, by=by, at=at,
    )  # fmt: skip


def approved(job: Job, by: Person, *, at: datetime = NOW) -> OrderApproval:
    """The job's whole list, checked and approved as it is."""
    looked_at = {item: facts.short_name for item, facts in facts_of(job).items()}
    order_lines_check(job=job, schedule=schedule_of(job), looked_at=looked_at, by=by, at=at)
    return order_approve(job=job, schedule=schedule_of(job), by=by, at=at)


def settled(job: Job, kind: str, by: Person, note: str = "") -> None:
    """Every change there is decided on so."""
    found = schedule_of(job)
    looked_at = {each.item: each.now.short_name for each in order_progress(job).differences(found)}
    differences_settle(
        job=job, schedule=found, looked_at=looked_at, kind=kind, note=note, by=by, at=NOW
    )


def sent_to(
    job: Job, supplier: str, by: Person, amounts: Mapping[str, int] | None = None
) -> OrderSending:
    """All that is left to send, or so many of some items, sent to a supplier."""
    left = {item.item: item.to_send for item in order_progress(job).to_send}
    return order_send(
        job=job, supplier=supplier, reference="R-7", sent_on=NOW.date(), amounts=amounts or left,
        by=by, at=NOW,
    )  # fmt: skip


def sent_of(job: Job) -> list[Sent]:
    """What was sent of the job's order, as the page has it."""
    return list(order_progress(job).sent)
