"""Bought fronts as they came: each as its maker was told to make it then."""

from dataclasses import dataclass
from datetime import datetime
from typing import Annotated

from fronts.rules.bought_results import BoughtFront
from fronts.rules.fact_kinds import Group, Text
from fronts.rules.limits import LONGEST_FRONT_LABEL, LONGEST_NOTE


@dataclass(frozen=True, slots=True)
class ReceiptFacts:
    """A front that was checked off, called `label` then, as it was on the list, and a note."""

    label: Annotated[str, Text("front", LONGEST_FRONT_LABEL)]
    front: Annotated[BoughtFront, Group("came as", "")]
    note: Annotated[str, Text("note", LONGEST_NOTE)] = ""


@dataclass(frozen=True, slots=True)
class RecordedReceipt:
    """A front that came: called so now, or then where it has gone; when, and by whom checked."""

    front: str
    at: datetime
    by: str
    facts: ReceiptFacts
    gone: bool = False
