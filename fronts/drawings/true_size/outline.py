"""What is drawn at true size, in exact millimetres: x to the right, y up.

A CSS pixel is 1/96 in (CSS Values and Units, 5.2), and a place on paper a hundredth of that,
so that nothing lies more than 0.002 mm from where it belongs.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction

from fronts.drawings.drawing import Anchor, Kind
from fronts.drawings.lettering import line_height, text_width
from fronts.drawings.svg import Px
from fronts.rules.lengths import INCH, Mm

_PX_OF_INCH = 96_00
FIGURE: Px = 10_60
"""Lettering of 8 pt."""


def px(length: Mm) -> Px:
    """A length on paper."""
    # Half up, in whole numbers: ten times as quick as rounding a Fraction.
    parts = 2 * length.denominator * INCH.numerator
    return (2 * length.numerator * _PX_OF_INCH * INCH.denominator + parts // 2) // parts


def mm(places: Px) -> Mm:
    """What lettering takes of a drawing."""
    return Fraction(places) * INCH / _PX_OF_INCH


@dataclass(frozen=True, slots=True)
class Span:
    """A rectangle of a drawing."""

    left: Mm
    bottom: Mm
    right: Mm
    top: Mm

    @property
    def width(self) -> Mm:
        return self.right - self.left

    @property
    def height(self) -> Mm:
        return self.top - self.bottom

    def holds(self, x: Mm, y: Mm) -> bool:
        return self.left <= x <= self.right and self.bottom <= y <= self.top

    def meets(self, other: "Span") -> bool:
        return (self.left <= other.right and other.left <= self.right
                and self.bottom <= other.top and other.bottom <= self.top)  # fmt: skip

    def grown(self, by: Mm) -> "Span":
        return Span(self.left - by, self.bottom - by, self.right + by, self.top + by)


@dataclass(frozen=True, slots=True)
class Stroke:
    """A straight line."""

    kind: Kind
    x1: Mm
    y1: Mm
    x2: Mm
    y2: Mm

    def within(self, span: Span) -> "Stroke | None":
        """What of it lies in the span; a slanting one lies there whole or not at all."""
        if self.x1 != self.x2 and self.y1 != self.y2:
            inside = span.holds(self.x1, self.y1) and span.holds(self.x2, self.y2)
            return self if inside else None
        x1, x2 = max(min(self.x1, self.x2), span.left), min(max(self.x1, self.x2), span.right)
        y1, y2 = max(min(self.y1, self.y2), span.bottom), min(max(self.y1, self.y2), span.top)
        return Stroke(self.kind, x1, y1, x2, y2) if x1 <= x2 and y1 <= y2 else None


@dataclass(frozen=True, slots=True)
class Ring:
    """A circle about a centre."""

    kind: Kind
    x: Mm
    y: Mm
    diameter: Mm

    @property
    def span(self) -> Span:
        return Span(self.x, self.y, self.x, self.y).grown(self.diameter / 2)


@dataclass(frozen=True, slots=True)
class Figure:
    """A short text whose middle line is at y."""

    x: Mm
    y: Mm
    text: str
    anchor: Anchor = "middle"

    @property
    def span(self) -> Span:
        width, half = mm(text_width(self.text, FIGURE)), mm(line_height(FIGURE)) / 2
        left = {"start": self.x, "middle": self.x - width / 2, "end": self.x - width}[self.anchor]
        return Span(left, self.y - half, left + width, self.y + half)


@dataclass(slots=True)
class Outline:
    """All that one template shows."""

    strokes: list[Stroke] = field(default_factory=list)
    rings: list[Ring] = field(default_factory=list)
    figures: list[Figure] = field(default_factory=list)

    def stroke(self, kind: Kind, x1: Mm, y1: Mm, x2: Mm, y2: Mm) -> None:
        self.strokes.append(Stroke(kind, x1, y1, x2, y2))

    def rect(self, kind: Kind, span: Span) -> None:
        left, bottom, right, top = span.left, span.bottom, span.right, span.top
        for ends in ((left, bottom, right, bottom), (right, bottom, right, top),
                     (right, top, left, top), (left, top, left, bottom)):  # fmt: skip
            self.stroke(kind, *ends)

    def spans(self) -> Iterator[Span]:
        """What each part takes."""
        for each in self.strokes:
            yield Span(min(each.x1, each.x2), min(each.y1, each.y2),
                       max(each.x1, each.x2), max(each.y1, each.y2))  # fmt: skip
        yield from self.whole()

    def whole(self) -> Iterator[Span]:
        """What no seam may cut: circles and lettering."""
        yield from (each.span for each in self.rings)
        yield from (each.span for each in self.figures)

    def bounds(self) -> Span:
        return around(self.spans())

    def within(self, span: Span) -> "Outline":
        """What of it lies in the span."""
        return Outline(
            [part for each in self.strokes if (part := each.within(span))],
            [each for each in self.rings if span.holds(each.x, each.y)],
            [each for each in self.figures if _inside(each.span, span)],
        )


def turned(outline: Outline) -> Outline:
    """Half round about 0, 0, lettering upright as before."""
    swapped: dict[Anchor, Anchor] = {"start": "end", "end": "start", "middle": "middle"}
    return Outline(
        [Stroke(each.kind, -each.x1, -each.y1, -each.x2, -each.y2) for each in outline.strokes],
        [Ring(each.kind, -each.x, -each.y, each.diameter) for each in outline.rings],
        [Figure(-each.x, -each.y, each.text, swapped[each.anchor]) for each in outline.figures],
    )


def around(spans: Iterable[Span]) -> Span:
    """The least rectangle around them."""
    found = list(spans)
    return Span(
        min(each.left for each in found), min(each.bottom for each in found),
        max(each.right for each in found), max(each.top for each in found),
    )  # fmt: skip


def _inside(inner: Span, span: Span) -> bool:
    return span.holds(inner.left, inner.bottom) and span.holds(inner.right, inner.top)
