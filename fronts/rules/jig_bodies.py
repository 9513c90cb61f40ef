"""Which fronts move as one when their jigs are made thicker or thinner, and how far they may.

A merged jig is as thick as one that is wanted anyway, or as the shop's step allows. It moves a
front by a share of its holes' play at most (`jig_play`, in per cent): the rest stays for the
errors of measuring and setting. A front keeps all that `setting_room` says, and what makes one
line with others moves with them or, where one of them stands on no jig, not at all.
"""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeAlias

from fronts.rules.fitting_results import Fitting
from fronts.rules.hanging_method import hanging_method
from fronts.rules.jigs import setting_method
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import NOTHING, Mm, ceiling_to
from fronts.rules.materials import PERCENT
from fronts.rules.results import Schedule
from fronts.rules.setting_room import Room, lines, setting_rooms

Length: TypeAlias = Mm | None
"""Of a jig; None: packers, which stand at both ends of a box of any width."""


@dataclass(frozen=True, slots=True)
class Want:
    """What one or more fronts of a body want: a jig's length, its thickness, for how many."""

    length: Length
    thickness: Mm
    count: int


@dataclass(frozen=True, slots=True)
class Body:
    """Fronts that move as one; `shifts` are those that leave each a jig that can be made."""

    fronts: tuple[str, ...]
    wants: tuple[Want, ...]
    shifts: tuple[Mm, ...]

    @property
    def is_simple(self) -> bool:
        """Whether one jig serves all of it."""
        return len(self.wants) == 1


def is_supported(fitting: Fitting, schedule: Schedule) -> bool:
    """Whether a jig or packers carry the front."""
    method = hanging_method(schedule.front(fitting.front), fitting)
    return method in ("jig", "inset-jig", "packers")


def length_of(fitting: Fitting) -> Length:
    return fitting.jig_length if fitting.method == "jig" else None


def _reach(fitting: Fitting, kitchen: Kitchen) -> Room:
    reach = max(fitting.play * kitchen.practice.jig_play / PERCENT, NOTHING)
    return Room(reach, reach)


def bodies_on_jigs(
    supported: Sequence[Fitting], schedule: Schedule, kitchen: Kitchen
) -> list[Body]:
    reach = {each.front: _reach(each, kitchen) for each in supported}
    rooms = setting_rooms(schedule, kitchen, reach)
    of = {each.front: each for each in supported}
    most = max((room.up for room in reach.values()), default=NOTHING)
    found = []
    for line in lines(schedule, kitchen, most):
        fittings = [each for each in supported if each.front in line]
        room = Room(NOTHING, NOTHING)
        if fittings and line <= of.keys():
            room = rooms[fittings[0].front]
            for each in fittings:
                room = room.within(rooms[each.front])
        if fittings:
            found.append(_body(fittings, room, supported, kitchen))
    return found


def _body(
    fittings: Sequence[Fitting], room: Room, supported: Sequence[Fitting], kitchen: Kitchen
) -> Body:
    counts: dict[tuple[Length, Mm], int] = defaultdict(int)
    for each in fittings:
        counts[length_of(each), each.jig_thickness] += 1
    shifts: set[Mm] | None = None
    for each in fittings:
        makeable = _makeable(each, room, supported, kitchen)
        shifts = makeable if shifts is None else shifts & makeable
    return Body(
        tuple(each.front for each in fittings),
        tuple(Want(length, thick, count) for (length, thick), count in counts.items()),
        tuple(sorted({NOTHING, *(shifts or ())})),
    )


def _makeable(
    fitting: Fitting, room: Room, supported: Sequence[Fitting], kitchen: Kitchen
) -> set[Mm]:
    """The shifts at which its jig is one that is wanted anyway, or on the step, and still one."""
    step, wanted = kitchen.job.step, fitting.jig_thickness
    least, most = wanted - room.up, wanted + room.down
    thicknesses = {
        each.jig_thickness for each in supported if length_of(each) == length_of(fitting)
    }
    on_step = ceiling_to(least, step)
    while on_step <= most:
        thicknesses.add(on_step)
        on_step += step
    return {
        wanted - thick
        for thick in thicknesses
        if least <= thick <= most
        and setting_method(thick, kitchen.job.unit) == fitting.method
        and (fitting.slot is None or thick > fitting.slot.depth or thick >= wanted)
    }
