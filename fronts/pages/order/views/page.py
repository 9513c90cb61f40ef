"""The page of the order: every form on it, of which one may have been sent and refused."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any, cast

from django.http import HttpResponse
from django.utils import timezone

from fronts.pages.order.forms.lines import LinesForm, OrderLineForm
from fronts.pages.order.forms.order import (
    ApproveForm,
    ChangesForm,
    ReceiveForm,
    SendForm,
    SendingForm,
)
from fronts.pages.order.forms.ticked import ticked
from fronts.pages.order.rows.lines import HardwareList, Row, hardware_list
from fronts.pages.order.rows.progress import difference_row, stages
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.blocking_findings import blocking_findings
from fronts.rules.kinds import Unit
from fronts.rules.order_facts import short_name_of
from fronts.rules.order_states import what_is_waited_for
from fronts.rules.results import Schedule
from fronts.selectors.order_progress import OrderProgress, Sent, order_progress, suppliers_of
from fronts.selectors.order_states import order_state
from fronts.selectors.orders import OrderLine, order_lines
from shopjobs.access import SignedInRequest, may
from shopjobs.forms.house import HouseForm
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page, wants_part
from shopjobs.selectors import revisions_of
from shopjobs.words import moment_in_words

PAGE = "fronts/order/page.html"


@dataclass(frozen=True, slots=True)
class Focus:
    """Where the focus goes once the page is drawn: to a line, or to the next open one."""

    after: str = ""
    at: str = ""

    def row(self, rows: Sequence[Row]) -> Row | None:
        """The row of that line; of the next open one from the top again where none follows."""
        if self.at:
            return next((row for row in rows if row.line.item == self.at), None)
        if not self.after:
            return None
        place = next((i for i, row in enumerate(rows) if row.line.item == self.after), -1)
        following = [*rows[place + 1 :], *rows[: place + 1]]
        return next((row for row in following if row.is_open), None)


NOWHERE = Focus()


def answered(
    request: SignedInRequest, job: Job, schedule: Schedule, *, after: str = "", at: str = ""
) -> HttpResponse:
    """The list as it is now; the focus goes to the line of an item, or the next open one."""
    if not wants_part(request):
        return go_to(request, "fronts:job-order", job.pk)
    focus = Focus(after, at)
    return announce_change(order_page(request, job, schedule, LinesForm(), focus=focus))


def order_page(
    request: SignedInRequest,
    job: Job,
    schedule: Schedule,
    form: HouseForm,
    *,
    at: int = 0,
    focus: Focus = NOWHERE,
    question: str = "",
    status: int = 200,
) -> HttpResponse:
    """The page with the form that was sent, as it stands; `at` is the sending it is of."""
    lines, progress = order_lines(job, schedule), order_progress(job)
    hardware = hardware_list(job, lines, progress)
    differences = progress.differences(schedule)
    state = order_state(schedule, lines, progress, differences)
    sent = _sent_rows(job, progress, form, at)
    context = {
        "job": job,
        "step": "order",
        "form": form,
        "question": question,
        "hardware": hardware,
        "groups": _groups(hardware, form, focus),
        "approve_next": bool(focus.after) and state.may_be_approved,
        "all_open": _ticks(hardware.open),
        "stops": blocking_findings(request, job, schedule),
        "state": state,
        "stages": stages(state, len(progress.sent), _approved_by(progress)),
        "waits": what_is_waited_for(state),
        "progress": progress,
        "approve": _sent_or(form, ApproveForm, lambda: approve_form(job, lines, progress)),
        "to_add": any(each.more > 0 for each in differences),
        "differences": [
            difference_row(each, cast(Unit, str(job.unit)), ticked(each.item, each.now))
            for each in differences
        ],
        "changes": _sent_or(form, ChangesForm, lambda: changes_form(job, progress)),
        "send": _sent_or(form, SendForm, lambda: send_form(job, progress)),
        "sent_rows": sent,
        "suppliers": suppliers_of(job) if may(request.user, "order") and state.approved else [],
    }
    return render_page(request, PAGE, context, partial="order-list", status=status)


def approve_form(
    job: Job, lines: Sequence[OrderLine], progress: OrderProgress, data: Any = None
) -> ApproveForm:
    """The form that approves the list as it is seen now."""
    now = short_name_of([progress.seen, *map(_line_seen, lines)])
    return ApproveForm(
        data, initial={"seen": now}, auto_id="approve-%s", now=now, since=partial(_since, job)
    )


def changes_form(job: Job, progress: OrderProgress, data: Any = None) -> ChangesForm:
    """The form in which changes since the approval are decided on."""
    now = progress.seen
    return ChangesForm(
        data, initial={"seen": now}, auto_id="changes-%s", now=now, since=partial(_since, job)
    )


def send_form(job: Job, progress: OrderProgress, data: Any = None) -> SendForm:
    """The form that says what went to a supplier."""
    initial = {"seen": progress.seen, "sent_on": timezone.localdate()}
    return SendForm(
        data, initial=initial, auto_id="send-%s", now=progress.seen, since=partial(_since, job),
        items=progress.to_send,
    )  # fmt: skip


def sending_form(
    job: Job, sent: Sent, data: Mapping[str, Any] | None = None, *, taken_back: bool = False
) -> SendingForm:
    """The form that says otherwise where an order went; to take it back, nothing is typed."""
    row = sent.row
    initial = {
        "seen": sent.seen, "supplier": row.supplier, "reference": row.reference,
        "sent_on": row.sent_on.isoformat(),
    }  # fmt: skip
    if taken_back and data is not None:
        data = {**initial, "seen": data.get("seen", "")}
    return SendingForm(
        data,
        initial=initial,
        auto_id=f"sending-{row.pk}-%s",
        now=sent.seen,
        since=partial(_since, job),
    )


def receive_form(job: Job, sent: Sent, data: Any = None) -> ReceiveForm:
    """The form that says what came of an order."""
    initial = {"seen": sent.seen, "came_on": timezone.localdate()}
    return ReceiveForm(
        data, initial=initial, auto_id=f"came-{sent.row.pk}-%s", now=sent.seen,
        since=partial(_since, job), sent=sent,
    )  # fmt: skip


def _sent_or(form: HouseForm, kind: type[HouseForm], make: Any) -> HouseForm:
    """The form that was sent, where it is of this kind; else a new one."""
    return form if type(form) is kind and form.is_bound else make()


def _groups(hardware: HardwareList, form: HouseForm, focus: Focus) -> list[Any]:
    """The groups with the ticks of their open lines, each line with its form."""
    to_focus = focus.row(hardware.rows)
    return [
        (
            group,
            _ticks(group.open),
            [(row, _line_form(row, form), row is to_focus) for row in group.rows],
        )
        for group in hardware.groups
    ]


def _ticks(rows: Sequence[Row]) -> list[str]:
    return [ticked(row.line.item, row.line.facts) for row in rows]


def _line_form(row: Row, sent: HouseForm) -> OrderLineForm:
    """The line's form; the one that was refused keeps what was typed."""
    item = row.line.item
    if isinstance(sent, OrderLineForm) and sent.is_bound and sent.data.get("item") == item:
        sent.auto_id = f"{row.key}-%s"
        return sent
    initial = {"item": item, "need": row.line.need, "note": row.line.note}
    return OrderLineForm(initial=initial, auto_id=f"{row.key}-%s")


def _sent_rows(job: Job, progress: OrderProgress, form: HouseForm, at: int) -> list[Any]:
    """Orders that were sent with their forms, those first of which something is to come."""
    shown = sorted(progress.sent, key=lambda sent: not sent.missing)
    rows = []
    for sent in shown:
        here = form if form.is_bound and sent.row.pk == at else HouseForm()
        receive = here if isinstance(here, ReceiveForm) else receive_form(job, sent)
        change = here if type(here) is SendingForm else sending_form(job, sent)
        lines = [(line, receive[f"came-{line.row.pk}"]) for line in sent.lines]
        rows.append((sent, sorted(lines, key=lambda one: not one[0].missing), receive, change))
    return rows


def _line_seen(line: OrderLine) -> str:
    return f"{line.item} {line.facts.short_name} {line.seen}"


def _approved_by(progress: OrderProgress) -> str:
    approval = progress.approval
    if approval is None:
        return ""
    day = timezone.localtime(approval.approved_at)
    return f"{approval.approved_by.shown_name}, {day:%-d %b %Y}"


def _since(job: Job) -> str:
    """Who did something to the job last, and what: ` (Ada, 26 Nov 10:54: Checked 2 × hinge)`."""
    last = revisions_of(job).select_related("person").order_by("-pk").first()
    return f" ({last.who}, {moment_in_words(last.at)}: {last.text})" if last else ""
