"""Parts for tests of what is cut from what."""

from fronts.rules.results import Part
from tests.rules.small_kitchens import inch


def part(
    kind: str, material: str, length: str, width: str, *, front: str = "B1.a", count: int = 1
) -> Part:
    """A part 3/4 in thick."""
    return Part(
        label=front if kind == "slab" else f"{front} {kind}",
        front=front,
        part=kind,
        length=inch(length),
        width=inch(width),
        thickness=inch("3/4"),
        material=material,
        count=count,
    )
