"""The six sizes of an opening, in the order in which a person takes them on site.

Across, up and down, then corner to corner: without walking round twice (common practice, no
source).
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Literal, TypeAlias

from fronts.rules.facts import single_facts
from fronts.rules.kitchen import Measured
from fronts.rules.lengths import Mm

Across: TypeAlias = Literal["width", "height", "diagonal"]


@dataclass(frozen=True, slots=True)
class SiteSize:
    """One size: the name of its fact, what it is the size of, its pair, and where it is taken.

    `short` is what it is called where there is little room.
    """

    name: str
    across: Across
    pair: str
    where: str
    short: str

    @property
    def says(self) -> str:
        """As its fact is called: `width at the top`."""
        return _SAYS[self.name]

    @property
    def title(self) -> str:
        """On one line: `width at the top`, `diagonal ↗`."""
        return f"{self.across} {self.short}" if self.across == "diagonal" else self.says


_SAYS = {path: fact.declared.says for _, path, fact in single_facts(Measured)}
_ORDER = (
    SiteSize("width_top", "width", "width_bottom", "at the top", "top"),
    SiteSize("width_bottom", "width", "width_top", "at the bottom", "bottom"),
    SiteSize("height_left", "height", "height_right", "at the left", "left"),
    SiteSize("height_right", "height", "height_left", "at the right", "right"),
    SiteSize("diagonal_1", "diagonal", "diagonal_2", "from bottom left", "↗"),
    SiteSize("diagonal_2", "diagonal", "diagonal_1", "from top left", "↘"),
)
SITE_SIZES: Mapping[str, SiteSize] = MappingProxyType({size.name: size for size in _ORDER})
"""By their names, in their order."""
NAMES = tuple(SITE_SIZES)


def length_of(measured: Measured, name: str) -> Mm | None:
    """What was measured of a size, None where it was not."""
    length: Mm | None = getattr(measured, name)
    return length


def missing(measured: Measured) -> tuple[SiteSize, ...]:
    """The sizes that nobody took yet."""
    return tuple(size for size in _ORDER if length_of(measured, size.name) is None)


def following(measured: Measured, name: str) -> SiteSize | None:
    """Which size comes after this one, None after the last.

    Who measures again goes through all of them, who goes on where sizes are missing through
    those alone.
    """
    later = _ORDER[NAMES.index(name) + 1 :]
    if length_of(measured, name) is not None:
        return next(iter(later), None)
    wanted = missing(measured)
    return next((size for size in later if size in wanted), None)


def with_size(measured: Measured, name: str, length: Mm | None, pair: Mm | None) -> Measured:
    """What was measured, with one size as it is now; `pair` is a diagonal's, taken just before.

    One diagonal says nothing by itself, so that one that is taken away takes the other along.
    """
    size = SITE_SIZES[name]
    if size.across != "diagonal":
        return replace(measured, **{name: length})
    other = None if length is None else length_of(measured, size.pair) or pair
    return replace(measured, **{name: length, size.pair: other})
