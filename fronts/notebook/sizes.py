"""Sizes with the word that says which: `30 high`, `24 deep`, `4 up`, `at 60`."""

from collections.abc import Mapping

from fronts.notebook.words import Words
from fronts.rules.lengths import Mm

HIGH, DEEP, UP, AT = "high", "deep", "up", "at"
MARKS = (HIGH, DEEP, UP)
"""The words behind a size; `at` stands before its own."""
_PLACES = (UP, AT)
"""What may be nothing, or below that: a size may not."""
_LIKE = {HIGH: "30 high", DEEP: "24 deep", UP: "4 up", AT: "at 60"}

Sizes = Mapping[str, Mm]
"""What a line says, each under its word."""


def sizes_at(words: Words, may_stand: tuple[str, ...]) -> dict[str, Mm]:
    """Take all sizes that come next, in any order, each once."""
    sizes: dict[str, Mm] = {}
    while take_size(words, may_stand, sizes):
        pass
    return sizes


def take_size(words: Words, may_stand: tuple[str, ...], sizes: dict[str, Mm]) -> bool:
    """Take a size with its word into `sizes`, if that is what comes next."""
    start = words.at
    size, mark = (None, AT) if words.take(AT) else (words.size(signed=True), words.take(*MARKS))
    if mark is None or (mark != AT and size is None):
        words.at = start
        return False
    if mark not in may_stand or mark in sizes:
        words.at = start
        words.refuse(f"{like(may_stand)}, each once")
    if mark == AT:
        size = words.needed_size("where it is pinned", signed=True)
    elif mark not in _PLACES:
        words.at = start
        size = words.needed_size(f"how {mark} it is")
        words.take(mark)
    if size is not None:
        sizes[mark] = size
    return True


def like(marks: tuple[str, ...]) -> str:
    """An example of each of these sizes."""
    return ", ".join(_LIKE[mark] for mark in marks)
