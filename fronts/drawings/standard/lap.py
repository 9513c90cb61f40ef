"""How far fronts lap: two openings of a cabinet, one over the other, each with its front."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px
from fronts.rules.kinds import is_inset
from fronts.rules.practice import inches

_MEMBER: Px = 30_00
_LEFT, _RIGHT, _TOP, _BOTTOM = 152_00, 252_00, 40_00, 330_00
_USUAL: Px = 12_00
_HALF = inches(1, 2)
"""Nothing is usual of an overlay or a reveal: so much is drawn as long as where nobody says."""


def lap_drawing(figures: Figures) -> str:
    """The fronts as they lap: by the overlay, else by what the reveal leaves of the members."""
    plate = Plate(figures)
    plate.rect("cabinet", _LEFT, _TOP, _RIGHT, _BOTTOM)
    left, right = _LEFT + _MEMBER, _RIGHT - _MEMBER
    upper = (left, _TOP + _MEMBER, right, 164_00)
    lower = (left, 164_00 + _MEMBER, right, _BOTTOM - _MEMBER)
    laps = {side: _lap(plate, side) for side in ("left", "right", "top", "bottom")}
    between = _between(plate)
    for box in (upper, lower):
        plate.rect("opening", *box)
    above, below = (laps["bottom"], laps["top"]) if between is None else (between, between)
    first = (left - laps["left"], upper[1] - laps["top"], right + laps["right"], upper[3] + above)
    second = (first[0], lower[1] - below, first[2], lower[3] + laps["bottom"])
    for front in (first, second):
        plate.rect("front", *front)
    _overlays(plate, upper, first)
    _reveals(plate, first, second)
    plate.points("mount", (left + right) // 2, 240_00, "{}")
    return plate.svg("How far fronts lap past their openings")


def _lap(plate: Plate, side: str) -> Px:
    figures = plate.figures
    if is_inset(figures["mount"].value):
        return -6_00
    if figures["reveal_between"].value is None:
        return plate.size(f"overlay_{side}", _USUAL, of=_HALF, most=26_00)
    return _MEMBER - plate.size(f"reveal_{side}", _USUAL, of=_HALF, most=27_00)


def _between(plate: Plate) -> Px | None:
    """How far both fronts lap the member between them, where the reveal says it."""
    figure = plate.figures["reveal_between"]
    if figure.value is None or is_inset(plate.figures["mount"].value):
        return None
    return (_MEMBER - plate.size("reveal_between", _USUAL, of=_HALF, most=27_00)) // 2


def _overlays(plate: Plate, opening: tuple[Px, ...], front: tuple[Px, ...]) -> None:
    """Above the cabinet, and left of it."""
    y, x = _TOP - 14_00, _LEFT - 12_00
    plate.across("overlay_left", front[0], opening[0], y, "overlay left",
                 base=opening[1])  # fmt: skip
    plate.across("overlay_right", opening[2], front[2], y, "overlay right",
                 base=opening[1])  # fmt: skip
    plate.upright("overlay_top", front[1], opening[1], x, "overlay top",
                  base=opening[0])  # fmt: skip
    plate.upright("overlay_bottom", opening[3], front[3], x, "overlay bottom",
                  base=opening[0])  # fmt: skip


def _reveals(plate: Plate, first: tuple[Px, ...], second: tuple[Px, ...]) -> None:
    """Below the cabinet, and right of it."""
    y, x = _BOTTOM + 16_00, _RIGHT + 12_00
    plate.across("reveal_left", _LEFT, second[0], y, "reveal left", base=second[3])
    plate.across("reveal_right", second[2], _RIGHT, y, "reveal right", base=second[3])
    plate.upright("reveal_top", _TOP, first[1], x, "reveal top", base=first[2])
    plate.upright("reveal_between", first[3], second[1], x, "reveal between",
                  base=first[2])  # fmt: skip
    plate.upright("reveal_bottom", second[3], _BOTTOM, x, "reveal bottom", base=second[2])
