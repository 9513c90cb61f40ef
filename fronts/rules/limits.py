"""How many and how long at most: more than this is another thing, or a slip of the finger."""

from fractions import Fraction

from fronts.rules.kinds import MOST_FRONTS
from fronts.rules.lengths import INCH, LONGEST, Mm

__all__ = ["MOST_FRONTS"]

MOST_CABINETS = 5000
MOST_OPENINGS = 60
"""In one cabinet."""
MOST_FRONTS_IN_ALL = 20_000
MOST_DOORS = 5000
MOST_BORES = 50
"""In one door."""
MOST_PIN_ROWS = 50
MOST_PINS = 500
"""In one row."""
MOST_LENGTHS = 200
"""Of one kind in stock."""
MOST_TABLE_ROWS = 20
MOST_HINGES = 20
LEAST_KG = Fraction(1, 1000)
MOST_KG = Fraction(1000)
COARSEST_STEP = INCH
MOST_FITS = 100_000
MOST_TICKS = 400_000
"""Of the steps of the work, on all fronts of a job."""
MOST_CHECKS = 5000
MOST_SENDINGS = 200
MOST_SNAGS = 400
"""On one job; all of them stand on one page."""
MOST_STAGE_DAYS = 250
"""Working days that one stage of a job takes: a year of them."""
MOST_LEAD_DAYS = 250
MOST_AT_ONCE = 100
"""Jobs at one stage on one day."""
MOST_CLOSED = 400
"""Times that a shop is closed, past and to come."""
LONGEST_CLOSED = 366
"""Days at a stretch."""
LONGEST_MARK = 3 * 366
"""Days since a stage was marked as begun or done, when that is said."""
LONGEST_CLOSED_NAME = 60
MOST_PHOTOS = 200
"""Of a job's walls."""
MOST_SNAG_PHOTOS = 12
"""Of one snag."""
MOST_NEEDED = 1_000_000
"""Of one item of hardware."""

LONGEST_LABEL = 40
LONGEST_FRONT_LABEL = 100
"""Cabinet's, opening's, and a number."""
LONGEST_FACE = 300
"""What closes a cabinet, in words."""
LONGEST_NOTEBOOK = 200_000
"""Of lines that are entered together."""
LONGEST_MATERIAL = 80
LONGEST_MAKERS_WORD = 80
"""Of what a door maker is told in words: a style, a profile, a finish."""
LONGEST_NOTE = 400
LONGEST_SUPPLIER = 80
LONGEST_REFERENCE = 80
LONGEST_STEP = 400
"""Letters of a step of the work on a front, with the figures in it."""
LONGEST_SET = 40
"""What fronts whose grain runs on are called together."""
MOST_ITEMS = 200
"""Of one kind on a shop's list."""
MOST_HANDLES = 8
"""On one front."""
MOST_SHELVES = 20
"""In one box."""
MOST_WALLS = 200
MOST_THINGS = 2000
LONGEST_ITEM_NAME = 120
LONGEST_ITEM = 200
"""What a line of the hardware list is called."""
LONGEST_NAME = 301
"""A person's first and last name with the space between them."""
LONGEST_THREAD = 20
LONGEST_WORD = 20
"""Of the words that a fact chooses from."""
LONGEST_CLIENT = 120
LONGEST_SITE = 240


def length_fault(length: Mm, *, zero: bool, signed: bool, most: Mm = LONGEST) -> str | None:
    """What is wrong with a length, or None; `zero` and `signed` say what has a meaning."""
    if length < 0 and not signed:
        return "this is negative; enter a size"
    if length == 0 and not zero:
        return "this is nothing; enter a size above zero"
    return "this is more than 20 m" if abs(length) > most else None
