"""What people do to a job's order, as deeds that are taken back."""

import random
from contextlib import suppress

from django.core.exceptions import ValidationError

from fronts.models.order_approvals import ACCEPTED, ADDITION, DISMISSED
from fronts.selectors.order_progress import order_progress
from fronts.selectors.schedules import schedule_of
from fronts.services.order_approvals import differences_settle
from fronts.services.order_arrivals import last_arrival_take_back, lines_receive
from shopjobs.models import Job, Person
from tests.factories import NOW
from tests.ordering import approved, sent_of, sent_to


def decide_on_order(job: Job, by: Person, chance: random.Random) -> None:
    """The list is approved; once it is, its changes are decided on."""
    found, progress = schedule_of(job), order_progress(job)
    if progress.approval is None:
        approved(job, by)
        return
    seen = {each.item: each.now.short_name for each in progress.differences(found)}
    differences_settle(
        job=job, schedule=found, looked_at=seen, note="enough on the shelf", by=by, at=NOW,
        kind=chance.choice((ADDITION, ACCEPTED, DISMISSED)),
    )  # fmt: skip


def send_order(job: Job, by: Person, chance: random.Random) -> None:
    """Something goes to a supplier."""
    with suppress(ValidationError):
        sent_to(job, f"Supplier {chance.randrange(9)}", by)


def receive_order(job: Job, by: Person, chance: random.Random) -> None:
    """Some of it comes, or what came last is taken back."""
    sent = chance.choice(sent_of(job))
    if chance.random() < 0.3:
        last_arrival_take_back(job=job, sent=sent, by=by, at=NOW)
        return
    amounts = {line.row.pk: 1 + chance.randrange(9) for line in sent.lines}
    lines_receive(
        job=job, sent=sent, amounts=amounts, came_on=NOW.date(), note="", confirmed=True,
        by=by, at=NOW,
    )  # fmt: skip
