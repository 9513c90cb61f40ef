"""How long the pure schedule takes: a kitchen of 30 cabinets, and one of 1,000.

    python3 manage.py bench schedule

Cost should grow no faster than the work: 1,000 cabinets within 40 times what 30 take.
"""

import gc
from collections.abc import Iterator
from dataclasses import replace

from fronts.rules.box_facts import Box, ShelfPins
from fronts.rules.job_facts import JobFacts, Stock
from fronts.rules.kitchen import CHOOSE, Cabinet, DoorOnHand, FrontFacts, Kitchen, Opening
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from tests.benchmarks.figures import Figure, best_ms

FEW, MANY = 30, 1000
WALLS = ("North", "East", "West")
MOST_MS, MOST_TIMES = 25, 40
ROUNDS_OF_FEW, ROUNDS_OF_MANY = 25, 5

MEMBER = inches(3, 2)
WIDE, HIGH = inches(15), inches(27)
BOX = Box(inches(14), inches(24), inches(3, 4), inches(1, 2), depth=inches(21))
LOW_BOX = replace(BOX, height=inches(6))
PINS = ShelfPins(inches(7), inches(3), inches(1), 20, inches(1, 4))
SLIDE = replace(
    BOX, slide="bottom", slide_width=inches(7, 4), slide_height=inches(1, 2), shelf_pins=(PINS,)
)
PLAIN = Opening("a", MEMBER, MEMBER, WIDE, HIGH, "door", (FrontFacts(hinged="left"),))
INSET = Standard(mount="inset")
OPENINGS = (
    PLAIN,
    replace(PLAIN, closed_by="pair", fronts=(), width=inches(33)),
    replace(
        PLAIN, closed_by="drawers",
        fronts=tuple(FrontFacts(box=replace(LOW_BOX, rise=inches(rise))) for rise in (19, 10, 1)),
    ),
    replace(PLAIN, closed_by="pull-out", fronts=(FrontFacts(box=SLIDE),)),
    replace(PLAIN, closed_by="pull-out", fronts=(FrontFacts(door_on_hand=CHOOSE, box=BOX),)),
    replace(
        PLAIN, closed_by="pull-out",
        fronts=(FrontFacts(build="five-piece", material="hard maple", box=SLIDE),),
    ),
    replace(PLAIN, fronts=(FrontFacts(material="cherry", hinged="left"),), standard=INSET),
    replace(PLAIN, closed_by="pair", fronts=(FrontFacts(build="five-piece"),) * 2),
)  # fmt: skip


def kitchen_of(count: int) -> Kitchen:
    """A kitchen of so many cabinets, of every kind in turn, along three walls."""
    at = dict.fromkeys(WALLS, Mm(0))
    cabinets = []
    for index in range(count):
        wall = WALLS[index % len(WALLS)]
        of = OPENINGS[index % len(OPENINGS)]
        width = of.width + 2 * MEMBER
        cabinets.append(
            Cabinet(
                f"B{index + 1}", "base", "face-frame", wall, at[wall], inches(4), width,
                HIGH + 2 * MEMBER, inches(24), (of,),
            )
        )  # fmt: skip
        at[wall] += width
    doors = tuple(
        DoorOnHand(f"D{n}", inches(16) + n % 9, inches(28) + n % 7, inches(3, 4))
        for n in range(count // len(OPENINGS))
    )
    half = inches(1, 2)
    return Kitchen(
        job=JobFacts("BENCH"),
        standard=Standard(overlay=Sides(half, half, half, half)),
        cabinets=tuple(cabinets),
        doors_on_hand=doors,
        stock=Stock(
            tuple(inches(each, 4) for each in (3, 4, 5, 6)),
            tuple(inches(each, 4) for each in (4, 7)),
            slide_lengths=tuple(inches(each) for each in range(12, 26, 2)),
        ),
    )


def milliseconds(count: int, rounds: int) -> float:
    """The best of so many rounds for a kitchen of this size."""
    of = kitchen_of(count)
    return best_ms(lambda: schedule(of), rounds, before=gc.collect)


def figures() -> Iterator[Figure]:
    """Both times, and how many times longer the large kitchen takes."""
    few, many = milliseconds(FEW, ROUNDS_OF_FEW), milliseconds(MANY, ROUNDS_OF_MANY)
    fronts = len(schedule(kitchen_of(FEW)).fronts)
    yield Figure(f"schedule of {FEW} cabinets, {fronts} fronts", few, "ms", MOST_MS)
    yield Figure(f"schedule of {MANY:,} cabinets", many, "ms")
    yield Figure("  in times of the small one", many / few, "times", MOST_TIMES)
