"""Where a job's order stands, and what it waits for."""

from collections import defaultdict
from collections.abc import Sequence

from fronts.rules.order_states import OrderState, what_is_waited_for
from fronts.rules.results import Schedule
from fronts.selectors.order_progress import Difference, OrderProgress, order_progress
from fronts.selectors.orders import OrderLine, order_lines
from fronts.selectors.schedules import schedule_of
from shopjobs.models import Job


def what_it_waits_for(job: Job) -> tuple[str, ...]:
    """`to approve`, `2 lines to send`, `3 items from Northfield`; nothing once all is there."""
    schedule, progress = schedule_of(job), order_progress(job)
    differences = progress.differences(schedule)
    state = order_state(schedule, order_lines(job, schedule), progress, differences)
    return what_is_waited_for(state)


def order_state(
    schedule: Schedule,
    lines: Sequence[OrderLine],
    progress: OrderProgress,
    differences: Sequence[Difference],
) -> OrderState:
    """Where the order stands by all that is known of it."""
    to_come: dict[str, int] = defaultdict(int)
    for sent in progress.sent:
        if sent.missing:
            to_come[sent.row.supplier] += sent.missing
    return OrderState(
        lines=sum(line.need > 0 for line in lines),
        checked=sum(line.stands and line.need > 0 for line in lines),
        stops=sum(finding.level == "stop" for finding in schedule.findings),
        approved=progress.approval is not None,
        changed=len(differences),
        to_send=len(progress.to_send),
        sent=bool(progress.sent),
        to_come=dict(to_come),
        came=any(sent.has_come for sent in progress.sent),
    )
