"""Where a new front's edges lie: overlay by amount, overlay by reveal, or inset.

    overlay by reveal, across a shared member m:   (m - between) / 2 outside the opening
    overlay by reveal, at the cabinet's end:        m - end outside the opening
    overlay by amount:                              overlay outside the opening
    inset:                                          gap inside the opening

Measured from the opening's edges as `opening_sizes` has them; `front_sizes` shares the span.
"""

from collections.abc import Sequence

from fronts.rules.cabinet_edges import to_edges
from fronts.rules.kinds import Side, is_inset
from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect
from fronts.rules.standard_keys import Settled, Sides


def rule_overlays(
    rect: Rect, others: Sequence[Rect], outer: Rect, standard: Settled
) -> Sides[Mm] | None:
    """How far past the opening's edges the rule puts a new front (negative: inside).

    `others` are the cabinet's other openings, `outer` its outline. None: nobody said how far.
    """
    if is_inset(standard.mount):
        gap = standard.inset_gap
        return Sides(-gap.left, -gap.right, -gap.top, -gap.bottom)
    if standard.reveal is None:
        return standard.overlay
    reveal = standard.reveal
    overlays: dict[Side, Mm] = {}
    for side, (member, shared) in members(rect, others, outer).items():
        overlays[side] = (member - reveal.between) / 2 if shared else member - reveal.end[side]
    return Sides(**overlays)


def members(rect: Rect, others: Sequence[Rect], outer: Rect) -> dict[Side, tuple[Mm, bool]]:
    """For each side the member's width, and whether another opening shares it."""
    beside = [other for other in others if other.y < rect.top and rect.y < other.top]
    along = [other for other in others if other.x < rect.right and rect.x < other.right]
    spans: dict[Side, list[Mm]] = {
        "left": [rect.x - other.right for other in beside],
        "right": [other.x - rect.right for other in beside],
        "top": [other.y - rect.top for other in along],
        "bottom": [rect.y - other.top for other in along],
    }
    to_end, widths = to_edges(rect, outer), {}
    for side, between in spans.items():
        nearest = min((span for span in between if span >= 0), default=None)
        widths[side] = (to_end[side], False) if nearest is None else (nearest, True)
    return widths
