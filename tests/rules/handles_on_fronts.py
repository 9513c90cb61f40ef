"""Fronts with handles of a shop's list."""

from dataclasses import replace
from typing import Any

from fronts.rules.items import HandleItem, Hardware
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Front
from tests.rules.small_kitchens import BOX, cabinet, kitchen, only_front, opening


def listing(*items: HandleItem, of: Kitchen) -> Kitchen:
    """The kitchen of a shop that has entered these."""
    return replace(of, hardware=Hardware(handles=items))


def front_of(closed_by: str, item: HandleItem, **decided: Any) -> Front:
    """A front that is closed so, with this item."""
    hole = opening(closed_by, boxes=(BOX,) if closed_by == "drawer" else ())  # type: ignore[arg-type]
    hole = replace(hole, fronts=tuple(replace(one, **decided) for one in hole.fronts))
    return only_front(listing(item, of=kitchen(cabinet(hole))))
