"""Which template stands where: cards on pages, as many as fit, numbered as they come."""

from collections.abc import Sequence
from dataclasses import dataclass, field

from fronts.drawings.true_size.card import Card
from fronts.drawings.true_size.page import ROOM, PlacedCard
from fronts.rules.lengths import NOTHING, Mm

_SPACE = Mm(2)


@dataclass(slots=True)
class _Shelf:
    """A row of cards on a page, as high as its first."""

    y: Mm
    height: Mm
    used: Mm = NOTHING

    def takes(self, card: Card) -> bool:
        return card.height <= self.height and self.used + card.width <= ROOM[0]


@dataclass(slots=True)
class _Page:
    shelves: list[_Shelf] = field(default_factory=list)
    cards: list[tuple[int, Card, Mm, Mm]] = field(default_factory=list)

    def takes(self, template: int, card: Card) -> bool:
        """Place it on the first row with room, or on a new one; False where there is none."""
        shelf = next((each for each in self.shelves if each.takes(card)), None) or self._new(card)
        if shelf is None:
            return False
        self.cards.append((template, card, shelf.used, shelf.y))
        shelf.used += card.width + _SPACE
        return True

    def _new(self, card: Card) -> _Shelf | None:
        last = self.shelves[-1] if self.shelves else None
        y = last.y + last.height + _SPACE if last else NOTHING
        if last and y + card.height > ROOM[1]:
            return None
        self.shelves.append(_Shelf(y, card.height))
        return self.shelves[-1]


def placed_cards(templates: Sequence[Sequence[Card]]) -> list[list[PlacedCard]]:
    """Pages of cards, by first-fit decreasing height, so that paper is not wasted.

    A template's number is its place in the order given, counted from 1.
    """
    pages: list[_Page] = []
    numbered = [(at, card) for at, cards in enumerate(templates, 1) for card in cards]
    for number, card in sorted(numbered, key=lambda each: -each[1].height):
        if not any(page.takes(number, card) for page in pages):
            pages.append(_Page())
            pages[-1].takes(number, card)
    return [[PlacedCard(card, number, x, y) for number, card, x, y in page.cards]
            for page in pages]  # fmt: skip
