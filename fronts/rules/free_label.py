"""A label that is free, for something that comes with one of its own."""

from collections.abc import Collection
from itertools import count

from fronts.rules.limits import LONGEST_LABEL


def free_label(label: str, taken: Collection[str]) -> str:
    """Its own where that is free, else its letters with the first number that is: `D1`, `D4`."""
    if label not in taken:
        return label
    letters = label.rstrip("0123456789")
    tried = (f"{letters[: LONGEST_LABEL - len(str(n))]}{n}" for n in count(1))
    return next(one for one in tried if one not in taken)
