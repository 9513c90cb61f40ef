"""What a shop might change of its numbers, after what is learned: a word, never a change.

An average is told where it is no chance: farther from nothing than `SURE` standard errors.
A spread stands against what the shop assumes: an assumed error is what nearly every front keeps
within, and that is three standard deviations (F. Scholz, Tolerance Stack Analysis Methods, 1995:
tolerances as ±3σ). Where a front hangs is the shop's error of setting; its size is measuring and
cutting together, root-sum-square, which no gap can tell apart.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from types import MappingProxyType
from typing import Literal, TypeAlias

from fronts.rules.hanging_method import HangingMethod
from fronts.rules.learned import Learned, WhatIsLearned
from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice
from fronts.rules.roots import root_up
from fronts.rules.samples import Sample

SURE = 3
"""Standard errors: by chance an average is so far off three times in a thousand."""
SIGMAS = 3
"""Standard deviations that make an error which nearly every front keeps within."""

What: TypeAlias = Literal["sideways", "upright", "width", "height"]
PLACES: tuple[What, ...] = ("sideways", "upright")
SIZES: tuple[What, ...] = ("width", "height")


@dataclass(frozen=True, slots=True)
class OffEachTime:
    """Fronts that come out off by `mean` on average: all, or those hung so, or by one person."""

    what: What
    count: int
    mean: Mm
    method: HangingMethod | None = None
    by: str | None = None


@dataclass(frozen=True, slots=True)
class AnotherNumber:
    """An error that is seen to be another than the shop assumes; `use` for its number `name`.

    "" and None: that two numbers make, and either may be changed.
    """

    about: Literal["place", "size"]
    count: int
    assumed: Mm
    seen: Mm
    name: str = ""
    use: Mm | None = None


Suggestion: TypeAlias = OffEachTime | AnotherNumber


def assumed_squares(practice: Practice) -> Mapping[What, Fraction]:
    """The square of the error that the shop assumes of each, mm²."""
    place = practice.setting_error**2
    size = practice.measuring_error**2 + practice.cutting_error**2
    return MappingProxyType(dict.fromkeys(PLACES, place) | dict.fromkeys(SIZES, size))


def suggestions(learned: WhatIsLearned, practice: Practice, step: Mm) -> list[Suggestion]:
    """What there is to say, figures up to the step; nothing where it is too early."""
    if not learned.together.is_enough:
        return []
    return [*_off_each_time(learned, step), *_other_numbers(learned.together, practice, step)]


def _off_each_time(learned: WhatIsLearned, step: Mm) -> Iterator[OffEachTime]:
    """Of all fronts; where these are not, of those that were hung so, or by one person."""
    every = list(_averages(learned.together, step))
    yield from every
    said = {each.what for each in every}
    for method, group in learned.by_method:
        for each in _averages(group, step) if method is not None else ():
            if each.what not in said:
                yield replace(each, method=method)
    for by, group in learned.by_person:
        for each in _averages(group, step):
            if each.what not in said:
                yield replace(each, by=by)


def _averages(learned: Learned, step: Mm) -> Iterator[OffEachTime]:
    """Those that are no chance, and no less than what a rule shows."""
    for what in (*PLACES, *SIZES):
        sample = sample_about(learned, what)
        if sample and learned.is_enough and abs(sample.mean) >= step and sample.is_off(SURE):
            yield OffEachTime(what, sample.count, sample.mean)


def _other_numbers(learned: Learned, practice: Practice, step: Mm) -> Iterator[AnotherNumber]:
    place, size = (_widest(learned, names) for names in (PLACES, SIZES))
    squares = assumed_squares(practice)
    if place is not None and _is_another(place, squares["sideways"], step):
        seen = root_up(_seen_square(place), step)
        assumed = practice.setting_error
        yield AnotherNumber("place", place.count, assumed, seen, "setting_error", seen)
    if size is not None and _is_another(size, squares["width"], step):
        seen, assumed = (root_up(each, step) for each in (_seen_square(size), squares["width"]))
        left = _seen_square(size) - practice.measuring_error**2
        if _seen_square(size) > squares["width"]:
            use = root_up(left, step)
            yield AnotherNumber("size", size.count, assumed, seen, "cutting_error", use)
        else:
            yield AnotherNumber("size", size.count, assumed, seen)


def _is_another(sample: Sample, assumed: Fraction, step: Mm) -> bool:
    """Whether it is seen to be larger, or no more than half: what a rule shows decides.

    Where nothing varies at all, gaps were taken as they were planned, and nothing is said.
    """
    seen = root_up(_seen_square(sample), step)
    if not seen:
        return False
    return _seen_square(sample) > assumed or (2 * seen) ** 2 <= assumed


def _widest(learned: Learned, names: Sequence[What]) -> Sample | None:
    """The one that spreads most."""
    samples = [sample_about(learned, name) for name in names]
    telling = [one for one in samples if one is not None and one.variance is not None]
    return max(telling, key=_seen_square, default=None)


def _seen_square(sample: Sample) -> Fraction:
    return (sample.variance or Fraction(0)) * SIGMAS**2


def sample_about(learned: Learned, what: What) -> Sample | None:
    """What the fronts say of this."""
    return {
        "sideways": learned.sideways, "upright": learned.upright,
        "width": learned.width, "height": learned.height,
    }[what]  # fmt: skip
