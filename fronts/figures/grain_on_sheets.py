"""What a sheet holds of fronts whose grain runs on, and where it goes on."""

from fronts.cutting.blocks_on_sheet import span
from fronts.cutting.model import Placement, Plan
from fronts.rules.lengths import show


def grain_lines(plan: Plan, unit: str) -> tuple[tuple[str, ...], ...]:
    """For each layout a line about each set of which it holds something."""
    held = [_held(layout.placed) for layout in plan.layouts]
    return tuple(
        tuple(_line(name, parts, held, number, plan, unit) for name, parts in one.items())
        for number, one in enumerate(held, 1)
    )


def _held(placed: tuple[Placement, ...]) -> dict[str, list[Placement]]:
    sets: dict[str, list[Placement]] = {}
    for part in sorted(placed, key=lambda part: part.order):
        if part.sequence is not None:
            sets.setdefault(part.sequence, []).append(part)
    return sets


def _line(
    name: str,
    parts: list[Placement],
    held: list[dict[str, list[Placement]]],
    number: int,
    plan: Plan,
    unit: str,
) -> str:
    elsewhere = [
        f"{span(one[name])} from sheet {other}"
        for other, one in enumerate(held, 1)
        if name in one and other != number
    ]
    blocks = len({part.block for part in parts})
    cut = "in one block, in the order of the wall" if blocks == 1 else f"in {blocks} blocks"
    said = f"Grain set {name}: {span(parts)} of {_last(name, held)} {cut}."
    if len(parts) > 1:
        lost = show(plan.request.kerf, unit)
        said += f" Between neighbours the saw takes {lost} of the figure."
    if elsewhere:
        said += f" {', '.join(elsewhere)}: take sheets that follow one another in the flitch."
    return said


def _last(name: str, held: list[dict[str, list[Placement]]]) -> int:
    return max(one[name][-1].order for one in held if name in one)
