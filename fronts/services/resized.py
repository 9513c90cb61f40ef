"""A cabinet made wider, narrower, higher or lower: its openings go along, or it is refused."""

from fractions import Fraction
from typing import cast

from django.core.exceptions import ValidationError

from fronts.models import Cabinet, Opening
from fronts.notebook import NoRoom, openings_resized, room_wanted
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Cabinet as CabinetFacts
from fronts.rules.kitchen import Opening as OpeningFacts
from fronts.rules.lengths import Mm, show_with_unit
from fronts.rules.past_cabinet import ends_past
from fronts.services.saving import checked, enter, saved

_WAYS = {"width": "wide", "height": "high"}


def openings_let_follow(cabinet: Cabinet, before: CabinetFacts) -> None:
    """Let the openings of the cabinet, as it was before, go along with its new size.

    Refused, at the size that is too small, where one of them would end past it.
    """
    unit, step = cast(Unit, cabinet.job.unit), Fraction(cabinet.job.step)
    placed = openings_resized(before, cabinet.width, cabinet.height, unit, step)
    if any(ends_past(opening, cabinet) for opening in placed):
        wanted = room_wanted(before, cabinet.width, cabinet.height, unit, step)
        raise ValidationError({size: _said(cabinet, size, one) for size, one in wanted.items()})
    moved = {
        opening.label: opening
        for held, opening in zip(before.openings, placed, strict=True)
        if held != opening
    }
    for row in Opening.objects.filter(cabinet=cabinet, label__in=moved):
        row.cabinet = cabinet
        enter(row, _place(moved[row.label]))
        checked(row)
        saved(row)


def _place(opening: OpeningFacts) -> dict[str, Mm]:
    return {name: getattr(opening, name) for name in ("x", "y", "width", "height")}


def _said(cabinet: Cabinet, size: str, lacking: NoRoom) -> str:
    """What the size that was typed leaves which opening, and what would do."""

    def shown(length: Mm) -> str:
        return show_with_unit(length, cabinet.job.unit)

    typed, opening = shown(getattr(cabinet, size)), f"{cabinet.label}.{lacking.opening}"
    left, wants, would_do = (
        shown(length) for length in (lacking.leaves, lacking.wants, lacking.would_do)
    )
    first = "" if lacking.follows else ", or change the opening first"
    if lacking.leaves <= 0:
        return f"{typed} leaves no room for opening {opening}; {would_do} would do{first}"
    if lacking.follows:
        wide = f"{left} {_WAYS[size]}; {wants} is the least"
        return f"{typed} leaves opening {opening} {wide}, so {would_do} would do"
    rest = f"{left} of its {size} of {wants}"
    return f"{typed} leaves opening {opening} {rest}; {would_do} would do{first}"
