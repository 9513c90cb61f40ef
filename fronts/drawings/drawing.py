"""A drawing in the making: lines of the standard kinds, texts that keep clear of each other."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cache
from typing import Literal, TypeAlias

from fronts.drawings.geometry import Area, left_open
from fronts.drawings.lettering import line_height, text_width
from fronts.drawings.svg import Px, element, number, words, written

Anchor: TypeAlias = Literal["start", "middle", "end"]
Kind: TypeAlias = Literal[
    "front",
    "cabinet",
    "opening",
    "hand",
    "dimension",
    "floor",
    "stop",
    "hatch",
    "box",
    "hidden",
    "block",
    "measured",
    "edge",
    "centre",
    "cut",
]

_LINES: dict[Kind, tuple[Px, str | None]] = {
    "front": (180, None),
    "cabinet": (70, None),
    "opening": (70, "4 3"),
    "hand": (60, "8 4"),
    "dimension": (50, None),
    "floor": (140, None),
    "stop": (300, None),
    "hatch": (80, None),
    "box": (120, None),
    "hidden": (80, "4 3"),
    "block": (320, None),
    "measured": (400, None),
    "edge": (90, None),
    "centre": (60, "10 2 2 2"),
    "cut": (40, "2 3"),
}
"""Line kinds and weights after ISO 128-2: thick outlines, thin dimensions, dashes for hidden."""


EDGE: Px = 4_00
"""Left free around a whole drawing."""


@dataclass(frozen=True, slots=True)
class Ink:
    """What a drawing is drawn with: its colour, and its lettering's font where it must be named."""

    colour: str
    font: str | None = None


SCREEN = Ink("currentColor")
PAPER = Ink("#000", "Sheet Sans")


def text_area(
    x: Px, y: Px, text: str, size: Px, anchor: Anchor = "middle", *, bold: bool = False
) -> Area:
    """Where a text stands whose middle line is at `y`."""
    width, half = text_width(text, size, bold=bold), line_height(size) // 2
    left = {"start": x, "middle": x - width // 2, "end": x - width}[anchor]
    return Area(left, y - half, left + width, y + half)


@dataclass(slots=True)
class Drawing:
    """Collects parts in drawing order; `taken` are the places that text must keep clear of.

    `frames` are the lines that no text may cross, though other lines may.
    """

    ink: Ink = SCREEN
    parts: list[str] = field(default_factory=list)
    taken: list[Area] = field(default_factory=list)
    frames: list[Area] = field(default_factory=list)
    seen: list[Area] = field(default_factory=list)

    def line(self, kind: Kind, x1: Px, y1: Px, x2: Px, y2: Px) -> None:
        self._see(Area(min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2)))
        ends = f'x1="{number(x1)}" y1="{number(y1)}" x2="{number(x2)}" y2="{number(y2)}"'
        self.parts.append(f"<line {ends}{self._stroke(kind)}/>")

    def lines(self, kind: Kind, ends: Iterable[tuple[Px, Px, Px, Px]]) -> None:
        """Many lines of a kind as one element."""
        runs = []
        for x1, y1, x2, y2 in ends:
            self._see(Area(min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2)))
            runs.append(f"M{number(x1)} {number(y1)}L{number(x2)} {number(y2)}")
        if runs:
            self.parts.append(f'<path d="{"".join(runs)}" fill="none"{self._stroke(kind)}/>')

    def broken_line(self, kind: Kind, x1: Px, y1: Px, x2: Px, y2: Px) -> None:
        """A line that leaves out what would run through a text."""
        for start, end in left_open((x1, y1), (x2, y2), self.taken):
            self.line(kind, *start, *end)

    def path(self, kind: Kind, points: Sequence[tuple[Px, Px]]) -> None:
        """A run of straight lines through the points."""
        for x, y in points:
            self._see(Area(x, y, x, y))
        run = f'points="{_points(points)}" fill="none"'
        self.parts.append(f"<polyline {run}{self._stroke(kind)}/>")

    def rect(self, kind: Kind, area: Area, *, target: bool = False) -> None:
        """An outline; a `target` can be clicked anywhere inside."""
        self._see(area)
        place = f'x="{number(area.left)}" y="{number(area.top)}"'
        size = f'width="{number(area.width)}" height="{number(area.height)}"'
        events = ' pointer-events="all"' if target else ""
        self.parts.append(f'<rect {place} {size} fill="none"{events}{self._stroke(kind)}/>')

    def circle(self, kind: Kind, x: Px, y: Px, radius: Px) -> None:
        self._see(Area(x - radius, y - radius, x + radius, y + radius))
        place = f'cx="{number(x)}" cy="{number(y)}" r="{number(radius)}"'
        self.parts.append(f'<circle {place} fill="none"{self._stroke(kind)}/>')

    def solid(self, points: Sequence[tuple[Px, Px]]) -> None:
        """A small filled shape, an arrowhead."""
        run = written({"points": _points(points), "fill": self.ink.colour})
        self.parts.append(f"<polygon{run}/>")

    def text(
        self,
        x: Px,
        y: Px,
        text: str,
        size: Px,
        anchor: Anchor = "middle",
        *,
        bold: bool = False,
        kind: str = "figure",
    ) -> None:
        """A text whose middle line is at `y`; its place is taken from then on."""
        area = text_area(x, y, text, size, anchor, bold=bold)
        self._see(area)
        self.taken.append(area)
        attributes: dict[str, str | Px | None] = {
            "class": f"drawn-{kind}",
            "x": x,
            "y": y + size * 36 // 100,
            "font-size": size,
            "font-weight": "700" if bold else None,
            "text-anchor": None if anchor == "start" else anchor,
        }
        self.parts.append(element("text", attributes, words(text)))

    def free(self, area: Area, within: Area | None = None) -> bool:
        """Whether a text can stand there."""
        if within is not None and not within.holds(area):
            return False
        return not area.meets(self.taken)

    def framed(self, area: Area) -> None:
        """Keep every text off the outline of the area."""
        left, top, right, bottom = area.left, area.top, area.right, area.bottom
        self.frames += [
            Area(left, top, left, bottom), Area(right, top, right, bottom),
            Area(left, top, right, top), Area(left, bottom, right, bottom),
        ]  # fmt: skip

    def uncrossed(self, area: Area) -> bool:
        """Whether no frame's line runs through the place of a text."""
        return not area.meets(self.frames)

    def opened(self, name: str, attributes: Mapping[str, str | None]) -> None:
        """Begin a group: what is drawn from here goes inside it at `closed`."""
        self.parts.append(f"<{name}{written(attributes)}>")

    def closed(self, name: str) -> None:
        self.parts.append(f"</{name}>")

    def bounds(self) -> Area:
        """What has been drawn so far, in all."""
        if not self.seen:
            return Area(0, 0, 0, 0)
        return Area(
            min(each.left for each in self.seen),
            min(each.top for each in self.seen),
            max(each.right for each in self.seen),
            max(each.bottom for each in self.seen),
        )

    def svg(self, title: str, kind: str, *, linked: bool = False) -> str:
        """The whole drawing as one `<svg>` at its own size.

        A drawing with links inside is a group, since links in an image are not read out.
        """
        area = self.bounds().grown(EDGE)
        box = " ".join(number(each) for each in (area.left, area.top, area.width, area.height))
        attributes: dict[str, str | Px | None] = {
            "xmlns": "http://www.w3.org/2000/svg",
            "class": f"drawing drawing-{kind}",
            "viewBox": box,
            "width": area.width,
            "height": area.height,
            "role": "group" if linked else "img",
            "aria-label": title,
            "color": None if self.ink.colour == "currentColor" else self.ink.colour,
            "fill": self.ink.colour,
            "font-family": self.ink.font,
        }
        return element("svg", attributes, element("title", {}, words(title)), *self.parts)

    def _stroke(self, kind: Kind) -> str:
        return _stroke(kind, self.ink.colour)

    def _see(self, area: Area) -> None:
        self.seen.append(area)


@cache
def _stroke(kind: Kind, colour: str) -> str:
    width, dashes = _LINES[kind]
    return written(
        {
            "class": f"line-{kind}",
            "stroke": colour,
            "stroke-width": width,
            "stroke-dasharray": dashes,
        }
    )


def _points(points: Sequence[tuple[Px, Px]]) -> str:
    return " ".join(f"{number(x)},{number(y)}" for x, y in points)
