"""Which standard suits the doors that there are: laps tried one by one, and the best of them.

Every choice is worked out as the whole kitchen, so that what is said of it is what comes of it.
The best is the one with which most doors on hand serve; of those, the one with which least is
sawn off them; then the fewest stops, and the fewest lines that miss. Between equals the one
named first, the smallest, is taken. What is said at a cabinet or an opening itself goes on
holding there.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from fronts.rules.job_facts import JobFacts
from fronts.rules.kinds import FRONT_KINDS, Mount, Unit, is_inset
from fronts.rules.kitchen import CHOOSE, Cabinet, FrontFacts, Kitchen, Opening
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.practice import inches
from fronts.rules.results import DoorUse
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard

USUAL_RANGES: Mapping[Mount, Mapping[Unit, tuple[Mm, Mm]]] = {
    "overlay": {"in": (inches(1, 4), inches(3, 4)), "mm": (Mm(6), Mm(19))},
    "inset": {"in": (inches(1, 16), inches(3, 16)), "mm": (Mm(2), Mm(4))},
}
"""The least and the largest lap, or gap, worth a look (common practice, no source)."""
MOST_FRONTS = 3200
"""Fronts worked out for one answer: a few seconds' work."""
FEWEST_CHOICES = 9
"""So many can be tried in a kitchen of any size."""
LINES_MISS = "lines-miss"


@dataclass(frozen=True, slots=True)
class Laps:
    """One choice: how far fronts lap, or how wide an inset front's gaps are.

    `across` holds at the left and the right, `along` at the top and the bottom.
    """

    mount: Mount
    across: Mm
    along: Mm

    @property
    def sides(self) -> Sides[Mm]:
        """Each side's."""
        return Sides(left=self.across, right=self.across, top=self.along, bottom=self.along)


@dataclass(frozen=True, slots=True)
class Outcome:
    """What comes of a choice; `laps` is None for the standard as it is.

    `uses` are the doors that serve, `made` counts the fronts without one that were to have one.
    """

    laps: Laps | None
    uses: tuple[DoorUse, ...]
    made: int
    stops: int
    misses: int

    @property
    def served(self) -> int:
        """How many doors serve."""
        return len(self.uses)

    @property
    def trimmed(self) -> Mm:
        """What is sawn off all doors together, in width and in height."""
        return sum((use.trim_width + use.trim_height for use in self.uses), NOTHING)

    @property
    def merit(self) -> tuple[int, Mm, int, int]:
        """Less is better."""
        return -self.served, self.trimmed, self.stops, self.misses


@dataclass(frozen=True, slots=True)
class Range:
    """The laps or gaps that a shop allows: from the least to the most, `by` apart."""

    least: Mm
    most: Mm
    by: Mm

    @property
    def count(self) -> int:
        """How many lengths there are in it."""
        return (self.most - self.least) // self.by + 1

    @property
    def lengths(self) -> list[Mm]:
        """From the least up, as far as the most."""
        return [self.least + self.by * number for number in range(self.count)]


def usual_range(mount: Mount, job: JobFacts) -> Range:
    """Laps in the job's step; gaps, which are small, in half of it."""
    by = job.step / 2 if is_inset(mount) else job.step
    return Range(*USUAL_RANGES[mount][job.unit], by)


def choices(mount: Mount, lengths: Sequence[Mm], *, apart: bool) -> list[Laps]:
    """The same all round, or with `apart` the sides and the ends each with a length of its own."""
    if not apart:
        return [Laps(mount, length, length) for length in lengths]
    return [Laps(mount, across, along) for across in lengths for along in lengths]


def most_choices(kitchen: Kitchen) -> int:
    """How many choices are worked out at once in a kitchen of this size."""
    fronts = sum(len(opening.fronts) for one in kitchen.cabinets for opening in one.openings)
    return max(FEWEST_CHOICES, MOST_FRONTS // max(fronts, 1))


def with_laps(standard: Standard, laps: Laps) -> Standard:
    """The standard with these laps or gaps in place of its own."""
    if is_inset(laps.mount):
        return replace(standard, mount=laps.mount, inset_gap=laps.sides)
    return replace(standard, mount=laps.mount, overlay=laps.sides, reveal=None)


def outcomes(kitchen: Kitchen, tried: Iterable[Laps]) -> Iterator[Outcome]:
    """What comes of each choice, in their order."""
    for laps in tried:
        standard = with_laps(kitchen.standard, laps)
        yield outcome(replace(kitchen, standard=standard), laps)


def outcome(kitchen: Kitchen, laps: Laps | None = None) -> Outcome:
    """What comes of the kitchen's standard, which has these laps."""
    worked_out = schedule(kitchen)
    wanting = sum(
        front.door_on_hand is not None
        for cabinet in kitchen.cabinets
        for opening in cabinet.openings
        for front in opening.fronts
    )
    return Outcome(
        laps=laps,
        uses=worked_out.doors_on_hand,
        made=wanting - len(worked_out.doors_on_hand),
        stops=sum(finding.level == "stop" for finding in worked_out.findings),
        misses=sum(finding.code == LINES_MISS for finding in worked_out.findings),
    )


def best(found: Sequence[Outcome]) -> Outcome:
    """The one with which most doors serve, least is sawn off and lines meet."""
    return min(found, key=lambda each: each.merit)


def best_without_more_stops(found: Sequence[Outcome], now: Outcome) -> Outcome | None:
    """The best of those that bring no stop beside today's; None where each does."""
    sound = [each for each in found if each.stops <= now.stops]
    return best(sound) if sound else None


def takes_doors(kitchen: Kitchen) -> bool:
    """Whether any front is to be whichever door on hand fits."""
    return any(
        front.door_on_hand == CHOOSE
        for cabinet in kitchen.cabinets
        for opening in cabinet.openings
        for front in opening.fronts
    )


def open_to_doors(kitchen: Kitchen) -> Kitchen:
    """The kitchen in which a door on hand may become every door whose size the rules give."""
    return replace(kitchen, cabinets=tuple(_open_cabinet(each) for each in kitchen.cabinets))


def _open_cabinet(cabinet: Cabinet) -> Cabinet:
    return replace(cabinet, openings=tuple(_open_opening(each) for each in cabinet.openings))


def _open_opening(opening: Opening) -> Opening:
    traits = FRONT_KINDS[opening.closing.front]
    if not (traits.opens and traits.upright):
        return opening
    return replace(opening, fronts=tuple(_open_front(each) for each in opening.fronts))


def _open_front(front: FrontFacts) -> FrontFacts:
    stated = (front.door_on_hand, front.width, front.height)
    if front.glass or any(fact is not None for fact in stated):
        return front
    return replace(front, door_on_hand=CHOOSE)
