"""A short name for exactly this schedule: what a sheet shows, so that old paper can be told."""

import hashlib

from fronts.rules.results import Schedule

LETTERS = 8


def fingerprint(schedule: Schedule) -> str:
    """Eight letters and digits, as `3f9a-07c2`: the same for the same schedule."""
    shown = (
        schedule.job.unit,
        schedule.fronts,
        schedule.fittings,
        schedule.doors_on_hand,
        schedule.hardware,
        schedule.parts,
        schedule.findings,
    )
    digest = hashlib.sha256(repr(shown).encode()).hexdigest()[:LETTERS]
    return f"{digest[: LETTERS // 2]}-{digest[LETTERS // 2 :]}"
