"""Cases of findings along a wall: fronts and cabinets that meet."""

from dataclasses import replace

from fronts.rules.kitchen import Cabinet, Kitchen
from tests.rules.finding_cases import Case, lapping, one, two
from tests.rules.small_kitchens import beside, cabinet, inch, kitchen, opening

A, BOTH = ("B1.a",), ("B1.a", "B2.a")
STEP = inch("1/64")


def _apart(lap: str, **changes: object) -> Kitchen:
    first = cabinet(opening(standard=lapping(lap, lap, "1/2", "1/2")))
    return replace(two(first, **changes), job=replace(kitchen().job, step=STEP))


def _lap(left: str, right: str, top: str, bottom: str, **changes: object) -> Kitchen:
    of = opening("fixed", standard=lapping(left, right, top, bottom))
    return kitchen(cabinet(of, **changes))


def _corner(far: str) -> Kitchen:
    first = cabinet(opening("fixed", standard=lapping("1/2", "1 9/16", "1/2", "1/2")))
    bare = beside(first, openings=(), x=first.left + first.width + inch(far))
    return kitchen(first, bare)


def _side_by_side(up: str) -> Kitchen:
    first: Cabinet = cabinet(opening())
    return two(first, y=first.y + inch(up))


CASES = [
    Case("1/32 apart", "fronts-too-close", "stop", BOTH, _apart("1 31/64"), _apart("1 15/32")),
    Case("overlapping", "fronts-too-close", "stop", BOTH,
         _apart("1 17/32"), _apart("1 17/32", depth=inch("12"))),
    Case("past the end on the left", "past-cabinet-edge", "stop", A,
         _lap("1 9/16", "1/2", "1/2", "1/2"), _lap("1 1/2", "1/2", "1/2", "1/2")),
    Case("past the end on the right", "past-cabinet-edge", "stop", A,
         _lap("1/2", "1 9/16", "1/2", "1/2"), _lap("1/2", "1 1/2", "1/2", "1/2")),
    Case("past the top", "past-cabinet-edge", "stop", A,
         _lap("1/2", "1/2", "1 9/16", "1/2"), _lap("1/2", "1/2", "1 1/2", "1/2")),
    Case("past the bottom, with room below", "past-cabinet-edge", "check", A,
         _lap("1/2", "1/2", "1/2", "1 9/16"), _lap("1/2", "1/2", "1/2", "1 1/2")),
    Case("below the floor", "past-cabinet-edge", "stop", A,
         _lap("1/2", "1/2", "1/2", "1 9/16", y=inch("0")),
         _lap("1/2", "1/2", "1/2", "1 1/2", y=inch("0"))),
    Case("the run ends 3 1/16 on", "past-cabinet-edge", "stop", A,
         _corner("3 1/16"), _corner("3")),
    Case("lines miss by 3/16", "lines-miss", "note", BOTH,
         _side_by_side("3/16"), _side_by_side("1/4")),
    Case("lines miss by 1/128", "lines-miss", "note", BOTH,
         _side_by_side("1/128"), _side_by_side("0")),
    Case("1/16 in of one place", "cabinets-overlap", "check", ("B1", "B2"),
         two(cabinet(opening()), x=inch("17 15/16")), two(cabinet(opening()))),
    Case("one over the other", "cabinets-overlap", "check", ("B1", "B2"),
         two(cabinet(opening()), x=inch("0"), y=inch("34 7/16")),
         two(cabinet(opening()), x=inch("0"), y=inch("34 1/2"))),
    Case("on one wall only", "cabinets-overlap", "check", ("B1", "B2"),
         two(cabinet(opening()), x=inch("1")), two(cabinet(opening()), x=inch("1"), wall="West")),
    Case("too close on one wall only", "fronts-too-close", "stop", BOTH,
         two(cabinet(opening()), x=inch("16")),
         two(cabinet(opening()), x=inch("16"), wall="West")),
]  # fmt: skip


def least_gaps_differ() -> Kitchen:
    """Two fronts 1/8 in apart, one of which wants 3/16."""
    first = cabinet(opening(standard=lapping("1/2", "1 7/16", "1/2", "1/2")))
    picky = replace(lapping("1 7/16", "1/2", "1/2", "1/2"), least_gap=inch("3/16"))
    return two(first, openings=(opening(standard=picky),))


def alone() -> Kitchen:
    """A single cabinet with nothing wrong about it."""
    return one(opening())
