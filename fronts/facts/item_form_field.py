"""The form field in which a person chooses an item of the shop's list by its code."""

from collections.abc import Callable, Iterable
from typing import Any

from django import forms


class ChoiceOrNothing(forms.ChoiceField):
    """A choice that is asked for once it is shown; `nothing` is what holds where none is made."""

    nothing = ""


class ItemField(ChoiceOrNothing):
    """An item by its code; one that is `named` already may stay, also if it is on no list."""

    def __init__(self, *, nothing: str = "", **kwargs: Any) -> None:
        self.nothing = nothing
        self.named: frozenset[str] = frozenset()
        self.beside: tuple[tuple[str, str], ...] = ()
        super().__init__(choices=[("", nothing)], **kwargs)

    def offer(
        self,
        items: Callable[[], Iterable[tuple[str, str]]],
        named: Iterable[str | None],
        beside: tuple[tuple[str, str], ...] = (),
    ) -> None:
        """Offer these items by code and name; they are asked for once they are shown.

        `beside` are words that may stand in place of a code, each with what people call it.
        """
        self.beside = beside
        self.named = frozenset(code for code in named if code)
        self.choices = lambda: list(self._offered(items()))

    def valid_value(self, value: Any) -> bool:
        return value in self.named or super().valid_value(value)

    def _offered(self, items: Iterable[tuple[str, str]]) -> Iterable[tuple[str, str]]:
        yield "", self.nothing
        yield from self.beside
        listed = dict(items)
        for code, name in listed.items():
            yield code, f"{code}, {name}" if name else code
        for code in sorted(self.named - listed.keys() - dict(self.beside).keys()):
            yield code, f"{code}, on no list"
