"""What can be known of the next cabinet from those that there are: nothing is asked twice.

A cabinet is built like the last one of its kind, with members as wide, and closed as that one
where it has a plain face. Its label counts on, and it stands where the run on its wall ends
(common practice, no source).
"""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from fronts.rules.kinds import CABINET_KINDS, CabinetBuild, CabinetKind, ClosedBy, Hinged
from fronts.rules.kitchen import Cabinet, Opening
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.limits import LONGEST_LABEL
from fronts.rules.plain_face import PLAIN_FACES

FIRST_WALL = "A"
"""Where cabinets stand before anybody named a wall."""
_NUMBERED = re.compile(r"(.*?)([0-9]+)(\D*)")


@dataclass(frozen=True, slots=True)
class FaceMembers:
    """What a cabinet's face leaves round its openings; None where there is no such member.

    `drawer_height` is that of the highest opening, where others are under it.
    """

    sides: Mm
    above: Mm
    below: Mm
    between: Mm | None
    drawer_height: Mm | None


@dataclass(frozen=True, slots=True)
class NextCabinet:
    """The next cabinet as far as it is known; None is not known.

    `closed_by` is that of a plain face, from the top; empty where the last had none.
    """

    kind: CabinetKind
    label: str
    wall: str
    build: CabinetBuild
    height: Mm | None = None
    depth: Mm | None = None
    members: FaceMembers | None = None
    closed_by: tuple[ClosedBy, ...] = ("door",)
    hinged: Hinged | None = None
    count: int | None = None


def next_cabinet(cabinets: Sequence[Cabinet], kind: CabinetKind, wall: str = "") -> NextCabinet:
    """The cabinet of this kind that comes after these, which are in the order of the job.

    It stands on `wall`, or where that is empty on the wall of the last one.
    """
    last = _last(cabinets, kind)
    latest = cabinets[-1] if cabinets else None
    known = NextCabinet(
        kind=kind,
        label=next_label(cabinets, kind),
        wall=wall or (latest.wall if latest else FIRST_WALL),
        build=latest.build if latest else "face-frame",
    )
    return known if last is None else _built_like(last, known)


def run_end(cabinets: Sequence[Cabinet], wall: str, kind: CabinetKind) -> Mm:
    """Where the run of cabinets on this wall ends.

    Hung cabinets run by themselves, standing ones by themselves; tall ones end both.
    """
    run = [each for each in cabinets if each.wall == wall and _ends(each, kind)]
    return max((each.left + each.width for each in run), default=NOTHING)


def floor_of(cabinets: Sequence[Cabinet], kind: CabinetKind) -> Mm | None:
    """How high above the floor the last of this kind begins.

    None for the first that hangs: nothing tells how high.
    """
    last = _last(cabinets, kind)
    if last is not None:
        return last.y
    return None if CABINET_KINDS[kind].hangs else NOTHING


def next_label(cabinets: Sequence[Cabinet], kind: CabinetKind, after: str | None = None) -> str:
    """The free label that comes after that one, or after the last of this kind."""
    last = _last(cabinets, kind)
    label = after or (last.label if last else None)
    label = counted_on(label) if label else CABINET_KINDS[kind].first_label
    taken = {each.label for each in cabinets}
    while label in taken:
        label = counted_on(label)
    return label


class NewLabels:
    """Labels for what comes new: its own where that is free, else counted on from it.

    Two that differ by case alone are one: nobody could tell them apart on site.
    """

    def __init__(self, taken: Iterable[str]) -> None:
        self._taken = {label.casefold() for label in taken}

    def new(self, label: str) -> str:
        """The next free one; it is taken from now on."""
        while label.casefold() in self._taken:
            label = counted_on(label)
        self._taken.add(label.casefold())
        return label


def members_of(cabinet: Cabinet) -> FaceMembers | None:
    """The members of a cabinet's face; None where it has no opening yet."""
    openings = cabinet.openings
    if not openings:
        return None
    highest = max(openings, key=lambda opening: opening.y)
    tops_under = [_top(opening) for opening in openings if _top(opening) <= highest.y]
    return FaceMembers(
        sides=min(opening.x for opening in openings),
        above=cabinet.height - max(_top(opening) for opening in openings),
        below=min(opening.y for opening in openings),
        between=highest.y - max(tops_under) if tops_under else None,
        drawer_height=highest.height if tops_under else None,
    )


def _built_like(last: Cabinet, known: NextCabinet) -> NextCabinet:
    built = replace(
        known, build=last.build, height=last.height, depth=last.depth, members=members_of(last)
    )
    if not last.openings:
        return built
    down = sorted(last.openings, key=lambda opening: -opening.y)
    face = tuple(opening.closed_by for opening in down)
    if face not in PLAIN_FACES:
        return replace(built, closed_by=())
    return replace(built, closed_by=face, hinged=_hand(down[-1]), count=len(down[-1].fronts))


def _hand(opening: Opening) -> Hinged | None:
    return opening.fronts[0].hinged if opening.fronts else None


def _last(cabinets: Sequence[Cabinet], kind: CabinetKind) -> Cabinet | None:
    return next((each for each in reversed(cabinets) if each.kind == kind), None)


def _ends(cabinet: Cabinet, kind: CabinetKind) -> bool:
    """Whether the next of this kind can't stand where the cabinet does."""
    return CABINET_KINDS[kind].run in CABINET_KINDS[cabinet.kind].ends


def _top(opening: Opening) -> Mm:
    return opening.y + opening.height


def counted_on(label: str) -> str:
    """`B2` after `B1`, `Sink2` after `Sink`; what follows the number stays."""
    numbered = _NUMBERED.fullmatch(label)
    head, number, tail = numbered.groups() if numbered else (label, "1", "")
    count = f"{int(number) + 1}{tail}"
    return f"{head[: LONGEST_LABEL - len(count)]}{count}"
