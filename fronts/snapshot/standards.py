"""What one level says of the house standard, from its columns and back."""

from typing import cast

from fronts.models.standard import SINGLE, StandardFields
from fronts.rules.kitchen import SIDES, Mount, Reveal, Sides, Standard
from fronts.rules.lengths import Mm
from fronts.rules.standards import EMPTY


def standard_of(level: StandardFields | None) -> Standard:
    """What one level says."""
    if level is None:
        return EMPTY
    reveal = _sides(level, "reveal")
    between = level.reveal_between
    found = Standard(
        mount=cast(Mount | None, level.mount or None),
        overlay=_sides(level, "overlay"),
        reveal=None if reveal is None or between is None else Reveal(between=between, end=reveal),
        gap_between=level.gap_between,
        least_gap=level.least_gap,
        inset_gap=_sides(level, "inset"),
        front_thickness=level.front_thickness,
        trim_limit=level.trim_limit,
        least_stile=level.least_stile,
        skin=level.skin,
        bite=level.bite,
        hinge_end=level.hinge_end,
    )
    return EMPTY if found == EMPTY else found


def columns_of(standard: Standard) -> dict[str, Mm | str | None]:
    """What a level says, by the names of its columns; every one of them."""
    reveal = standard.reveal
    return {
        "mount": standard.mount or "",
        **_side_columns("overlay", standard.overlay),
        "reveal_between": None if reveal is None else reveal.between,
        **_side_columns("reveal", None if reveal is None else reveal.end),
        **_side_columns("inset", standard.inset_gap),
        **{name: getattr(standard, name) for name in SINGLE},
    }


def _sides(level: StandardFields, name: str) -> Sides[Mm] | None:
    found = [getattr(level, f"{name}_{side}") for side in SIDES]
    return None if None in found else Sides(*found)


def _side_columns(name: str, sides: Sides[Mm] | None) -> dict[str, Mm | None]:
    return {f"{name}_{side}": None if sides is None else sides[side] for side in SIDES}
