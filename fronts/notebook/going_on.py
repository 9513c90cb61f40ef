"""Lines added to a kitchen that there is: what it tells holds on, as if its lines stood before."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from fronts.notebook.face import NO_FACES, Faces
from fronts.notebook.lines import CabinetLine, Line
from fronts.notebook.read import take_lines
from fronts.notebook.regular_face import regular_face
from fronts.notebook.standing import Standing
from fronts.rules.kinds import CabinetKind
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.member_width import member_width
from fronts.rules.runs import in_order, standing_in
from fronts.rules.wall_facts import Thing, Wall


@dataclass(frozen=True, slots=True)
class Added:
    """What lines add to a kitchen; `walls` are those that are new to it or are told a length."""

    walls: tuple[Wall, ...]
    cabinets: tuple[Cabinet, ...]
    others: tuple[Thing, ...]


def read_more(text: str, kitchen: Kitchen, wall: str, saved: Faces = NO_FACES) -> Added:
    """What the lines add behind all that stands on the wall; `NotebookRefused` with every fault.

    Cabinets are of the kind, sizes and build of the last one, on the wall if there is one, until
    a line says otherwise.
    """
    standing = standing_behind(kitchen, wall)
    return _added(standing, lambda: take_lines(text, kitchen.job.unit, standing, saved))


def stand_lines(lines: Sequence[Line], kitchen: Kitchen, wall: str) -> Added:
    """The same of lines that are read already; `NotUnderstood` by the first that can't be."""
    standing = standing_behind(kitchen, wall)

    def take() -> None:
        numbered = list(enumerate(lines, start=1))
        standing.labels.write(
            (n, line.label) for n, line in numbered if isinstance(line, CabinetLine)
        )
        for number, line in numbered:
            standing.take(number, line)

    return _added(standing, take)


def standing_behind(kitchen: Kitchen, wall: str) -> Standing:
    """What holds for a line that comes behind all that stands on the wall."""
    unit = kitchen.job.unit
    standing = Standing(unit, kitchen.job.step, (what.label for what in standing_in(kitchen)))
    for known in kitchen.walls:
        standing.walls.go_to(known.label, known.length)
    for what in in_order(kitchen):
        standing.walls.go_to(what.wall, None)
        standing.walls.stands(what.label)
    latest: dict[CabinetKind, Cabinet] = {}
    for cabinet in sorted(kitchen.cabinets, key=lambda one: one.wall == wall):
        latest.pop(cabinet.kind, None)
        latest[cabinet.kind] = cabinet
    for cabinet in latest.values():
        face = regular_face(cabinet, unit, kitchen.job.step)
        member = face.member if face else member_width(cabinet.build, unit)
        standing.go_on_from(cabinet, member)
    if wall:
        standing.walls.go_to(wall, None)
    return standing


def _added(standing: Standing, take: Callable[[], None]) -> Added:
    before = {known.label: known.length for known in standing.walls.all}
    take()
    told = (one for one in standing.walls.all if before.get(one.label, _NEW) != one.length)
    return Added(tuple(told), tuple(standing.cabinets), tuple(standing.others))


_NEW = object()
