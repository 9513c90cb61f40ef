"""A short name for exactly this schedule: what a sheet shows, so that old paper can be told."""

import hashlib
import re
from collections.abc import Iterable

from fronts.rules.results import Part, Schedule
from fronts.rules.shown_figures import ShownFigure

HALF = 4
"""Letters on each side of the hyphen: short enough to be read out over a saw."""
_MISREAD = str.maketrans("oil", "011")
_HYPHENS = re.compile(r"[\s\-‐-―−_.]+")


def fingerprint(schedule: Schedule) -> str:
    """Eight letters and digits, as `3f9a-07c2`: the same for the same schedule."""
    shown = (
        schedule.job.unit,
        schedule.fronts,
        schedule.boxes,
        schedule.fittings,
        schedule.doors_on_hand,
        schedule.hardware,
        schedule.parts,
        schedule.findings,
    )
    # Nothing is added where nothing is bought: names on older paper still hold.
    return _short_name(repr((*shown, schedule.bought) if schedule.bought else shown))


def parts_fingerprint(parts: Iterable[Part]) -> str:
    """The same for exactly these parts in any order: what a cutting plan was made from."""
    return _short_name("\n".join(sorted(repr(part) for part in parts)))


def sheet_code(figures: Iterable[ShownFigure]) -> str:
    """The same for a sheet that shows exactly these figures."""
    return _short_name(repr([(each.of, each.name, each.says) for each in figures]))


def read_short_name(text: str) -> str | None:
    """A short name as people type it: `3F9A 07C2`, a letter o for a nought; else None."""
    plain = _HYPHENS.sub("", text.lower()).translate(_MISREAD)
    if not re.fullmatch(rf"[0-9a-f]{{{2 * HALF}}}", plain):
        return None
    return f"{plain[:HALF]}-{plain[HALF:]}"


def _short_name(text: str) -> str:
    digest = hashlib.sha256(text.encode()).hexdigest()
    return f"{digest[:HALF]}-{digest[HALF : 2 * HALF]}"
