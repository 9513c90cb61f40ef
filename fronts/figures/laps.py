"""How a front lies in its opening and beside others, in a few words: `1/2 all round`."""

from collections import defaultdict
from collections.abc import Mapping

from fronts.rules.kinds import SIDES, Side
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front

_PAIRS: tuple[tuple[Side, Side, str], ...] = (
    ("left", "right", "left and right"),
    ("top", "bottom", "top and bottom"),
)
ALL_ROUND = "all round"


def laps_words(front: Front, unit: str) -> str:
    """How far it laps past its opening: `1/2 all round`, `inset 3/32 left and right, …`."""
    laps = {side: front.edges[side].overlay for side in SIDES}
    known = {side: lap for side, lap in laps.items() if lap is not None}
    if known and all(lap < 0 for lap in known.values()):
        return f"inset {side_words({side: -lap for side, lap in known.items()}, unit)}"
    return side_words(known, unit).replace("-", "−")


def gaps_words(front: Front, unit: str, farthest: Mm) -> str:
    """Its gaps to other fronts, those that are no wider than `farthest`; "" where it has none."""
    gaps = {side: front.edges[side].gap for side in SIDES}
    near = {side: gap for side, gap in gaps.items() if gap is not None and gap <= farthest}
    said = side_words(near, unit)
    few = len(near) < len(SIDES) and said.endswith(ALL_ROUND)
    return f"{said.removesuffix(ALL_ROUND)}{_sides(list(near))}" if few else said


def side_words(lengths: Mapping[Side, Mm], unit: str) -> str:
    """Lengths by their sides, the same ones told together; one for all is `all round`."""
    by_length: dict[Mm, list[Side]] = defaultdict(list)
    for side, length in lengths.items():
        by_length[length].append(side)
    if len(by_length) == 1:
        return f"{show(next(iter(by_length)), unit)} {ALL_ROUND}"
    return ", ".join(f"{show(length, unit)} {_sides(sides)}" for length, sides in by_length.items())


def _sides(sides: list[Side]) -> str:
    """`left and right`, `left, top`."""
    words: list[str] = []
    for one, other, both in _PAIRS:
        words += (
            [both] if one in sides and other in sides else [s for s in (one, other) if s in sides]
        )
    return ", ".join(words)
