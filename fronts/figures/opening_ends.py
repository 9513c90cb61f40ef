"""How square fronts lie in openings that taper or lean, in words: both ends of every side."""

from collections.abc import Iterable, Mapping

from fronts.figures.sizes import signed
from fronts.rules.fits import ENDS
from fronts.rules.kinds import SIDES, is_inset
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front, Schedule
from fronts.rules.wall_results import OpeningEnds


def ends_by_front(schedule: Schedule, fronts: Iterable[Front]) -> Mapping[str, OpeningEnds]:
    """The openings of these fronts that taper or lean, by the labels of their fronts."""
    ends = {opening.opening: opening for opening in schedule.openings}
    return {front.label: ends[front.label] for front in fronts if front.label in ends}


def opening_ends(schedule: Schedule, fronts: Iterable[Front], unit: str) -> list[tuple[str, str]]:
    """`left 1/16 at the top, 3/16 at the bottom; …`, each opening with its label."""
    fronts = list(fronts)
    found = ends_by_front(schedule, fronts)
    return [
        (front.label, _words(front, found[front.label], unit))
        for front in fronts
        if front.label in found
    ]


def _words(front: Front, opening: OpeningEnds, unit: str) -> str:
    inset = is_inset(front.plane)
    sides = []
    for side in SIDES:
        first, last = (_figure(length, unit, inset=inset) for length in opening.ends[side])
        one, other = ENDS[side]
        sides.append(f"{side} {first} at the {one}, {last} at the {other}")
    return f"{'gaps' if inset else 'laps'} {'; '.join(sides)}"


def _figure(length: Mm, unit: str, *, inset: bool) -> str:
    """A gap below zero is one that the front would not go into."""
    return show(length, unit) if inset and length >= 0 else signed(length, unit)
