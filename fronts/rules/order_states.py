"""How far a job's order is: checked, approved, sent, received; and what it waits for."""

from collections.abc import Mapping
from dataclasses import dataclass, field

STAGES = (
    "to check", "approved", "sent in part", "sent", "received in part", "received",
)  # fmt: skip
"""The states of an order, in their order."""


@dataclass(frozen=True, slots=True)
class OrderState:
    """What has been done of an order.

    `lines` of which so many are `checked`; `stops` that stand in the way; once it is approved,
    `changed` lines differ from that, `to_send` lines wait to be sent; `sent` says whether any
    was, `to_come` how many pieces each supplier still owes, and `came` whether any did.
    """

    lines: int = 0
    checked: int = 0
    stops: int = 0
    approved: bool = False
    changed: int = 0
    to_send: int = 0
    sent: bool = False
    to_come: Mapping[str, int] = field(default_factory=dict)
    came: bool = False

    @property
    def stage(self) -> str:
        """One of `STAGES`; "" where there is nothing to order."""
        to_check, approved, sent_in_part, sent, in_part, received = STAGES
        if not self.approved:
            return to_check if self.lines else ""
        if self.came:
            return in_part if self.to_come or self.to_send else received
        if self.sent:
            return sent_in_part if self.to_send else sent
        return approved

    @property
    def to_check(self) -> int:
        """How many lines nobody has checked as they are."""
        return self.lines - self.checked

    @property
    def may_be_approved(self) -> bool:
        """Every line is checked, and no stop stands."""
        return not self.approved and self.lines > 0 and not self.to_check and not self.stops

    @property
    def is_through(self) -> bool:
        """Nothing is left: neither a stop, nor a line to check, approve, send or wait for."""
        return self.lines > 0 and not what_is_waited_for(self)


def what_is_waited_for(state: OrderState) -> tuple[str, ...]:
    """What has to be done next, in words: `to approve`, `2 lines to send`."""
    waits = []
    if state.stops:
        waits.append(f"{_so_many(state.stops, 'stop')} to settle")
    if not state.approved:
        if state.to_check:
            waits.append(f"{_so_many(state.to_check, 'line')} to check")
        elif state.lines and not state.stops:
            waits.append("to approve")
    if state.changed:
        waits.append(f"{_so_many(state.changed, 'change')} to decide on")
    if state.to_send:
        waits.append(f"{_so_many(state.to_send, 'line')} to send")
    for supplier, pieces in state.to_come.items():
        waits.append(f"{_so_many(pieces, 'item')} from {supplier}")
    return tuple(waits)


def _so_many(count: int, word: str) -> str:
    return f"{count} {word}{'' if count == 1 else 's'}"
