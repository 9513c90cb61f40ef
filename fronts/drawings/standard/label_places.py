"""Where a label may stand beside its dimension, nearest first."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.drawings.drawing import Anchor, text_area
from fronts.drawings.geometry import Area
from fronts.drawings.lettering import line_height, text_width
from fronts.drawings.svg import Px

_NEAR: Px = 6_00
_FAR = 9
"""So many lines of text away a label may be led to."""


@dataclass(frozen=True, slots=True)
class Label:
    """The text of a dimension that runs from one place to another, or is at one place."""

    text: str
    size: Px
    x1: Px
    y1: Px
    x2: Px
    y2: Px

    @property
    def width(self) -> Px:
        """What it takes across while it is drawn strong."""
        return text_width(self.text, self.size, bold=True)

    @property
    def middle(self) -> tuple[Px, Px]:
        return (self.x1 + self.x2) // 2, (self.y1 + self.y2) // 2


@dataclass(frozen=True, slots=True)
class LabelPlace:
    """Where the label stands, what it takes, and the line that leads to it where it is far."""

    x: Px
    y: Px
    anchor: Anchor
    area: Area
    lead: tuple[Px, Px, Px, Px] | None = None


def label_places(label: Label, wide: Px) -> Iterator[LabelPlace]:
    """Places inside the drawing's width: along the dimension, at its ends, then farther off."""
    for x, y, anchor, is_led in _tries(label):
        area = text_area(x, y, label.text, label.size, anchor, bold=True)
        shift = max(0, -area.left) - max(0, area.right - wide)
        if shift and not is_led:
            continue
        moved = Area(area.left + shift, area.top, area.right + shift, area.bottom)
        lead = _lead(label, moved) if is_led else None
        yield LabelPlace(x + shift, y, anchor, moved, lead)


def _tries(label: Label) -> Iterator[tuple[Px, Px, Anchor, bool]]:
    (x, y), line = label.middle, line_height(label.size)
    half = line // 2
    if (label.x1, label.y1) == (label.x2, label.y2):
        yield x, y, "middle", False
    if label.y1 == label.y2:
        room = label.x2 - label.x1
        off = half + _NEAR // 2
        if room >= label.width:
            yield x, y - off, "middle", False
            yield x, y + off, "middle", False
        far = 0 if room > 2 * _NEAR else 2 * _NEAR
        yield label.x2 + _NEAR + far, y, "start", False
        yield label.x1 - _NEAR - far, y, "end", False
        yield x, y - off, "middle", False
        yield x, y + off, "middle", False
        yield label.x1, y - off, "start", False
        yield label.x1, y + off, "start", False
    else:
        yield x + _NEAR, y, "start", False
        yield x - _NEAR, y, "end", False
        yield x, label.y1 - line, "middle", False
        yield x, label.y2 + line, "middle", False
    for row in range(2, 2 * _FAR):
        step = row * line // 2
        yield x + _NEAR + step, y - step, "start", True
        yield x + _NEAR + step, y + step, "start", True
        yield x - _NEAR - step, y - step, "end", True
        yield x - _NEAR - step, y + step, "end", True
        yield x, y - step, "middle", True
        yield x, y + step, "middle", True
        yield x + 4 * _NEAR + step, y, "start", True
        yield x - 4 * _NEAR - step, y, "end", True


def _lead(label: Label, area: Area) -> tuple[Px, Px, Px, Px]:
    """From the dimension's middle to the nearest edge of the text."""
    x, y = label.middle
    to_y = min(max(y, area.top), area.bottom)
    to_x = min(max(x, area.left), area.right)
    return x, y, to_x, to_y
