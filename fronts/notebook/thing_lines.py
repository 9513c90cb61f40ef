"""A line of a notebook that is a filler, an end panel, a gap or an appliance."""

from dataclasses import dataclass

from fronts.notebook.faults import NotUnderstood
from fronts.notebook.sizes import AT, DEEP, HIGH, MARKS, Sizes, like, take_size
from fronts.notebook.words import Words, quoted
from fronts.rules.lengths import Mm
from fronts.rules.limits import LONGEST_ITEM_NAME
from fronts.rules.thing_kinds import THING_KINDS, ThingKind

UPPER = "upper"
THING_WORDS: dict[str, tuple[ThingKind, tuple[str, ...]]] = {
    kind.partition("-")[0]: (kind, tuple(kind.split("-")[1:])) for kind in THING_KINDS
}
"""The word that each kind begins with, and those that follow it: `end` `panel`."""
_SIZES = (HIGH, DEEP, AT)
_KINDS = ", ".join(kind.replace("-", " ") for kind in THING_KINDS)


@dataclass(frozen=True, slots=True)
class ThingLine:
    """What stands beside cabinets; `upper`: said to hang above."""

    kind: ThingKind
    upper: bool
    width: Mm
    sizes: Sizes
    name: str


def thing_line(words: Words) -> ThingLine:
    """All of a line about a thing: its width, then its sizes and its name."""
    upper = words.take(UPPER) is not None
    first = words.take(*THING_WORDS)
    if first is None:
        words.refuse(f"one of {_KINDS}")
    kind, following = THING_WORDS[first]
    words.need(*following)
    width = words.needed_size("its width")
    sizes: dict[str, Mm] = {}
    name = ""
    while not words.ended:
        if take_size(words, _SIZES, sizes):
            continue
        if name:
            words.refuse(f"{like(_SIZES)}, each once, or nothing more")
        name = _name(words)
    return ThingLine(kind, upper, width, sizes, name)


def _name(words: Words) -> str:
    """Further words, up to the next size; a whole number may be one of them, but not the first."""
    names: list[str] = []
    while not words.ended and not _before_size(words):
        numbered = bool(names) and words.word.isdigit() and not words.before_long_size
        if not words.word or words.word.lower() in MARKS or (words.before_size and not numbered):
            words.refuse(f"{like(_SIZES)}, each once, or its name in words")
        names.append(words.any_word())
    name = " ".join(names)
    if len(name) > LONGEST_ITEM_NAME:
        raise NotUnderstood(quoted(name), f"a name of at most {LONGEST_ITEM_NAME} characters")
    return name


def _before_size(words: Words) -> bool:
    """Whether a size with its word comes next."""
    start = words.at
    comes = take_size(words, _SIZES, {})
    words.at = start
    return comes
