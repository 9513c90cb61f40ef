"""A part of a template with its words over it, in a frame along which it is cut out."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from fronts.drawings.lettering import line_height, text_width
from fronts.drawings.svg import Px
from fronts.drawings.true_size.outline import FIGURE, Outline, mm
from fronts.drawings.true_size.tiles import Tile, tiles_of
from fronts.rules.lengths import Mm

NAME: Px = 12_00
PAD = Mm(2)
_UNDER_WORDS = Mm(2)
_WIDTHS: tuple[Mm, ...] = (Mm(52), Mm(82))
"""Of the words: three cards beside one another, or two; else all of the page."""
_MOST_WORDS = Mm(45)
"""How high words may stand before they are given more width."""
_LONGEST_NUMBER = "T9999 "


@dataclass(frozen=True, slots=True)
class Card:
    """What is printed of it: its title, lines of words, and the drawing below them."""

    title: str
    lines: tuple[str, ...]
    tile: Tile
    words_width: Mm

    @property
    def words_height(self) -> Mm:
        return _height(len(self.lines)) + _UNDER_WORDS

    @property
    def width(self) -> Mm:
        return max(self.words_width, self.tile.span.width) + PAD * 2

    @property
    def height(self) -> Mm:
        return self.words_height + self.tile.span.height + PAD * 2


def cards_of(outline: Outline, title: str, texts: Sequence[str], room: tuple[Mm, Mm]) -> list[Card]:
    """The template in as few cards as the room of a page allows, their words as narrow."""
    widest = room[0] - PAD * 2
    ways = [(width, _tiles(outline, texts, width, room))
            for width in _words_widths([title, *texts], widest)]  # fmt: skip
    width, tiles = min(ways, key=lambda way: len(way[1]))
    return [_card(tile, title, texts, width) for tile in tiles]


def _tiles(outline: Outline, texts: Sequence[str], width: Mm, room: tuple[Mm, Mm]) -> list[Tile]:
    high = _height(1 + len(_wrapped(texts, width))) + _UNDER_WORDS
    return tiles_of(outline, (room[0] - PAD * 2, room[1] - PAD * 2 - high))


def _card(tile: Tile, title: str, texts: Sequence[str], width: Mm) -> Card:
    width = max(width, tile.span.width)
    part = [f"Part {tile.number} of {tile.count}"] if tile.count > 1 else []
    return Card(title, (*part, *_wrapped(texts, width)), tile, width)


def _words_widths(texts: Sequence[str], widest: Mm) -> Iterator[Mm]:
    """Those at which no word is broken and the words don't stand too high, and the widest."""
    title = mm(text_width(_LONGEST_NUMBER + texts[0], NAME, bold=True))
    longest = max(mm(text_width(word, FIGURE)) for text in texts for word in text.split(" "))
    for width in _WIDTHS:
        if max(title, longest) <= width and _height(len(_wrapped(texts, width))) <= _MOST_WORDS:
            yield width
    yield widest


def _height(lines: int) -> Mm:
    """Of the title and so many lines under it."""
    return mm(line_height(NAME) + lines * line_height(FIGURE))


def _wrapped(texts: Sequence[str], width: Mm) -> list[str]:
    return [line for text in texts for line in _lines(text, width)]


def _lines(text: str, width: Mm) -> Iterator[str]:
    """A text in lines; a word that is longer than any line is broken."""
    line = ""
    for word in text.split(" "):
        tried = f"{line} {word}" if line else word
        if mm(text_width(tried, FIGURE)) <= width:
            line = tried
            continue
        if line:
            yield line
        line = word
        while mm(text_width(line, FIGURE)) > width:
            end = next(at for at in range(len(line) - 1, 0, -1)
                       if mm(text_width(line[:at], FIGURE)) <= width)  # fmt: skip
            yield line[:end]
            line = line[end:]
    yield line
