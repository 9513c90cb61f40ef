"""Where the blocks of a layout lie, by what they are called."""

from collections.abc import Iterator
from typing import TypeAlias

from fronts.cutting.model import Layout, Placement
from fronts.rules.lengths import NOTHING, Mm

Box: TypeAlias = tuple[Mm, Mm, Mm, Mm | None]
"""From the lower left corner: x, y, length, width."""


def blocks_on(layout: Layout) -> Iterator[tuple[str, list[Placement]]]:
    """The blocks of several parts, each with its parts in order."""
    blocks: dict[str, list[Placement]] = {}
    for placed in sorted(layout.placed, key=lambda placed: placed.order):
        if placed.block is not None:
            blocks.setdefault(placed.block, []).append(placed)
    for name, parts in blocks.items():
        if len(parts) > 1:
            yield _called(name, parts), parts


def block_boxes(layout: Layout) -> Iterator[tuple[str, Box]]:
    """The blocks, each with the room that it takes."""
    for name, parts in blocks_on(layout):
        x, y = min(part.x for part in parts), min(part.y for part in parts)
        length = max(part.x + part.length for part in parts) - x
        width = max(part.y + (part.width or NOTHING) for part in parts) - y
        yield name, (x, y, length, None if layout.stock.width is None else width)


def _called(name: str, parts: list[Placement]) -> str:
    sequence = parts[0].sequence
    return f"block {name}" if sequence is None else f"{sequence} {span(parts)}"


def span(parts: list[Placement]) -> str:
    """`3 to 7`."""
    first, last = parts[0].order, parts[-1].order
    return f"{first}" if first == last else f"{first} to {last}"
