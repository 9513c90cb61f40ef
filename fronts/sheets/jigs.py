"""All jigs and shims of the kitchen on one sheet, with the pieces to cut for them."""

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from django.utils.safestring import SafeString

from fronts.drawings.jig import jig_drawing
from fronts.figures import cautions
from fronts.figures.findings import findings_of
from fronts.figures.jigs import JigLine, jig_line, shim_line
from fronts.figures.set_ups import PAIR
from fronts.figures.sizes import size
from fronts.rules.fitting_results import Jig, Shim
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show
from fronts.rules.merged_jigs import JigPlan
from fronts.sheets.sheet_page import SheetSource, page

_TO_SUIT = "width to suit"


@dataclass(frozen=True, slots=True)
class JigRow:
    """One jig with its drawing, and those that its blank is shared with."""

    line: JigLine
    shares: str
    drawing: SafeString


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece to cut; thickness × length, and what else there is to say."""

    piece: str
    count: str
    size: str
    more: str


def content(source: SheetSource) -> str:
    """The sheet of jigs and shims as HTML."""
    schedule, plan = source.schedule, source.jig_plan
    unit = schedule.job.unit
    thickest = {each.label: each.thickness for each in schedule.fronts}
    jigs = sorted(plan.jigs, key=lambda each: (each.thickness, each.length))
    rows = [_jig_row(each, jigs, thickest, unit) for each in jigs]
    context = {
        "title": "Jigs and shims",
        "stops": findings_of(schedule).stops,
        "jig_rows": [rows[start : start + 2] for start in range(0, len(rows), 2)],
        "cautions_beside": len(rows) % 2 == 1 and not schedule.shims,
        "spared": len(plan.spared),
        "pieces": pieces_of(plan, schedule.shims, source.kitchen),
        "shims": [shim_line(shim, unit) for shim in schedule.shims],
        "about": show(source.kitchen.practice.bottom_shim_length, unit),
        "cautions": cautions.at_bench(plan.jigs, schedule.shims, schedule.fronts),
    }
    return page("jigs.html", source, context)


def _jig_row(jig: Jig, jigs: Sequence[Jig], thickness_of: Mapping[str, Mm], unit: str) -> JigRow:
    thick = max(thickness_of[each] for each in jig.fronts)
    svg = jig_drawing(jig, thick, unit=unit, room=(330_00, 170_00))
    others = [
        show(each.length, unit)
        for each in jigs
        if each is not jig and each.thickness == jig.thickness
    ]
    shares = f"{', '.join(others)} long" if others else ""
    return JigRow(jig_line(jig, unit), shares, SafeString(svg))


def pieces_of(plan: JigPlan, shims: Sequence[Shim], kitchen: Kitchen) -> list[Piece]:
    """Blocks, ledges, packers and shims, the same sizes counted together."""
    unit = kitchen.job.unit
    blocks: Counter[tuple[Mm, Mm, Mm]] = Counter()
    ledges: Counter[tuple[Mm, Mm]] = Counter()
    for jig in plan.jigs:
        blocks[jig.thickness, jig.length, jig.ledges.block_depth] += 1
        ledges[jig.ledges.thickness, jig.ledges.length] += jig.ledges.count
    found = [
        Piece("jig block", str(count), size(unit, *sizes), "thick × long × deep")
        for sizes, count in sorted(blocks.items())
    ]
    found += [
        Piece("ledge", str(count), size(unit, *sizes), f"thick × long, {_TO_SUIT}")
        for sizes, count in sorted(ledges.items())
    ]
    found += [
        Piece("packer", str(PAIR), show(each.thickness, unit), f"thick, length and {_TO_SUIT}")
        for each in plan.packers
    ]
    for shim in shims:
        found += _shim_pieces(shim, kitchen.practice.bottom_shim_length, unit)
    return found


def _shim_pieces(shim: Shim, length: Mm, unit: str) -> list[Piece]:
    thick = show(shim.thickness, unit)
    found = []
    if shim.side:
        found.append(Piece("side shim", str(shim.side), thick, f"thick, length and {_TO_SUIT}"))
    if shim.bottom:
        sizes = size(unit, shim.thickness, length)
        found.append(Piece("bottom shim", str(shim.bottom), sizes, "thick × about long"))
    return found
