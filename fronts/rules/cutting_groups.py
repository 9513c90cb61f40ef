"""Parts sorted as they are cut: by material and thickness, sheets first, then sticks.

Stiles and rails are ripped to width before they are sawn to length, so parts of a frame that
are equally wide are sticks of one width; slabs and panels come out of sheets (common practice,
no source).
"""

import hashlib
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from fronts.rules.lengths import NOTHING, Mm, exact
from fronts.rules.parts import RAIL, STILE
from fronts.rules.results import Part

FRAME_PARTS = (STILE, RAIL)
KEY_LETTERS = 8


@dataclass(frozen=True, slots=True)
class CuttingGroup:
    """Parts that come from the same stock; `width` where all of them are that wide sticks."""

    material: str
    thickness: Mm
    width: Mm | None
    parts: tuple[Part, ...]

    @property
    def key(self) -> str:
        """A short name that stays while the kitchen changes, for forms and stored plans."""
        sizes = [exact(size) for size in (self.thickness, self.width) if size is not None]
        digest = hashlib.sha256("|".join([self.material, *sizes]).encode())
        return digest.hexdigest()[:KEY_LETTERS]

    @property
    def count(self) -> int:
        """How many pieces."""
        return sum(part.count for part in self.parts)

    @property
    def sticks(self) -> bool:
        """Whether it is cut from sticks: all are equally wide parts of frames."""
        return self.width is not None


def cutting_groups(parts: Iterable[Part]) -> list[CuttingGroup]:
    """The groups, each with its largest parts first, as a sheet is broken down."""
    grouped: dict[tuple[bool, str, Mm, Mm], list[Part]] = defaultdict(list)
    for part in parts:
        stick = part.part in FRAME_PARTS
        width = part.width if stick else NOTHING
        grouped[stick, part.material, part.thickness, width].append(part)
    return [
        CuttingGroup(material, thickness, width if stick else None, _largest_first(grouped[key]))
        for key in sorted(grouped)
        for stick, material, thickness, width in [key]
    ]


def _largest_first(parts: Sequence[Part]) -> tuple[Part, ...]:
    return tuple(sorted(parts, key=lambda part: (-part.length, -part.width, part.label)))
