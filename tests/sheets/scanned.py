"""A printed QR code read back from a page of a PDF by the places of its black squares."""

from dataclasses import dataclass
from typing import Any, TypeAlias

import numpy as np
import zxingcpp
from pypdf import PageObject
from pypdf.generic import ContentStream

Box: TypeAlias = tuple[float, float, float, float]
"""Left, bottom, right, top in points."""
MM = 25.4 / 72
MANY = 50
"""No other figure of a sheet is filled with so many pieces at once."""
DOTS = 8
"""A module's side in the picture that is scanned."""


@dataclass(frozen=True, slots=True)
class Scanned:
    """What a phone reads, how large a module is printed, and how many are quiet at the least."""

    text: str = ""
    module_mm: float = 0.0
    quiet: float = 0.0


def scanned(page: PageObject) -> Scanned:
    """The page's one QR code; nothing where it has none."""
    boxes = next((each for each in _filled(page) if len(each) > MANY), [])
    boxes = [each for each in boxes if each[3] > each[1]]
    if not boxes:
        return Scanned()
    left, bottom = min(each[0] for each in boxes), min(each[1] for each in boxes)
    right, top = max(each[2] for each in boxes), max(each[3] for each in boxes)
    module = min(each[3] - each[1] for each in boxes)
    side = round((right - left) / module)
    picture = np.full((side * DOTS + 8 * DOTS,) * 2, 255, np.uint8)
    for box in boxes:
        x1, x2 = (round((x - left) / module * DOTS) + 4 * DOTS for x in (box[0], box[2]))
        y1, y2 = (round((top - y) / module * DOTS) + 4 * DOTS for y in (box[3], box[1]))
        picture[y1:y2, x1:x2] = 0
    found = zxingcpp.read_barcodes(picture)
    around = _nearest(page, (left, bottom, right, top)) / module
    return Scanned(found[0].text if found else "", module * MM, around)


def _nearest(page: PageObject, code: Box) -> float:
    """How far from the code the next thing is that is drawn or written, or the paper's edge."""
    near = [code[0], code[1], float(page.mediabox.width) - code[2],
            float(page.mediabox.height) - code[3]]  # fmt: skip
    for box in [*_stroked(page), *_written(page)]:
        across = max(box[0] - code[2], code[0] - box[2])
        along = max(box[1] - code[3], code[1] - box[3])
        near.append(max(across, along))
    return min(near)


def _written(page: PageObject) -> list[Box]:
    """Where texts begin: their left end, as high as their letters."""
    found: list[Box] = []

    def seen(text: str, cm: Any, tm: Any, font: Any, size: float) -> None:
        if text.strip():
            x = tm[4] * cm[0] + tm[5] * cm[2] + cm[4]
            y = tm[4] * cm[1] + tm[5] * cm[3] + cm[5]
            found.append((x, y, x, y + size * abs(cm[3]) * 0.7))

    page.extract_text(visitor_text=seen)
    return found


def _filled(page: PageObject) -> list[list[Box]]:
    return [boxes for how, boxes in _paths(page) if how in ("f", "f*")]


def _stroked(page: PageObject) -> list[Box]:
    return [box for how, boxes in _paths(page) if how == "S" for box in boxes]


def _paths(page: PageObject) -> list[tuple[str, list[Box]]]:
    """Every path with how it is painted: the bounding boxes of its pieces."""
    now, kept = np.eye(3), []
    pieces: list[list[tuple[float, float]]] = []
    found: list[tuple[str, list[Box]]] = []
    content = page.get_contents()
    assert content is not None
    for operands, operator in ContentStream(content, page.pdf).operations:
        how = operator.decode()
        if how == "q":
            kept.append(now)
        elif how == "Q":
            now = kept.pop()
        elif how == "cm":
            a, b, c, d, e, f = (float(each) for each in operands)
            now = np.array([[a, b, 0], [c, d, 0], [e, f, 1]]) @ now
        elif how in ("m", "l"):
            x, y, _ = np.array([float(operands[0]), float(operands[1]), 1]) @ now
            if how == "m":
                pieces.append([])
            pieces[-1].append((x, y))
        elif how in ("f", "f*", "S", "n", "B"):
            found.append((how, [_box(piece) for piece in pieces if piece]))
            pieces = []
    return found


def _box(points: list[tuple[float, float]]) -> Box:
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return min(xs), min(ys), max(xs), max(ys)
