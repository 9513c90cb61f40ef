"""What is learned, in words: averages, spreads, and what a shop might change after them."""

from collections.abc import Mapping
from dataclasses import dataclass

from fronts.figures.sizes import signed
from fronts.figures.work_steps import HEADINGS
from fronts.rules.error_to_expect import SHOWN
from fronts.rules.hanging_method import HangingMethod
from fronts.rules.kinds import SIDES, Unit
from fronts.rules.learned import ENOUGH, Learned, WhatIsLearned
from fronts.rules.learned_suggestions import (
    PLACES,
    SIGMAS,
    SIZES,
    AnotherNumber,
    OffEachTime,
    Suggestion,
    What,
    assumed_squares,
    sample_about,
    suggestions,
)
from fronts.rules.lengths import Mm, show, show_with_unit
from fronts.rules.practice import Practice
from fronts.rules.roots import root_up
from fronts.rules.samples import Sample

_CALLED: Mapping[What, str] = {
    "sideways": "Place, sideways (+ to the right)",
    "upright": "Place, up and down (+ up)",
    "width": "Width (+ too wide)",
    "height": "Height (+ too high)",
}
_OFF: Mapping[What, tuple[str, str]] = {
    "sideways": ("hang {} to the right", "hang {} to the left"),
    "upright": ("hang {} high", "hang {} low"),
    "width": ("come out {} too wide", "come out {} too narrow"),
    "height": ("come out {} too high", "come out {} too low"),
}
"""How they are off above and below zero."""
_NOTHING = "–"


@dataclass(frozen=True, slots=True)
class SampleLine:
    """One kind of error: how many figures, their average and spread, what nearly all keep in.

    `assumed` is what the shop's numbers say instead, "" where they say nothing.
    """

    what: str
    count: int
    average: str
    spread: str
    within: str
    assumed: str = ""


@dataclass(frozen=True, slots=True)
class GroupLine:
    """Fronts that were hung alike, or by one person: averages ± spreads; or too few to tell."""

    name: str
    fronts: int
    errors: tuple[str, ...]
    is_early: bool


@dataclass(frozen=True, slots=True)
class SuggestionLine:
    """What to look at; `number` is the shop's number that it is about, "" for none."""

    words: str
    number: str


@dataclass(frozen=True, slots=True)
class LearnedShown:
    """All of it; `missing` says how many fronts more it takes before anything is suggested."""

    fronts: int
    missing: int
    sides: tuple[SampleLine, ...]
    errors: tuple[SampleLine, ...]
    methods: tuple[GroupLine, ...]
    people: tuple[GroupLine, ...]
    suggestions: tuple[SuggestionLine, ...]


def learned_shown(learned: WhatIsLearned, practice: Practice, unit: Unit) -> LearnedShown:
    """What is learned, in the shop's unit."""
    whole = learned.together
    return LearnedShown(
        fronts=whole.fronts,
        missing=max(ENOUGH - whole.fronts, 0),
        sides=tuple(
            _line(f"Gap at the {side}", whole.sides[side], unit)
            for side in SIDES
            if side in whole.sides
        ),
        errors=tuple(_errors(whole, practice, unit)),
        methods=tuple(_group(_hung(method), group, unit) for method, group in learned.by_method),
        people=tuple(_group(by or "nobody named", group, unit) for by, group in learned.by_person),
        suggestions=tuple(
            _suggested(each, unit) for each in suggestions(learned, practice, SHOWN[unit])
        ),
    )


def _errors(learned: Learned, practice: Practice, unit: Unit) -> list[SampleLine]:
    squares = assumed_squares(practice)
    lines = []
    for what in (*PLACES, *SIZES):
        sample = sample_about(learned, what)
        if sample is not None:
            assumed = show(root_up(squares[what], SHOWN[unit]), unit)
            lines.append(_line(_CALLED[what], sample, unit, assumed))
    return lines


def _line(what: str, sample: Sample, unit: Unit, assumed: str = "") -> SampleLine:
    return SampleLine(
        what=what,
        count=sample.count,
        average=_average(sample, unit),
        spread=_spread(sample, unit),
        within=_spread(sample, unit, SIGMAS),
        assumed=assumed,
    )


def _average(sample: Sample, unit: Unit) -> str:
    return signed(_nearest(sample.mean, unit), unit)


def _spread(sample: Sample, unit: Unit, times: int = 1) -> str:
    spread = sample.spread(SHOWN[unit], times)
    return _NOTHING if spread is None else show(spread, unit)


def _nearest(length: Mm, unit: Unit) -> Mm:
    """An average is said to the nearest mark; what it is exactly, nobody could measure."""
    return round(length / SHOWN[unit]) * SHOWN[unit]


def _group(name: str, group: Learned, unit: Unit) -> GroupLine:
    errors = (sample_about(group, what) for what in (*PLACES, *SIZES))
    told = tuple(_both(each, unit) for each in errors)
    return GroupLine(name, group.fronts, told, not group.is_enough)


def _both(sample: Sample | None, unit: Unit) -> str:
    """`+1/64 ± 1/32`; one figure alone does not spread."""
    if sample is None:
        return _NOTHING
    average = _average(sample, unit)
    return average if sample.variance is None else f"{average} ± {_spread(sample, unit)}"


def _hung(method: HangingMethod | None) -> str:
    return HEADINGS[method].capitalize() if method else "Changed since, or longer ago"


def _suggested(suggestion: Suggestion, unit: Unit) -> SuggestionLine:
    if isinstance(suggestion, OffEachTime):
        return SuggestionLine(_off_each_time(suggestion, unit), "")
    return SuggestionLine(_another_number(suggestion, unit), suggestion.name or "cutting_error")


def _off_each_time(each: OffEachTime, unit: Unit) -> str:
    by = show_with_unit(abs(_nearest(each.mean, unit)), unit)
    how = _OFF[each.what][each.mean < 0].format(by)
    whose = ""
    if each.method is not None:
        whose = f" ({HEADINGS[each.method]})"
    elif each.by is not None:
        whose = f" hung by {each.by or 'nobody named'}"
    where = (
        "the stop of the saw, and how openings are measured"
        if each.what in SIZES
        else "the jigs and shims, and what the box stands on while it is set"
    )
    return f"Over {each.count} fronts{whose} they {how} on average. Look at {where}."


def _another_number(each: AnotherNumber, unit: Unit) -> str:
    seen, assumed = show_with_unit(each.seen, unit), show_with_unit(each.assumed, unit)
    kept = f"seen over {each.count} fronts: nearly all within {seen}"
    if each.about == "place":
        use = show_with_unit(each.use or each.seen, unit)
        return f"Setting is assumed to be off by {assumed} at most; {kept}. Use {use}?"
    what = f"Measuring and cutting together are assumed to be off by {assumed} at most; {kept}."
    if each.use is None:
        return f"{what} You work closer than you say: smaller numbers would do."
    use = show_with_unit(each.use, unit)
    return f"{what} Use {use} for cutting, or a larger number for measuring?"
