"""How much edge banding the parts take: by band, or by material where nobody named one."""

from collections.abc import Iterator, Sequence

from fronts.figures.parts import material_name
from fronts.figures.sizes import bought_length
from fronts.rules.edge_banding import lengths_of_bands, plain_banding
from fronts.rules.lengths import NOTHING
from fronts.rules.results import Part


def banding_rows(parts: Sequence[Part], unit: str) -> Iterator[tuple[str, str]]:
    """What it is called, and its length as it is bought."""
    for band, by_front in lengths_of_bands(parts).items():
        name = f"{band.code} {band.name}".strip()
        yield name, bought_length(sum(by_front.values(), NOTHING), unit)
    for (material, thickness), length in plain_banding(parts).items():
        yield material_name(material, unit, thickness), bought_length(length, unit)
