"""Which stocked screw: short enough not to come through, or long enough to hold.

A wood screw through the box front must bite into the front and leave a skin of it; a machine
screw through a stack must engage the knob by its own diameter and not bottom in it (common
practice, no source).
"""

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from fronts.rules.face import Face, Through
from fronts.rules.job_facts import Stock
from fronts.rules.lengths import INCH, Mm, exact
from fronts.rules.practice import Practice

NUMBER_0 = Fraction(60, 1000) * INCH
PER_NUMBER = Fraction(13, 1000) * INCH
"""Screw sizes by number: 0.060 + 0.013·N in (ASME B18.6.1 wood screws, B18.6.3 machine screws)."""


def diameter_of_number(number: int) -> Mm:
    """Nominal diameter of a numbered screw."""
    return NUMBER_0 + PER_NUMBER * number


MOST_NUMBER = 24
"""The largest number of a wood screw in ASME B18.6.1."""


@lru_cache(maxsize=64)
def screw_name(diameter: Mm) -> str:
    """What a screw of this diameter is called: `#8`, `M4`, else `⌀ 4.3 mm`."""
    for number in range(MOST_NUMBER + 1):
        if diameter_of_number(number) == diameter:
            return f"#{number}"
    return f"M{exact(diameter)}" if (2 * diameter).denominator == 1 else f"⌀ {exact(diameter)} mm"


THREAD = re.compile(
    r"M ?(?P<metric>[0-9]{1,2}(?:\.[0-9]{1,2})?)"
    r"|#?(?P<number>[0-9]{1,2})-[0-9]{2}"
    r"|(?P<ratio>[0-9]{1,2}/[1-9][0-9]?)-[0-9]{2}",
    re.IGNORECASE,
)


@lru_cache(maxsize=1024)
def thread_diameter(thread: str) -> Mm | None:
    """Major diameter of a thread as it is said: `8-32`, `10-24`, `1/4-20`, `M4`; None: not one."""
    said = THREAD.fullmatch(thread.strip())
    if said is None:
        return None
    if said["number"]:
        return diameter_of_number(int(said["number"]))
    diameter = Fraction(said["metric"]) if said["metric"] else Fraction(said["ratio"]) * INCH
    return diameter or None


A_THREAD = "a thread like 8-32, 1/4-20 or M4"
"""What is wanted where a thread is asked for."""


def is_thread(text: str) -> bool:
    """Whether the text is a thread and nothing else."""
    return text == text.strip() and thread_diameter(text) is not None


@lru_cache(maxsize=1024)
def mounting_screw(
    stocked: tuple[Mm, ...], box_front: Mm, front: Mm, skin: Mm, bite: Mm
) -> Mm | None:
    """The longest stocked length that leaves `skin` of the front and bites `bite` into it."""
    return max(
        (length for length in stocked if box_front + bite <= length <= box_front + front - skin),
        default=None,
    )


@lru_cache(maxsize=1024)
def machine_screw(
    stocked: tuple[Mm, ...], stack: Mm, engagement: Mm, thread_depth: Mm
) -> Mm | None:
    """The shortest stocked length that engages the knob and does not bottom in it."""
    return min(
        (length for length in stocked if stack + engagement <= length <= stack + thread_depth),
        default=None,
    )


@dataclass(frozen=True, slots=True)
class KnobChoice:
    """The knob screw: its length, whether it goes through the box front, or needs a recess."""

    length: Mm
    through_box: bool
    recess: bool


def knob_screw(
    stocked: tuple[Mm, ...],
    face: Face,
    through: Through,
    box_front: Mm | None,
    engagement: Mm,
    thread_depth: Mm,
    practice: Practice,
) -> KnobChoice | None:
    """The knob's screw; `box_front` None where the knob does not sit over the box.

    Where none is right through both, the way out is a recess in the box front for the
    screw's head: the screw then goes through the front alone.
    """
    stack = face.stack(through, box_front)
    length = machine_screw(stocked, stack, engagement, thread_depth)
    if length is not None:
        return KnobChoice(length, through_box=box_front is not None, recess=False)
    if box_front is None or box_front < practice.recess_depth + practice.recess_wall:
        return None
    alone = machine_screw(stocked, face.stack(through, None), engagement, thread_depth)
    return None if alone is None else KnobChoice(alone, through_box=False, recess=True)


def knob_screw_alone(stock: Stock, thread: str, stack: Mm) -> Mm | None:
    """The knob's screw where it goes through the front and nothing else."""
    diameter = thread_diameter(thread)
    if diameter is None:
        return None
    return machine_screw(stock.knob_screw_lengths, stack, diameter, stock.knob_thread_depth)


def play(hole: Mm, screw: Mm) -> Mm:
    """How far a screw can move each way in its hole."""
    return (hole - screw) / 2
