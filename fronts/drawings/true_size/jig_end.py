"""A jig's end as large as it is, to mark its block and ledges by; and its slot from the front."""

from fronts.drawings.true_size.measured import level_size, upright_size
from fronts.drawings.true_size.outline import Figure, Outline, Span
from fronts.figures.templates import in_both_units
from fronts.rules.fitting_results import Slot
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.template_results import JigProfile

_AWAY = Mm(5)
_BESIDE_SLOT = Mm(15)
_FOR_NAME = Mm(5)


def jig_end(profile: JigProfile, unit: str) -> Outline:
    """The front at the left; the ledges' lower front corner at 0, 0."""
    outline, ledges = Outline(), profile.ledges
    over, back = ledges.overhang, ledges.overhang + ledges.block_depth
    top = ledges.thickness + profile.thickness
    outline.rect("edge", Span(NOTHING, NOTHING, back, ledges.thickness))
    outline.rect("edge", Span(over, ledges.thickness, back, top))
    _named(outline, Span(NOTHING, NOTHING, back, ledges.thickness), "ledge")
    _named(outline, Span(over, ledges.thickness, back, top), "block")
    front = Span(NOTHING, ledges.thickness, over, max(top, ledges.thickness + _AWAY * 2))
    _named(outline, front, "front")
    _slot_floor(outline, profile, top)
    x = back + _AWAY
    upright_size(outline, x, NOTHING, ledges.thickness, in_both_units(ledges.thickness, unit))
    upright_size(outline, x, ledges.thickness, top, in_both_units(profile.thickness, unit))
    below = -_AWAY * 2
    level_size(outline, below, NOTHING, over, in_both_units(over, unit))
    level_size(outline, below, over, back, in_both_units(ledges.block_depth, unit))
    level_size(outline, below - _AWAY * 2, NOTHING, back, in_both_units(back, unit))
    return outline


def slot_view(slot: Slot, profile: JigProfile, unit: str) -> Outline:
    """From the front, its middle line at 0 and the block's top edge at 0."""
    outline, half = Outline(), slot.width / 2
    deep, end = min(slot.depth, profile.thickness), half + _BESIDE_SLOT
    for side in (-1, 1):
        outline.stroke("edge", side * half, NOTHING, side * end, NOTHING)
        outline.stroke("edge", side * half, NOTHING, side * half, -deep)
        outline.stroke("edge", side * half, -profile.thickness, side * end, -profile.thickness)
    outline.stroke("edge", -half, -deep, half, -deep)
    if deep < profile.thickness:
        outline.stroke("edge", -half, -profile.thickness, half, -profile.thickness)
    outline.stroke("centre", NOTHING, -profile.thickness - _AWAY, NOTHING, Mm(2))
    level_size(outline, _AWAY, -half, half, in_both_units(slot.width, unit))
    upright_size(outline, end + _AWAY, -deep, NOTHING, in_both_units(deep, unit))
    return outline


def _slot_floor(outline: Outline, profile: JigProfile, top: Mm) -> None:
    """Hidden behind the block's end: how deep its slot goes at mid-length."""
    ledges, slot = profile.ledges, profile.slot
    if slot is not None and slot.depth < profile.thickness:
        y = top - slot.depth
        outline.stroke("hidden", ledges.overhang, y, ledges.overhang + ledges.block_depth, y)


def _named(outline: Outline, span: Span, name: str) -> None:
    at = Figure((span.left + span.right) / 2, (span.bottom + span.top) / 2, name)
    if span.width >= at.span.width and span.height >= _FOR_NAME:
        outline.figures.append(at)
