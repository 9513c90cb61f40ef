"""What people put their names to on a job: fits, order checks, what came, snags, cuts, ticks."""

from dataclasses import dataclass
from datetime import datetime
from typing import Annotated

from fronts.rules.cut_fronts import RecordedCut
from fronts.rules.fact_kinds import Count, Label, Text, YesNo
from fronts.rules.fits import RecordedFit
from fronts.rules.limits import LONGEST_ITEM, LONGEST_NOTE, MOST_NEEDED
from fronts.rules.order_facts import LineFacts
from fronts.rules.receipts import RecordedReceipt
from fronts.rules.snags import RecordedSnag


@dataclass(frozen=True, slots=True)
class CheckFacts:
    """A line of the hardware list as it was checked: the item, how many, and a note.

    `open`: it counts as not checked, by whoever took the check back or wrote a note alone.
    """

    item: Annotated[str, Label("item", LONGEST_ITEM, example="hinge")]
    need: Annotated[int, Count("need", 0, MOST_NEEDED)] = 0
    note: Annotated[str, Text("note", LONGEST_NOTE)] = ""
    open: Annotated[bool, YesNo("still to check")] = False


@dataclass(frozen=True, slots=True)
class RecordedCheck:
    """A line that was checked, when and by whom, and all that it was checked `against`.

    Of checks from before that was noted nobody knows it. Without `at` nobody checked it: it
    stood on the list when somebody began to go through it, and is not new.
    """

    facts: CheckFacts
    at: datetime | None = None
    by: str = ""
    fingerprint: str = ""
    against: LineFacts | None = None


@dataclass(frozen=True, slots=True)
class RecordedTick:
    """A step of the work on a front that was ticked off, in its words as they were then."""

    front: str
    step: str
    at: datetime
    by: str = ""


@dataclass(frozen=True, slots=True)
class Records:
    """Everything recorded on a job, each kind in its order."""

    fits: tuple[RecordedFit, ...] = ()
    checks: tuple[RecordedCheck, ...] = ()
    receipts: tuple[RecordedReceipt, ...] = ()
    snags: tuple[RecordedSnag, ...] = ()
    cuts: tuple[RecordedCut, ...] = ()
    ticks: tuple[RecordedTick, ...] = ()


NO_RECORDS = Records()
