"""What a cabinet's next openings are called: a, b, c …, passing over those taken."""

from collections.abc import Iterable, Iterator
from itertools import count
from string import ascii_lowercase


def opening_label(index: int) -> str:
    """The label of an opening by its place: `a` to `z`, `a2` to `z2` and so on."""
    rounds, letter = divmod(index, len(ascii_lowercase))
    return ascii_lowercase[letter] + (str(rounds + 1) if rounds else "")


def free_labels(taken: Iterable[str]) -> Iterator[str]:
    """Labels that no opening of the cabinet has yet."""
    used = {label.casefold() for label in taken}
    return (label for label in map(opening_label, count()) if label not in used)
