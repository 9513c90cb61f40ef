"""The lengths of boxes to be made by their letters, which a drawing and its table share.

One drawing serves all sizes of a kind: it bears letters, and the table says what they are.
"""

from collections.abc import Mapping

from fronts.rules.box_kinds import BoxKind, BoxSize
from fronts.rules.box_parts import BACK, BOTTOM, FRONT, SHELF, SIDE
from fronts.rules.lengths import Mm, show

DIAGONAL = "X"
WORDS: Mapping[str, str] = {
    "A": "width outside",
    "B": "height",
    "C": "length",
    "D": "front, back",
    "E": "bottom across",
    "F": "bottom deep",
    "G": "back high",
    "H": "sides high",
    "J": "shelf deep",
    "K": "tier to tier",
    DIAGONAL: "both diagonals",
}
"""What each letter is: of the box by its outside, else of a piece."""
OUTSIDE = ("A", "B", "C", "K", DIAGONAL)
"""Letters of the whole box; the others are lengths of its pieces."""


def lengths_by_letter(kind: BoxKind, size: BoxSize) -> dict[str, Mm]:
    """The lengths of one size that its kind has a letter for."""
    parts, box = size.parts, size.like
    lengths = {
        "A": box.width,
        "B": box.height,
        "C": size.length,
        "D": parts[FRONT].length,
        "E": parts[BOTTOM].length,
        "F": parts[BOTTOM].width,
    }
    if kind.open_behind:
        lengths["G"] = parts[BACK].width
    if kind.low:
        lengths["H"] = parts[SIDE].width
    if kind.shelves:
        lengths["K"] = size.tier
    if kind.shelves and kind.open_behind:
        lengths["J"] = parts[SHELF].width
    return {**lengths, DIAGONAL: size.diagonal}


def piece_letters(kind: BoxKind) -> dict[str, tuple[str, str]]:
    """Length and width of each piece by their letters; its grain runs along the first."""
    letters = {
        SIDE: ("C", "H" if kind.low else "B"),
        FRONT: ("D", "B"),
        BACK: ("D", "G" if kind.open_behind else "B"),
        BOTTOM: ("E", "F"),
    }
    if kind.shelves:
        letters[SHELF] = ("E", "J" if kind.open_behind else "F")
    return letters


def drawn_letters(kind: BoxKind, unit: str) -> dict[str, str]:
    """What a drawing says of each length: its letter, and where all boxes are alike its figure."""
    one_size = len(kind.sizes) == 1
    return {
        letter: f"{letter} {show(length, unit)}" if one_size else letter
        for letter, length in lengths_by_letter(kind, kind.sizes[0]).items()
    }
