"""Walls of a kitchen as a page shows them."""

from collections.abc import Callable, Mapping, Sequence

from django.utils.safestring import SafeString, mark_safe

from fronts.drawings.elevation import NO_STATES, NONE_OPEN, PAGE, Sheet, wall_elevation
from fronts.rules.front_states import FrontState
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Schedule
from fronts.rules.snags import OpenSnags


def drawn_walls(
    schedule: Schedule,
    kitchen: Kitchen,
    links: Callable[[str], str] | None = None,
    *,
    ids: str = "front",
    sheet: Sheet = PAGE,
    walls: Sequence[str] | None = None,
    states: Mapping[str, FrontState] = NO_STATES,
    snags: Mapping[str, OpenSnags] = NONE_OPEN,
) -> dict[str, SafeString]:
    """Each of the walls, or of all, by its name.

    `links` gives the address that a front's label leads to; `ids` is what the ids of fronts
    begin with, where a page draws a wall twice; `sheet` is the room for each; `states`
    are how fronts stand, by their labels, and `snags` those that are open, of cabinets too.
    """
    unit = kitchen.job.unit
    return {
        wall: mark_safe(  # noqa: S308 - drawn by us, every word in it escaped
            wall_elevation(
                schedule,
                kitchen,
                wall,
                unit=unit,
                links=links,
                ids=ids,
                sheet=sheet,
                states=states,
                snags=snags,
            )
        )
        for wall in (kitchen.wall_names if walls is None else walls)
    }
