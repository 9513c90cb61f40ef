"""Approving the hardware list as it is, and deciding on what has changed since."""

from collections.abc import Mapping
from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.models import ApprovedLine, OrderApproval, OrderSending, SentLine
from fronts.models.order_approvals import ACCEPTED, ADDITION, DISMISSED, ORDER
from fronts.rules.buying_names import name_of_need
from fronts.rules.fingerprint import fingerprint
from fronts.rules.order_facts import LineFacts
from fronts.rules.results import Schedule
from fronts.selectors.approved_items import ItemOrdered
from fronts.selectors.order_progress import Difference, order_progress
from fronts.selectors.order_states import order_state
from fronts.selectors.orders import order_lines
from fronts.services.orders import order_check
from fronts.services.saving import checked, job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, made, recorded
from shopjobs.services.refused import Refused

_SAYS = {
    ADDITION: "Ordered in addition", ACCEPTED: "Accepted, with nothing more ordered",
    DISMISSED: "Left the order as it is",
}  # fmt: skip


@recorded
def order_approve(*, job: Job, schedule: Schedule, by: Person, at: datetime) -> OrderApproval:
    """Freeze the list as it is: every line checked, and no stop in the way."""
    lines, progress = order_lines(job, schedule), order_progress(job)
    state = order_state(schedule, lines, progress, ())
    if state.approved:
        raise ValidationError("The list is approved already.")
    if state.stops:
        raise ValidationError("A stop is in the way: settle it, then approve the list.")
    if not state.may_be_approved:
        raise ValidationError(f"Check every line first: {state.to_check} are not checked.")
    wanted = [line for line in lines if line.need]
    approved = {line.item: (line.facts, line.facts.amount) for line in wanted}
    approval = _approval(job, schedule, ORDER, "", by, at, approved)
    count = "1 line" if len(wanted) == 1 else f"{len(wanted)} lines"
    job_told(job=job, text=f"Approved the hardware order, {count}", by=by, at=at)
    return approval


@recorded
def order_approval_take_back(*, job: Job, by: Person, at: datetime) -> None:
    """The list is to be approved anew; not once any of it was sent."""
    if OrderSending.objects.filter(job=job).exists():
        raise ValidationError("Some of it is sent: decide on its changes one by one.")
    if deleted(OrderApproval.objects.filter(job=job)):
        job_told(job=job, text="Took the order's approval back", by=by, at=at)


@recorded
def differences_settle(
    *,
    job: Job,
    schedule: Schedule,
    looked_at: Mapping[str, str],
    kind: str,
    by: Person,
    at: datetime,
    note: str = "",
) -> OrderApproval:
    """Decide on changes of the kitchen since the list was approved, each as the person saw it.

    `looked_at` has the short name of what each item depends on by now. The lines are checked
    by that too.
    """
    progress = order_progress(job)
    found = {each.item: each for each in progress.differences(schedule)}
    wanted = {item: _found(item, name, found) for item, name in looked_at.items()}
    _refuse_decision(kind, wanted, note)
    lines = {
        item: (one.now, _ordered_by(kind, one, progress.items.get(item)))
        for item, one in wanted.items()
    }
    approval = _approval(job, schedule, kind, note, by, at, lines)
    name = fingerprint(schedule)
    for item, (facts, _) in lines.items():
        order_check(job=job, item=item, facts=facts, fingerprint=name, by=by, at=at)
    why = f" ({note})" if note else ""
    job_told(job=job, text=f"{_SAYS[kind]}: {', '.join(lines)}{why}", by=by, at=at)
    return approval


def refuse_more_sent_than_approved(job: Job) -> None:
    """What was sent stays approved, whatever is taken back."""
    held = order_progress(job).items
    sent = SentLine.objects.filter(sending__job=job).values_list("item", flat=True)
    for name in sent:
        if name not in held or held[name].sent > held[name].most_to_send:
            raise Refused(f"{name} is sent already: take that back first.")


def _found(item: str, name: str, found: Mapping[str, Difference]) -> Difference:
    one = found.get(item)
    if one is None:
        raise ValidationError(f"{item} is decided on already, or as it was approved again.")
    if one.now.short_name != name:
        raise ValidationError(f"The kitchen has changed again: look at {item} once more.")
    return one


def _refuse_decision(kind: str, wanted: Mapping[str, Difference], note: str) -> None:
    if not wanted:
        raise ValidationError("Tick the changes that you decide on.")
    if kind == DISMISSED and not note:
        raise ValidationError({"note": "Say why the order stays as it is."})


def _ordered_by(kind: str, one: Difference, held: ItemOrdered | None) -> int:
    """How many more are ordered by the decision; fewer as far as they are not sent yet."""
    if kind == DISMISSED:
        return 0
    if one.more > 0:
        return one.more if kind == ADDITION else 0
    return max(one.more, -held.unsent if held else 0)


def _approval(
    job: Job,
    schedule: Schedule,
    kind: str,
    note: str,
    by: Person,
    at: datetime,
    lines: Mapping[str, tuple[LineFacts, int]],
) -> OrderApproval:
    approval = OrderApproval(job=job, kind=kind, note=note, approved_by=by, approved_at=at)
    checked(approval)
    saved(approval)
    names = {need.item: name_of_need(need) for need in schedule.hardware}
    rows = [
        ApprovedLine(
            approval=approval, item=item, amount=amount, facts=facts.as_json,
            bought_as=names.get(item, ""),
        )
        for item, (facts, amount) in lines.items()
    ]  # fmt: skip
    for row in rows:
        checked(row)
    made(ApprovedLine, rows)
    return approval
