"""How far each line of the order is, in words; and its stages, for the top of the page."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.figures.order_words import change_words
from fronts.figures.purchase import amount_words, stock_words
from fronts.models.order_approvals import ACCEPTED, DISMISSED
from fronts.rules.kinds import Unit
from fronts.rules.order_states import OrderState
from fronts.selectors.approved_items import ItemOrdered
from fronts.selectors.order_progress import Difference


@dataclass(frozen=True, slots=True)
class Stage:
    """A step of the order: what it is called, how far it is, and whether it is done."""

    name: str
    says: str
    is_done: bool


@dataclass(frozen=True, slots=True)
class DifferenceRow:
    """A change since the approval: the item, in words what changed, how many are ordered."""

    item: str
    words: tuple[str, ...]
    ticked: str
    held: str


def stages(state: OrderState, sent: int, approved_by: str) -> list[Stage]:
    """Checked, approved, sent, received; each with how far it is."""
    owed = sum(state.to_come.values())
    all_sent = state.approved and not state.to_send
    return [
        Stage("Checked", f"{state.checked} of {state.lines}", state.lines == state.checked),
        Stage("Approved", approved_by or "not yet", state.approved),
        Stage("Sent", _sent(state, sent), all_sent),
        Stage(
            "Received",
            f"{owed} to come" if owed else "all there" if all_sent else "nothing yet",
            all_sent and not owed,
        ),
    ]


def _sent(state: OrderState, sent: int) -> str:
    if not state.sent:
        return "nothing to send" if state.approved and not state.to_send else "not yet"
    times = f"{sent} order{'' if sent == 1 else 's'}"
    return f"{times}, {state.to_send} left" if state.to_send else times


def item_words(item: ItemOrdered) -> Iterator[str]:
    """`12 approved`, `4 laid by from stock`, `8 sent`, `6 came, 2 to come`, as it was approved."""
    wanted, unit = item.facts.amount, item.facts.unit
    counted = f" {unit}" if unit else ""
    yield f"{item.ordered}{counted} approved"
    if item.stocked:
        yield stock_words(item.stocked, unit)
    if item.sent:
        left = f", {item.to_send}{counted} left to send" if item.to_send else ""
        yield f"{item.sent}{counted} sent{left}"
        to_come = f", {item.to_come}{counted} to come" if item.to_come else ""
        yield f"{item.came}{counted} came{to_come}"
    over = max(item.sent, item.came) + item.stocked - wanted
    if (item.sent or item.stocked) and over > 0:
        yield f"{amount_words(over, unit)} over"
    if item.decided.kind in (ACCEPTED, DISMISSED):
        why = f": {item.decided.note}" if item.decided.note else ""
        left = "order left as it was" if item.decided.kind == DISMISSED else "change accepted"
        yield f"{left} by {item.decided.approved_by.shown_name}{why}"


def difference_row(found: Difference, unit: Unit, ticked: str) -> DifferenceRow:
    """A change since the approval in words; `ticked` is how its tick box names it."""
    counted = found.now.unit or found.then.unit
    words = change_words(found.changes, unit, counted)
    return DifferenceRow(found.item, tuple(words), ticked, _held(found, counted))


def _held(found: Difference, counted: str) -> str:
    """`5 approved so far`; what is short or over of it, where the change alone doesn't say so.

    The order may have been left as it was at an earlier change.
    """
    held = f"{found.ordered} {counted}".strip() + " approved so far"
    if found.more == found.now.amount - found.then.amount:
        return held
    if not found.more:
        return f"{held}, which is enough"
    amount = f"{abs(found.more)} {counted}".strip()
    return f"{held}, {amount} {'to order' if found.more > 0 else 'over'}"
