"""Which fronts must not be cut: those that a stop names, or whose opening it names.

What is wrong with an opening is wrong with every front of it.
"""

from fronts.rules.labels import opening_label
from fronts.rules.results import Schedule


def stopped_fronts(schedule: Schedule) -> frozenset[str]:
    """The labels of the fronts that must not be cut."""
    stopped = {
        place for finding in schedule.findings if finding.level == "stop" for place in finding.where
    }
    return frozenset(
        front.label
        for front in schedule.fronts
        if stopped & {front.label, opening_label(front.cabinet, front.opening)}
    )
