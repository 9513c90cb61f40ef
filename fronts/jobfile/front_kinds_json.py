"""What only some kinds of front have, as JSON: screws from behind, a tray."""

from typing import TypeAlias

from fronts.rules.fitting_results import FixedScrews, Tray
from fronts.rules.lengths import Mm, as_output
from fronts.rules.results import Front

Json: TypeAlias = dict[str, object]


def of_kind(front: Front) -> Json:
    """Each key of every front; null where it has no such thing."""
    return {
        "fixed_by": None if front.fixed_by is None else _screws(front.fixed_by),
        "tray": None if front.tray is None else _tray(front.tray),
    }


def _screws(screws: FixedScrews) -> Json:
    return {"length": _maybe(screws.length), "count": screws.count}


def _tray(tray: Tray) -> Json:
    return {
        "length": as_output(tray.length),
        "depth": as_output(tray.depth),
        "room": _maybe(tray.room),
    }


def _maybe(length: Mm | None) -> str | None:
    return None if length is None else as_output(length)
