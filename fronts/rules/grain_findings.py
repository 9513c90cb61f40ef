"""What keeps fronts of a set from reading as one piece."""

from collections.abc import Iterator, Sequence

from fronts.rules.cutting_groups import CuttingGroup, cutting_groups
from fronts.rules.findings import FindingWriter
from fronts.rules.grain_blocks import blocks_of
from fronts.rules.grain_sets import SetOnWall
from fronts.rules.kitchen import Kitchen
from fronts.rules.materials import has_grain
from fronts.rules.results import Finding, Part
from fronts.rules.usual_stock import USUAL_SAW, USUAL_SHEET


def grain_findings(
    sets: Sequence[SetOnWall], parts: Sequence[Part], kitchen: Kitchen, writer: FindingWriter
) -> Iterator[Finding]:
    """Everything that is wrong with sets of fronts, set by set."""
    running = [part for part in parts if part.grain is not None]
    for one in sets:
        own = [part for part in running if part.grain and part.grain.name == one.shown.name]
        yield from _set_findings(one, cutting_groups(own), kitchen, writer)


def _set_findings(
    one: SetOnWall, groups: Sequence[CuttingGroup], kitchen: Kitchen, writer: FindingWriter
) -> Iterator[Finding]:
    name, fronts = one.shown.name, one.shown.fronts
    if len(fronts) == 1:
        yield writer.grain_set_of_one(fronts[0], name)
    if one.says_otherwise:
        yield writer.grain_across(one.says_otherwise, name, upright=one.shown.upright)
    made = {part.front for group in groups for part in group.parts}
    lacking = tuple(label for label in fronts if label not in made)
    if lacking:
        yield writer.grain_not_cut(lacking, name)
    plain = [group for group in groups if not has_grain(group.material)]
    if plain:
        without = {part.front for group in plain for part in group.parts}
        fronts_without = tuple(label for label in fronts if label in without)
        yield writer.no_grain(fronts_without, name, plain[0].material)
    if len(groups) > 1:
        stocks = [(group.material, group.thickness) for group in groups]
        yield writer.grain_of_several_stocks(fronts, name, stocks)
    for group in groups:
        yield from _over_sheets(one, group, kitchen, writer)


def _over_sheets(
    one: SetOnWall, group: CuttingGroup, kitchen: Kitchen, writer: FindingWriter
) -> Iterator[Finding]:
    """Said of the usual sheet; the plan itself goes by the sheets that there are."""
    saw, sheet = USUAL_SAW[kitchen.job.unit], USUAL_SHEET[kitchen.job.unit]
    along, across = (side - 2 * saw.trim for side in sheet)
    if not has_grain(group.material):
        return
    blocks = blocks_of(group.parts, saw.kerf, lambda x, y: x <= along and y <= across)
    runs = sum(block.runs for block in blocks)
    if runs > 1:
        yield writer.grain_parted(one.shown.fronts, one.shown.name, sheet, runs, len(blocks))
