"""Walls are chosen among those that the job has, so that none is spelled in two ways."""

from collections.abc import Callable, Iterable

from django import forms
from django.utils.choices import CallableChoiceIterator

from fronts.pages.shared.kitchen_form import KitchenForm


def offer_walls(
    form: KitchenForm, walls: Callable[[], Iterable[str]], *names: str, empty: str = ""
) -> None:
    """Let these fields offer the walls, once they are shown; what one says already stays.

    `empty` is what an optional one says where none is chosen. Where there is no wall yet, its
    name is typed.
    """
    for name in names:
        field = form.fields[name]
        held = str(form[name].value() or "")

        def choices(held: str = held) -> list[tuple[str, str]]:
            known = dict.fromkeys([*walls(), *([held] if held else [])])
            return [*([("", empty)] if empty else []), *((wall, wall) for wall in known)]

        if empty or held or choices():
            field.widget = forms.Select(choices=CallableChoiceIterator(choices))
