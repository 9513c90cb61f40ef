"""A line of a notebook, read by itself: what its first word is tells what may follow."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import TypeAlias

from fronts.notebook.face import BESIDE, CELLS, OVER, STACK, WIDE, Face, Faces, face_at
from fronts.notebook.faults import NotUnderstood
from fronts.notebook.sizes import AT, MARKS, Sizes, like, sizes_at
from fronts.notebook.thing_lines import THING_WORDS, UPPER, ThingLine, thing_line
from fronts.notebook.words import Words, quoted
from fronts.rules import lengths
from fronts.rules.kinds import CabinetBuild, CabinetKind, Unit
from fronts.rules.lengths import Mm

WALL, CABINETS = "wall", "cabinets"
_REMARK = "#"
_KINDS: Mapping[str, CabinetKind] = {"base": "base", "tall": "tall"}
_BUILDS: Mapping[str, tuple[CabinetBuild, tuple[str, ...]]] = {
    "face": ("face-frame", ("frame",)),
    "frameless": ("frameless", ()),
}
"""The words that say how cabinets are built, each with the word that follows it."""
_STARTS = frozenset({WALL, UPPER, *_KINDS, *_BUILDS, *THING_WORDS})
_OWN_WORDS = _STARTS | {*CELLS, STACK, OVER, BESIDE, WIDE, AT, *MARKS}
_A_LINE = (
    "a cabinet's label and width, or wall, wall cabinets, base, tall, face frame, frameless, "
    "filler, end panel, gap, appliance, upper"
)


@dataclass(frozen=True, slots=True)
class WallLine:
    """What follows stands on this wall, of this length if it is said."""

    label: str
    length: Mm | None


@dataclass(frozen=True, slots=True)
class KindLine:
    """From here on cabinets are of this kind, and of these sizes where they are said."""

    kind: CabinetKind
    sizes: Sizes


@dataclass(frozen=True, slots=True)
class BuildLine:
    """From here on cabinets are built so; `member` None: as wide as is usual."""

    build: CabinetBuild
    member: Mm | None


@dataclass(frozen=True, slots=True)
class CabinetLine:
    """A cabinet, with the sizes in which it differs from its kind."""

    label: str
    width: Mm
    sizes: Sizes
    face: Face


@dataclass(frozen=True, slots=True)
class LostLine:
    """A line that was refused, and was to say of which kind others are, or on which `wall`."""

    wall: bool


Line: TypeAlias = WallLine | KindLine | BuildLine | CabinetLine | ThingLine


def without_remark(text: str) -> str:
    """What a line says; nothing where it is empty but for a remark."""
    said, _, _ = text.partition(_REMARK)
    return said if said.strip() else ""


def read_line(text: str, unit: Unit, saved: Faces) -> Line:
    """What a line without its remark says, all of it; else NotUnderstood."""
    unseen = next((sign for sign in text if not (sign.isprintable() or sign.isspace())), None)
    if unseen is not None:
        raise NotUnderstood(f"the unseen character U+{ord(unseen):04X}", "plain text")
    words = Words(text, unit)
    line = _READERS.get(words.plain_word, _cabinet_line)(words, saved)
    if not words.ended:
        words.refuse("nothing more")
    return line


def _wall_line(words: Words, _: Faces) -> Line:
    words.need(WALL)
    if words.take(CABINETS):
        return KindLine("wall", _kind_sizes(words))
    label = words.label("the wall's name in one word, like North")
    length = None if words.ended else words.needed_size("the wall's length, or nothing more")
    return WallLine(label, length)


def _kind_line(words: Words, _: Faces) -> Line:
    kind = _KINDS[lengths.plain(words.any_word())]
    return KindLine(kind, _kind_sizes(words))


def _kind_sizes(words: Words) -> Sizes:
    sizes = sizes_at(words, MARKS)
    if not words.ended:
        words.refuse(f"{like(MARKS)}, each once, or nothing more")
    return sizes


def _build_line(words: Words, _: Faces) -> Line:
    build, following = _BUILDS[lengths.plain(words.any_word())]
    words.need(*following)
    member = None if words.ended else words.needed_size("the width of its members, or nothing more")
    return BuildLine(build, member)


def _cabinet_line(words: Words, saved: Faces) -> Line:
    if words.plain_word in _OWN_WORDS:
        words.refuse(_A_LINE)
    label = words.label(_A_LINE)
    width = words.needed_size(f"the width of cabinet “{label}”")
    sizes = sizes_at(words, (*MARKS, AT))
    start = words.at
    try:
        return CabinetLine(label, width, sizes, face_at(words, saved))
    except NotUnderstood as fault:
        wanted = f"{like((*MARKS, AT))}, or {fault.wanted}" if words.at == start else fault.wanted
        if not any(sign.isdigit() for sign in label):
            wanted += f"; {quoted(label)} is taken for a cabinet's label"
        raise NotUnderstood(fault.found, wanted) from None


_READERS: Mapping[str, Callable[[Words, Faces], Line]] = {
    WALL: _wall_line,
    **dict.fromkeys(_KINDS, _kind_line),
    **dict.fromkeys(_BUILDS, _build_line),
    **dict.fromkeys((UPPER, *THING_WORDS), lambda words, _: thing_line(words)),
}
"""How a line is read, by its first word; any other begins with a cabinet's label."""


def lost_line(text: str) -> LostLine | None:
    """What others lack because this line can't be read; None: nothing rests on it."""
    first, *_ = lengths.plain(text).split()
    return LostLine(wall=first == WALL) if first in (WALL, *_KINDS) else None
