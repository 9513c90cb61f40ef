"""What of what is wanted lies free in stock, as the page offers to lay it by."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from fronts.figures.purchase import amount_words
from fronts.rules.shelf import FreeShare


@dataclass(frozen=True, slots=True)
class InStock:
    """A thing of which some is free: how much for which jobs, and how a form names each."""

    name: str
    words: str
    values: tuple[str, ...]


def value_of(share: FreeShare) -> str:
    """How a form names exactly this share."""
    return f"{share.job}\t{share.amount} {share.unit}\t{share.name}"


def in_stock(shares: Iterable[FreeShare]) -> list[InStock]:
    """The shares by what they are of, in their order."""
    by_name: dict[str, list[FreeShare]] = {}
    for share in shares:
        by_name.setdefault(share.name, []).append(share)
    return [_in_stock(name, of_it) for name, of_it in by_name.items()]


def _in_stock(name: str, shares: Sequence[FreeShare]) -> InStock:
    words = ", ".join(f"{amount_words(each.amount, each.unit)} for {each.job}" for each in shares)
    return InStock(name, words, tuple(value_of(each) for each in shares))
