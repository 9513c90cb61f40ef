"""Offcuts in words, the same on pages and on paper."""

from fronts.cutting.offcuts_left import OffcutLeft
from fronts.figures.cutting_plan import sheet_name
from fronts.figures.sizes import size
from fronts.models import CutPlan
from fronts.rules.offcuts import OffcutFacts, offcut_label
from fronts.selectors.offcuts import lost_offcuts


def offcut_size(facts: OffcutFacts, unit: str) -> str:
    """`24 × 16 in`, of a stick `40 in`: how long it is, and how wide."""
    sides = [facts.length] if facts.is_stick else [facts.length, facts.width]
    return f"{size(unit, *sides)} {unit}"


def left_of(left: OffcutLeft) -> str:
    """Which sheet a piece comes off: `sheet 2`, and which of several."""
    named, copies = sheet_name(left.layout, left.number + 1), left.layout.count
    return f"{named}, number {left.copy + 1} of {copies}" if copies > 1 else named


def lost_words(plan: CutPlan) -> list[str]:
    """What a plan counts on and can't have: `Offcut R3 is laid by for job K-2`."""
    return [f"Offcut {offcut_label(number)} {why}" for number, why in lost_offcuts(plan).items()]
