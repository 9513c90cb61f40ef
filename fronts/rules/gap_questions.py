"""Whether a gap that was measured round a front is asked about before it is recorded.

A gap under the least one lets fronts touch over the year; one that is farther from the plan
than a reading can be off, or far wider than any gap, is more often a slip of the finger than
a front (common practice, no source). It is a question and no fault.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from fronts.rules.fits import Gaps
from fronts.rules.kinds import SIDES, Side
from fronts.rules.lengths import Mm, show
from fronts.rules.practice import Practice


@dataclass(frozen=True, slots=True)
class GapQuestion:
    """A gap that is asked about, and `beside` which length it is too far off or too narrow."""

    side: Side
    found: Mm
    why: Literal["far from planned", "wider than a gap", "under the least gap"]
    beside: Mm


def gap_questions(
    found: Gaps, planned: Gaps, least: Mm, practice: Practice
) -> Iterator[GapQuestion]:
    """What to ask about the gaps round a front whose least gap is `least`: once a side.

    What is as planned is not asked about, however narrow it was planned.
    """
    for side in SIDES:
        asked = (_question(side, gap, planned, least, practice) for gap in found.figures(side))
        yield from [question for question in asked if question is not None][:1]


def _question(
    side: Side, gap: Mm, planned: Gaps, least: Mm, practice: Practice
) -> GapQuestion | None:
    wanted = planned.mean(side)
    if gap in planned.figures(side):
        return None
    if wanted is None and gap > practice.filler:
        return GapQuestion(side, gap, "wider than a gap", practice.filler)
    if wanted is not None and abs(gap - wanted) > practice.asked_off_plan:
        return GapQuestion(side, gap, "far from planned", wanted)
    return GapQuestion(side, gap, "under the least gap", least) if gap < least else None


def gap_question_words(question: GapQuestion, unit: str) -> str:
    """`left 125, far from planned, 1/8`."""
    found, beside = show(question.found, unit), show(question.beside, unit)
    return f"{question.side} {found}, {question.why}, {beside}"
