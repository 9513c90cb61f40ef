"""How long one set-up for a kitchen takes: merged jigs, and the order of least changes.

    python3 manage.py bench set_up

Both against the schedule of the same kitchen, which is worked out for every sheet anyway; and
the order of sixty cabinets of which no two are set up alike, the hardest there is.
"""

import random
from collections.abc import Iterator

from fronts.rules.merged_jigs import merged_jigs
from fronts.rules.order_of_cabinets import least_changes
from fronts.rules.schedule import schedule
from fronts.rules.set_ups import set_ups, tools_used
from tests.benchmarks.figures import Figure, best_ms
from tests.benchmarks.schedule import kitchen_of

CABINETS, ROUNDS = 60, 5
MOST_OF_SCHEDULE = 1.0
TOOLS, OF_EACH = 15, 5


def figures() -> Iterator[Figure]:
    """Merging and ordering in times of the schedule; the hardest order in milliseconds."""
    of = kitchen_of(CABINETS)
    worked = schedule(of)
    alone = best_ms(lambda: schedule(of), ROUNDS)
    merging = best_ms(lambda: merged_jigs(worked, of), ROUNDS)
    plan = merged_jigs(worked, of)
    ups = set_ups(worked, tools_used(worked, of, plan))
    ordering = best_ms(lambda: least_changes(ups), ROUNDS)
    yield Figure(f"schedule of {CABINETS} cabinets", alone, "ms")
    yield Figure("  merged jigs, in times of it", merging / alone, "times", MOST_OF_SCHEDULE)
    yield Figure("  order of cabinets, in times of it", ordering / alone, "times", MOST_OF_SCHEDULE)
    dice = random.Random(1)
    hard = {
        f"B{at}": frozenset(dice.sample(range(TOOLS), OF_EACH)) for at in range(1, CABINETS + 1)
    }
    found = least_changes(hard)
    yield Figure(
        f"order of {CABINETS} cabinets, no two alike, {found.changes} changes",
        best_ms(lambda: least_changes(hard), 1), "ms",
    )  # fmt: skip
    times = found.changes / found.least
    yield Figure("  changes, in times of the fewest proven", times, "times", 1)
