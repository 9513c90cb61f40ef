"""Parts to saw as lines of a cut list, on the page and on paper."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass

from fronts.figures.bands import band_words, finished_words
from fronts.figures.sizes import size
from fronts.rules.banded_edges import PLAIN
from fronts.rules.grain_results import GrainPlace
from fronts.rules.lengths import Mm, show
from fronts.rules.materials import has_grain
from fronts.rules.results import Part


@dataclass(frozen=True, slots=True)
class PartLine:
    """Parts of one size; their grain runs along the length.

    `fronts` say for which they are, and how many where a front wants several;
    `keep` is said of fronts of one grain set, and of the drawer fronts of one stack, where their
    grain is seen to run on; `bands` of edges that are banded with a band of the shop's list,
    which makes it larger.
    """

    part: str
    length: str
    width: str
    count: int
    fronts: tuple[str, ...]
    keep: str
    bands: str


def part_lines(parts: Iterable[Part], unit: str) -> list[PartLine]:
    """The same sizes counted together, but for those whose grain runs on; largest first."""
    same: dict[tuple[Mm, Mm, str, str, str], list[Part]] = defaultdict(list)
    for part in parts:
        key = -part.length, -part.width, part.part, _together(part), _bands(part, unit)
        same[key].append(part)
    return [
        PartLine(
            part=part_words(name),
            length=show(-length, unit),
            width=show(-width, unit),
            count=sum(part.count for part in alike),
            fronts=tuple(_front(part) for part in alike),
            keep=f"{together}: keep the grain in order" if together else "",
            bands=bands,
        )
        for (length, width, name, together, bands), alike in sorted(same.items())
    ]


def part_words(part: str) -> str:
    """`box side`, as it is said; files say `box-side`."""
    return part.replace("-", " ")


def _bands(part: Part, unit: str) -> str:
    """A plain band, that nobody named, is told beside the list."""
    if not part.banding or all(band == PLAIN for _, band, _ in part.banding.edges()):
        return ""
    return "; ".join(filter(None, (band_words(part), finished_words(part, unit))))


def _together(part: Part) -> str:
    """The fronts that a part's grain runs on among, "" where it has none or is cut alone."""
    if not has_grain(part.material):
        return ""
    if part.grain:
        return f"grain set {part.grain.name}"
    return f"one stack, {part.stack}" if part.stack else ""


def _front(part: Part) -> str:
    said = f"{part.front} ×{part.count}" if part.count > 1 else part.front
    running = part.grain if has_grain(part.material) else None
    return f"{said} ({place_in_set(running)})" if running else said


def place_in_set(grain: GrainPlace) -> str:
    """`2 of 8`."""
    return f"{grain.number} of {grain.of}"


def material_name(material: str, unit: str, thickness: Mm, width: Mm | None = None) -> str:
    """`MDF 3/4`, or for sticks `maple 3/4 × 2 1/4`."""
    sizes = [length for length in (thickness, width) if length is not None]
    return f"{material} {size(unit, *sizes)}"
