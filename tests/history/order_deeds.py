"""What people do to a job's order, as deeds that are taken back."""

import random
from decimal import Decimal
from fractions import Fraction

from fronts.models import ApprovedLine, Goods, OrderApproval
from fronts.models.order_approvals import ACCEPTED, ADDITION, DISMISSED, ORDER
from fronts.models.shelf import GIVEN_BACK, LAID_BY, USED
from fronts.rules.money import Price
from fronts.selectors.order_progress import order_progress
from fronts.selectors.schedules import schedule_of
from fronts.selectors.shelf import balance_of
from fronts.services.budgets import job_budget_set
from fronts.services.order_approvals import differences_settle
from fronts.services.order_arrivals import last_arrival_take_back, lines_receive
from fronts.services.saving import job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import made, recorded
from tests.factories import NOW
from tests.ordering import facts_of, sent_of, sent_to
from tests.stocked import moved


def budget_of_job(job: Job, by: Person, chance: random.Random) -> None:
    """It may cost otherwise, or nobody says."""
    price = chance.choice((None, Price(Decimal(chance.randrange(9000)), "USD")))
    job_budget_set(job=job, price=price, by=by, at=NOW)


@recorded
def decide_on_order(job: Job, by: Person, chance: random.Random) -> None:
    """The list is approved; once it is, its changes are decided on."""
    if order_progress(job).approval is None:
        _approve_despite_stops(job, by)
        return
    found = schedule_of(job)
    seen = {each.item: each.now.short_name for each in order_progress(job).differences(found)}
    differences_settle(
        job=job, schedule=found, looked_at=seen, note="enough on the shelf", by=by, at=NOW,
        kind=chance.choice((ADDITION, ACCEPTED, DISMISSED)),
    )  # fmt: skip


@recorded
def send_order(job: Job, by: Person, chance: random.Random) -> None:
    """What is left goes to a supplier; the list is approved for that where it is not."""
    if order_progress(job).approval is None:
        _approve_despite_stops(job, by)
    sent_to(job, f"Supplier {chance.randrange(9)}", by)


@recorded
def receive_order(job: Job, by: Person, chance: random.Random) -> None:
    """Some of an order comes, or what came last is taken back; it is sent where none was."""
    if not sent_of(job):
        send_order(job, by, chance)
    sent = chance.choice(sent_of(job))
    if sent.has_come and chance.random() < 0.3:
        last_arrival_take_back(job=job, sent=sent, by=by, at=NOW)
        return
    amounts = {line.row.pk: 1 + chance.randrange(9) for line in sent.lines}
    lines_receive(
        job=job, sent=sent, amounts=amounts, came_on=NOW.date(), note="", confirmed=True,
        by=by, at=NOW,
    )  # fmt: skip


def move_stock(job: Job, by: Person, chance: random.Random) -> None:
    """Some of what came is laid by, given back or used; some comes where none is there."""
    goods = Goods.objects.filter(shop=job.shop, entries__isnull=False).order_by("pk").first()
    held = balance_of(goods) if goods is not None else None
    if goods is None or held is None or not held.on_hand:
        receive_order(job, by, chance)
        return
    kind = chance.choice((GIVEN_BACK, USED)) if held.at(job) else LAID_BY
    moved(goods, job, by, Fraction(1, 8) if held.unit else 1, kind)


def _approve_despite_stops(job: Job, by: Person) -> None:
    """As the service does, whatever stops the kitchen of a random deed has."""
    approval = OrderApproval(job=job, kind=ORDER, approved_by=by, approved_at=NOW)
    saved(approval)
    made(ApprovedLine, [
        ApprovedLine(approval=approval, item=item, amount=facts.amount, facts=facts.as_json)
        for item, facts in facts_of(job).items()
    ])  # fmt: skip
    job_told(job=job, text="Approved the hardware order", by=by, at=NOW)


ORDER_DEEDS = (decide_on_order, send_order, receive_order, budget_of_job, move_stock)
"""All of these."""
