"""What a PDF draws, in millimetres of its page: its content streams read through their matrices.

ISO 32000-1: a user space unit is 1/72 in (8.3.2.3); `cm` multiplies the matrix (8.4.4);
an inch is 25.4 mm exactly (international yard and pound, 1959).
"""

import io
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from typing import Any, TypeAlias

from pypdf import PageObject, PdfReader

MM_OF_POINT = 25.4 / 72
Matrix: TypeAlias = tuple[float, float, float, float, float, float]
Place: TypeAlias = tuple[float, float]
_CURVES_OF_CIRCLE = 4
_TITLE = re.compile(r"T(\d+) ")


@dataclass(frozen=True, slots=True)
class Line:
    """A straight stroke, so many CSS pixels wide, with the lengths of its dashes."""

    start: Place
    end: Place
    width: float
    dashes: tuple[float, ...]

    @property
    def is_level(self) -> bool:
        return abs(self.start[1] - self.end[1]) < 0.001

    @property
    def is_upright(self) -> bool:
        return abs(self.start[0] - self.end[0]) < 0.001

    @property
    def long(self) -> float:
        return float(
            ((self.start[0] - self.end[0]) ** 2 + (self.start[1] - self.end[1]) ** 2) ** 0.5
        )


@dataclass(frozen=True, slots=True)
class Circle:
    """A stroked circle."""

    centre: Place
    diameter: float
    width: float


@dataclass(frozen=True, slots=True)
class Text:
    """A run of text, where it begins.

    WeasyPrint draws what is not anchored at its start as a form of its own, which pypdf gives
    without its place.
    """

    place: Place
    text: str


@dataclass
class Card:
    """All inside one of the dotted frames: a template, or a part of one."""

    left: float
    bottom: float
    right: float
    top: float
    lines: list[Line] = field(default_factory=list)
    circles: list[Circle] = field(default_factory=list)
    texts: list[Text] = field(default_factory=list)

    def holds(self, place: Place) -> bool:
        return self.left <= place[0] <= self.right and self.bottom <= place[1] <= self.top

    def moved(self, across: float, up: float) -> "Card":
        """The same, so far to the right and up."""

        def to(place: Place) -> Place:
            return place[0] + across, place[1] + up

        return Card(
            self.left + across, self.bottom + up, self.right + across, self.top + up,
            [replace(each, start=to(each.start), end=to(each.end)) for each in self.lines],
            [replace(each, centre=to(each.centre)) for each in self.circles],
            [replace(each, place=to(each.place)) for each in self.texts],
        )  # fmt: skip

    @property
    def words(self) -> str:
        return "".join(each.text for each in self.texts)

    @property
    def number(self) -> int:
        found = _TITLE.search(self.words)
        assert found, self.words
        return int(found[1])


@dataclass
class Drawn:
    """A page's lines, circles and cards; what is in no card stands beside them."""

    width: float
    height: float
    lines: list[Line]
    circles: list[Circle]
    cards: list[Card]


def pages_drawn(pdf: bytes) -> list[Drawn]:
    """Every page that has a card on it."""
    found = [_page(page) for page in PdfReader(io.BytesIO(pdf)).pages]
    return [page for page in found if page.cards]


def _page(page: PageObject) -> Drawn:
    reader = _Reader()
    reader.read(page)
    texts = list(_texts(page))
    frames = [Card(*rect) for rect, width, dashes in reader.rects if dashes and width < 0.5]
    rest_lines: list[Line] = []
    rest_circles: list[Circle] = []
    for line in reader.lines:
        inside = next((each for each in frames if each.holds(line.start)), None)
        (inside.lines if inside else rest_lines).append(line)
    for circle in reader.circles:
        inside = next((each for each in frames if each.holds(circle.centre)), None)
        (inside.circles if inside else rest_circles).append(circle)
    for text in texts:
        inside = next((each for each in frames if each.holds(text.place)), None)
        if inside:
            inside.texts.append(text)
    size = float(page.mediabox.width) * MM_OF_POINT, float(page.mediabox.height) * MM_OF_POINT
    return Drawn(*size, rest_lines, rest_circles, frames)


def _texts(page: PageObject) -> Iterator[Text]:
    found: list[Text] = []

    def visit(text: str, cm: Sequence[float], tm: Sequence[float], *_: object) -> None:
        if text.strip("\n"):
            x, y = _through(_times(_matrix(tm), _matrix(cm)), 0, 0)
            found.append(Text((x, y), text))

    page.extract_text(visitor_text=visit)
    yield from found


class _Reader:
    """Follows the operators of a page that move, draw straight lines and curves, and stroke."""

    def __init__(self) -> None:
        self.matrix: Matrix = (1, 0, 0, 1, 0, 0)
        self.width, self.dashes = 1.0, tuple[float, ...]()
        self.kept: list[tuple[Matrix, float, tuple[float, ...]]] = []
        self.path: list[tuple[str, list[float]]] = []
        self.lines: list[Line] = []
        self.circles: list[Circle] = []
        self.rects: list[tuple[tuple[float, float, float, float], float, tuple[float, ...]]] = []

    def read(self, page: PageObject) -> None:
        contents = page.get_contents()
        assert contents is not None
        for operands, operator in contents.operations:
            self._follow(operator.decode(), list(operands))

    def _follow(self, operator: str, operands: list[Any]) -> None:
        match operator:
            case "q":
                self.kept.append((self.matrix, self.width, self.dashes))
            case "Q":
                self.matrix, self.width, self.dashes = self.kept.pop()
            case "cm":
                self.matrix = _times(_matrix(operands), self.matrix)
            case "w":
                self.width = float(operands[0])
            case "d":
                self.dashes = tuple(float(each) for each in operands[0])
            case "m" | "l" | "c" | "re" | "h":
                self.path.append((operator, [float(each) for each in operands]))
            case "S" | "s":
                self._stroke()
                self.path = []
            case "f" | "f*" | "B" | "n":
                self.path = []

    def _stroke(self) -> None:
        if sum(operator == "c" for operator, _ in self.path) == _CURVES_OF_CIRCLE:
            self._circle()
            return
        at: Place = (0, 0)
        for operator, numbers in self.path:
            if operator == "re":
                self._rect(numbers)
            elif operator in ("m", "l"):
                to = _through(self.matrix, *numbers)
                if operator == "l":
                    self.lines.append(Line(at, to, self.width, self.dashes))
                at = to

    def _rect(self, numbers: list[float]) -> None:
        x, y, width, height = numbers
        one, other = _through(self.matrix, x, y), _through(self.matrix, x + width, y + height)
        left, right = sorted((one[0], other[0]))
        bottom, top = sorted((one[1], other[1]))
        self.rects.append(((left, bottom, right, top), self.width, self.dashes))

    def _circle(self) -> None:
        ends = [_through(self.matrix, *numbers[-2:])
                for operator, numbers in self.path if operator == "c"]  # fmt: skip
        xs, ys = [each[0] for each in ends], [each[1] for each in ends]
        centre = (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2
        assert abs((max(xs) - min(xs)) - (max(ys) - min(ys))) < 0.01
        self.circles.append(Circle(centre, max(xs) - min(xs), self.width))


def _matrix(numbers: Sequence[Any]) -> Matrix:
    a, b, c, d, e, f = (float(each) for each in numbers)
    return a, b, c, d, e, f


def _times(one: Matrix, other: Matrix) -> Matrix:
    a, b, c, d, e, f = one
    g, h, i, j, k, m = other
    return (a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j,
            e * g + f * i + k, e * h + f * j + m)  # fmt: skip


def _through(matrix: Matrix, x: float, y: float) -> Place:
    a, b, c, d, e, f = matrix
    return (a * x + c * y + e) * MM_OF_POINT, (b * x + d * y + f) * MM_OF_POINT
