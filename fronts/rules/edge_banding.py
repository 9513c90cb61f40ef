"""How much banding the parts take, and what is wrong with it.

A band is ordered by its length with nothing added for trimming its ends; spares are the shop's
own share (common practice, no source).
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from fronts.rules.banded_edges import PLAIN, USUAL_BANDS, Banding, banding_of, bands_named
from fronts.rules.findings import FindingWriter
from fronts.rules.items import BandItem
from fronts.rules.kinds import FRONT_BUILDS, Unit
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid
from fronts.rules.lengths import BOUGHT_IN, UNITS, Mm
from fronts.rules.materials import PERCENT, Wood, material_of
from fronts.rules.need_lines import NeedLine, summed
from fronts.rules.results import Finding, Front, Need, Part


def bandings_of(
    fronts: Iterable[Front], laid: Iterable[Laid], kitchen: Kitchen, writer: FindingWriter
) -> tuple[dict[str, Banding], list[Finding]]:
    """The banding of each new slab by its label, and what does not fit."""
    bands = kitchen.hardware.bands or USUAL_BANDS
    listed = {band.code for band in bands}
    bandings: dict[str, Banding] = {}
    unknown: dict[str, list[str]] = defaultdict(list)
    findings: list[Finding] = []
    for front, laid_front in zip(fronts, laid, strict=True):
        if not front.is_new or FRONT_BUILDS[front.build].framed:
            continue
        if isinstance(material_of(front.material), Wood):
            continue
        standard = laid_front.standard
        for code in bands_named(standard):
            if code not in listed:
                unknown[code].append(front.label)
        banding = banding_of(
            front.width, front.height, front.material, standard, bands,
            upright=front.grain_upright,
        )  # fmt: skip
        if banding is not None:
            bandings[front.label] = banding
            findings += _findings(front, banding, writer)
    findings += [writer.band_unknown(code, labels) for code, labels in unknown.items()]
    return bandings, findings


def _findings(front: Front, banding: Banding, writer: FindingWriter) -> Iterator[Finding]:
    if min(banding.cut_width, banding.cut_height) <= 0:
        yield writer.no_room_for_bands(front.label)
    for band in dict.fromkeys(band for _, band, _ in banding.edges()):
        if band.width is not None and band.width < front.thickness:
            yield writer.band_too_narrow(front.label, band.code, band.width, front.thickness)


def lengths_of_bands(parts: Iterable[Part]) -> dict[BandItem, dict[str, Mm]]:
    """The length of each band that is named, by the fronts that it goes on."""
    lengths: dict[BandItem, dict[str, Mm]] = defaultdict(lambda: defaultdict(Mm))
    for part in parts:
        for _, band, length in part.banding.edges() if part.banding else ():
            if band != PLAIN:
                lengths[band][part.front] += length * part.count
    return {band: dict(by_front) for band, by_front in lengths.items()}


def plain_banding(parts: Iterable[Part]) -> dict[tuple[str, Mm], Mm]:
    """The length of banding that nobody named, by the slabs' material and thickness."""
    total: dict[tuple[str, Mm], Mm] = defaultdict(Mm)
    for part in parts:
        for _, band, length in part.banding.edges() if part.banding else ():
            if band == PLAIN:
                total[part.material, part.thickness] += length * part.count
    return dict(sorted(total.items()))


def band_needs(parts: Sequence[Part], unit: Unit, spares: Fraction) -> tuple[Need, ...]:
    """What to order of each band that is named, in whole feet or metres."""
    word, lines = BOUGHT_IN[unit], []
    for band, by_front in lengths_of_bands(parts).items():
        lines += [
            NeedLine(
                group="edge band",
                item=f"edge band {band.code}{f', {band.name}' if band.name else ''}",
                front=front,
                count=length / UNITS[word],
                why="the edges that the house standard has banded; nothing added for trimming",
                code=band.code,
                kind="edge band",
                unit=word,
            )
            for front, length in by_front.items()
        ]
    return summed(lines, spares / PERCENT)
