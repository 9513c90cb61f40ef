"""What stands on the walls, line after line of a notebook: what was told holds on."""

from collections.abc import Callable, Iterable, Mapping
from typing import Any

from fronts.notebook.faults import NotUnderstood
from fronts.notebook.labels import Labels
from fronts.notebook.lines import BuildLine, CabinetLine, KindLine, Line, LostLine, WallLine
from fronts.notebook.openings import Around, openings_of
from fronts.notebook.sizes import AT, DEEP, HIGH, MARKS, UP, Sizes, like
from fronts.notebook.thing_lines import ThingLine
from fronts.notebook.walls import Walls
from fronts.notebook.words import quoted
from fronts.rules.kinds import CABINET_KINDS, CabinetBuild, CabinetKind, Unit
from fronts.rules.kitchen import Cabinet
from fronts.rules.lengths import Mm
from fronts.rules.limits import MOST_CABINETS, MOST_THINGS
from fronts.rules.member_width import member_width
from fronts.rules.thing_kinds import Run
from fronts.rules.wall_facts import Thing

FIRST_BUILD: Mapping[Unit, CabinetBuild] = {"in": "face-frame", "mm": "frameless"}
"""How cabinets are built until a line says otherwise; common practice, no source."""
_A_KIND = "its kind and sizes in a line before it, like base 30 high 24 deep 4 up"
_UPPER: Run = "upper"


class Standing:
    """What the lines so far came to, and what holds for the next one."""

    def __init__(self, unit: Unit, step: Mm, taken: Iterable[str] = ()) -> None:
        self.walls = Walls(unit)
        self.labels = Labels(taken)
        self.cabinets: list[Cabinet] = []
        self.others: list[Thing] = []
        self._unit, self._step = unit, step
        self._build = FIRST_BUILD[unit]
        self._member = member_width(self._build, unit)
        self._kind: CabinetKind | None = None
        self._kind_lost = False
        self._sizes: dict[CabinetKind, Sizes] = {}

    def go_on_from(self, cabinet: Cabinet, member: Mm) -> None:
        """Let what a cabinet that is there tells hold for the next one."""
        self._kind, self._build, self._member = cabinet.kind, cabinet.build, member
        self._sizes[cabinet.kind] = {HIGH: cabinet.height, DEEP: cabinet.depth, UP: cabinet.y}

    @property
    def kind_now(self) -> CabinetKind | None:
        """The kind that holds for the next cabinet; None: no line said one yet."""
        return self._kind

    def usual(self, kind: CabinetKind) -> Sizes:
        """The sizes that hold for the next cabinet of a kind, as far as they are told."""
        return self._sizes.get(kind, {})

    def take(self, number: int, line: Line | LostLine) -> None:
        """Go on by a line; NotUnderstood where what it says can't be."""
        _TAKE[type(line)](self, number, line)

    def lose(self, _: int, line: LostLine) -> None:
        """Blame no later line for lacking what a refused one was to say."""
        self.walls.lost = self.walls.lost or line.wall
        self._kind, self._kind_lost = None, True

    def wall(self, _: int, line: WallLine) -> None:
        """What follows stands on this wall."""
        self.walls.go_to(line.label, line.length)

    def kind(self, _: int, line: KindLine) -> None:
        """From here on cabinets are of this kind; what is left out stays as that kind had it."""
        sizes = {**self._sizes.get(line.kind, {}), **line.sizes}
        self._sizes[line.kind], self._kind = sizes, line.kind
        missing = tuple(mark for mark in MARKS if mark not in sizes)
        self._kind_lost = bool(missing)
        if missing:
            raise NotUnderstood(
                f"the first {line.kind} cabinets without {' and '.join(missing)}",
                f"{like(missing)} too",
            )

    def build(self, _: int, line: BuildLine) -> None:
        """From here on cabinets are built so."""
        self._build = line.build
        usual = member_width(line.build, self._unit)
        self._member = usual if line.member is None else line.member

    def cabinet(self, number: int, line: CabinetLine) -> None:
        """A cabinet of the kind, build and wall that hold, but for what it says itself."""
        self.labels.check(number, line.label)
        wall, _ = self.walls.followed(f"cabinet {quoted(line.label)}")
        self.walls.stands(line.label)
        if self._kind is None and not self._kind_lost:
            raise NotUnderstood(f"cabinet {quoted(line.label)}", _A_KIND)
        if self._kind is None or self._kind_lost:
            return
        sizes = self._sizes_of(self._kind, line.sizes)
        if len(self.cabinets) >= MOST_CABINETS:
            raise NotUnderstood("one more", f"at most {MOST_CABINETS:,} cabinets")
        around = Around(line.width, sizes[HIGH], self._member, self._unit, self._step)
        self.cabinets.append(
            Cabinet(
                line.label,
                self._kind,
                self._build,
                wall,
                x=sizes.get(AT),
                y=sizes[UP],
                width=line.width,
                height=sizes[HIGH],
                depth=sizes[DEEP],
                openings=openings_of(line.face, around),
            )
        )

    def thing(self, _: int, line: ThingLine) -> None:
        """A thing after what came before it on its wall."""
        wall, after = self.walls.followed(line.kind.replace("-", " "))
        label = self.labels.counted_on(line.kind)
        self.walls.stands(label)
        if len(self.others) >= MOST_THINGS:
            raise NotUnderstood("one more", f"at most {MOST_THINGS:,} things beside cabinets")
        self.others.append(
            Thing(
                label,
                line.kind,
                wall,
                line.width,
                after=after,
                run=_UPPER if line.upper else None,
                x=line.sizes.get(AT),
                height=line.sizes.get(HIGH),
                depth=line.sizes.get(DEEP),
                name=line.name,
            )
        )

    def _sizes_of(self, kind: CabinetKind, own: Sizes) -> Sizes:
        """A hung cabinet with a height of its own keeps its kind's top line, if no more is said."""
        usual = self._sizes[kind]
        sizes = {**usual, **own}
        if CABINET_KINDS[kind].hangs and UP not in own:
            sizes[UP] = usual[UP] + usual[HIGH] - sizes[HIGH]
        return sizes


_TAKE: Mapping[type, Callable[[Standing, int, Any], None]] = {
    WallLine: Standing.wall,
    KindLine: Standing.kind,
    BuildLine: Standing.build,
    CabinetLine: Standing.cabinet,
    ThingLine: Standing.thing,
    LostLine: Standing.lose,
}
