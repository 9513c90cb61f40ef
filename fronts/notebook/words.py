"""The words and sizes of a line, taken one after another; commas may stand between them."""

import re
from typing import NoReturn

from fronts.notebook.faults import NotUnderstood
from fronts.rules import lengths
from fronts.rules.kinds import Unit
from fronts.rules.length_sums import sum_at
from fronts.rules.lengths import LengthError, Mm
from fronts.rules.limits import LONGEST_LABEL

_COMMA = ","
_MOST_SHOWN = 40
_PAST_FIGURES = re.compile(r"\s*(?:,|[^\W\d_]{3}).*", re.DOTALL)
"""What follows the figures of a size: a comma, or a word that is longer than most units."""
_EXAMPLES = {"in": "23 5/8", "mm": "600"}


class Words:
    """A line without its remark, and how far it is read."""

    def __init__(self, text: str, unit: Unit) -> None:
        self.text, self.unit, self.at = text, unit, 0

    @property
    def ended(self) -> bool:
        """Whether nothing is left, not even a comma."""
        return self._past_spaces(self.at) == len(self.text)

    @property
    def rest(self) -> str:
        """All that is left."""
        return self.text[self._next() :]

    @property
    def word(self) -> str:
        """The next word as it is written, which is not taken yet; nothing where none is left."""
        start = self._next()
        return self.text[start : self._word_end(start)]

    @property
    def before_size(self) -> bool:
        """Whether a size comes next."""
        return self._size_end() > 0

    @property
    def before_long_size(self) -> bool:
        """Whether a size comes next that goes on past its first word, as `36 1/2` does."""
        return self._size_end() > self._word_end(self._next())

    @property
    def plain_word(self) -> str:
        """The next word in small letters, with the marks that a keyboard has."""
        return lengths.plain(self.word)

    def any_word(self) -> str:
        """Take the next word, whatever it is."""
        start = self._next()
        self.at = self._word_end(start)
        return self.text[start : self.at]

    def take(self, *wanted: str) -> str | None:
        """Take the next word if it is one of these, in any case; which of them it is."""
        word = self.plain_word
        if word not in wanted:
            return None
        self.any_word()
        return word

    def need(self, *wanted: str) -> None:
        """Take these words, which must come next."""
        for word in wanted:
            if not self.take(word):
                self.refuse(f"“{word}”")

    def size(self, *, here: bool = False, signed: bool = False) -> Mm | None:
        """Take the size, or sum of sizes, that comes next; None where what comes is none.

        `here`: before any comma. `signed`: it may be nothing, or below that.
        """
        start = self._past_spaces(self.at) if here else self._next()
        try:
            found = sum_at(self.text, start, self.unit)
            if found is None or not self._ends_word(found[1]):
                return None
            length, end = found
            text = self.text[start:end]
            lengths.allowed(length, text, self.unit, signed=signed, zero=signed)
        except LengthError as error:
            _, _, why = str(error).partition("” ")
            raise NotUnderstood(
                f"{quoted(_PAST_FIGURES.sub('', self.text[start:]))} ({why.partition(';')[0]})",
                f"a size, like {_EXAMPLES[self.unit]}",
            ) from None
        self.at = end
        return length

    def needed_size(self, of: str, *, signed: bool = False) -> Mm:
        """Take the size that must come next."""
        found = self.size(signed=signed)
        if found is None:
            self.refuse(f"{of}, like {_EXAMPLES[self.unit]}")
        return found

    def label(self, of: str) -> str:
        """Take a name that is one word; a size that goes on past its word is none."""
        if not self.word or self.before_long_size:
            self.refuse(of)
        if len(self.word) > LONGEST_LABEL:
            self.refuse(f"{of} of at most {LONGEST_LABEL} characters")
        return self.any_word()

    def comma(self) -> bool:
        """Take a comma, if that is what comes next."""
        start = self._past_spaces(self.at)
        if self.text[start : start + 1] != _COMMA:
            return False
        self.at = start + 1
        return True

    def refuse(self, wanted: str) -> NoReturn:
        """Say that what comes next is not understood, and what may stand there."""
        raise NotUnderstood(self._found(), wanted)

    def _found(self) -> str:
        """What comes next: a word, or a size with the word after it."""
        if self.ended:
            return "nothing more"
        start, end = self._next(), self._size_end()
        if end:
            after = self._past_spaces(end)
            return quoted(self.text[start : self._word_end(after)].strip())
        return quoted(self.word or _COMMA)

    def _size_end(self) -> int:
        """Where the size that comes next ends; 0 where none does."""
        try:
            found = sum_at(self.text, self._next(), self.unit)
        except LengthError:
            return 0
        return found[1] if found and self._ends_word(found[1]) else 0

    def _ends_word(self, at: int) -> bool:
        following = self.text[at : at + 1]
        return not following or following == _COMMA or following.isspace()

    def _next(self) -> int:
        """Where the next word begins: past spaces and the comma that may stand before it."""
        start = self._past_spaces(self.at)
        if self.at and self.text[start : start + 1] == _COMMA:
            return self._past_spaces(start + 1)
        return start

    def _word_end(self, at: int) -> int:
        while not self._ends_word(at):
            at += 1
        return at

    def _past_spaces(self, at: int) -> int:
        while self.text[at : at + 1].isspace():
            at += 1
        return at


def quoted(text: str) -> str:
    """A piece of a line as a fault tells it: short, in quotes."""
    shown = text if len(text) <= _MOST_SHOWN else text[: _MOST_SHOWN - 1] + "…"
    return f"“{shown}”"
