"""Whether a size that was measured on site is asked about: far from its pair, or from the plan.

A tape is read an inch off, or two digits change places, more often than a cabinet is that far
from its drawing (common practice, no source). It is a question and no fault: old houses are.
What agrees with its pair is not asked about, since its pair was; nor what agrees with what was
measured there before. The shop's numbers say how far is far.
"""

from dataclasses import dataclass
from math import isqrt

from fronts.rules.fits import mean_of
from fronts.rules.kitchen import Opening
from fronts.rules.lengths import Mm, show
from fronts.rules.opening_sizes import heights_of, widths_of
from fronts.rules.practice import Practice
from fronts.rules.site_sizes import SITE_SIZES, SiteSize, length_of

_ROOT_PARTS = 100
"""A diagonal is worked out to this part of a millimetre, then rounded to the shop's step."""


@dataclass(frozen=True, slots=True)
class Compared:
    """How a size compares: `by` so much more than another, which `words` name."""

    by: Mm
    words: str


def size_question(
    opening: Opening, name: str, length: Mm, pair: Mm | None, practice: Practice, step: Mm
) -> Compared | None:
    """What to ask about a size of the opening that is `length` now; None: nothing.

    `pair` is the other of its pair where that was taken just now and is not in the opening yet.
    """
    size, measured = SITE_SIZES[name], opening.measured
    was, other = length_of(measured, name), length_of(measured, size.pair) or pair
    if was is not None and abs(length - was) <= practice.asked_off_pair:
        return None
    if other is not None:
        by, most = length - other, practice.asked_off_pair
        words = "the other diagonal" if size.across == "diagonal" else SITE_SIZES[size.pair].where
        return Compared(by, words) if abs(by) > most else None
    by = length - planned_size(opening, size, step)
    words = "its width and height make" if size.across == "diagonal" else "planned"
    return Compared(by, words) if abs(by) > practice.asked_off_plan else None


def question_words(question: Compared, length: Mm, unit: str) -> str:
    """`12 1/2 more than planned, (20 15/16): is it 33 7/16?`."""
    by, other = abs(question.by), length - question.by
    more = "more" if question.by > 0 else "less"
    return (
        f"{show(by, unit)} {more} than {question.words} ({show(other, unit)}): "
        f"is it {show(length, unit)}?"
    )


def planned_size(opening: Opening, size: SiteSize, step: Mm) -> Mm:
    """What the size is expected to be: as planned; a diagonal as the sizes so far make it."""
    if size.across != "diagonal":
        return plan_of(opening, size)
    width, height = mean_of(widths_of(opening)), mean_of(heights_of(opening))
    return round(_root(width * width + height * height) / step) * step


def plan_of(opening: Opening, size: SiteSize) -> Mm:
    """The width or the height on the plan."""
    return opening.width if size.across == "width" else opening.height


def off_by(opening: Opening, name: str, length: Mm) -> Compared:
    """How far a size is from the plan, or a diagonal from the other one."""
    size = SITE_SIZES[name]
    if size.across == "diagonal":
        other = length_of(opening.measured, size.pair)
        return Compared(length - (length if other is None else other), "the other")
    return Compared(length - plan_of(opening, size), "planned")


def _root(square: Mm) -> Mm:
    return Mm(isqrt(int(square * _ROOT_PARTS * _ROOT_PARTS)), _ROOT_PARTS)
