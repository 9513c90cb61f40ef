"""Whether a job may be handed over: every front done as it hangs, and no snag open.

Common practice, no source: what is wrong is settled before the client signs.
"""

from dataclasses import dataclass

from fronts.rules.fits import RecordedFit, latest_fits, state_of
from fronts.rules.kitchen import Kitchen
from fronts.rules.labels import front_labels, opening_label
from fronts.rules.records import Records
from fronts.rules.results import Front, Schedule
from fronts.rules.snags import RecordedSnag


@dataclass(frozen=True, slots=True)
class SignOff:
    """The fronts that are done, each with its record; those that are not; snags still open.

    A front that is not done has its latest record beside it, None where there is none. `unmade`
    are the openings whose fronts can't be worked out, for a stop of theirs.
    """

    done: tuple[tuple[Front, RecordedFit], ...]
    not_done: tuple[tuple[Front, RecordedFit | None], ...]
    snags: tuple[RecordedSnag, ...]
    unmade: tuple[str, ...]

    @property
    def is_ready(self) -> bool:
        """Whether there is something to hand over, and nothing stands in its way."""
        return bool(self.done) and not (self.not_done or self.snags or self.unmade)


def sign_off(kitchen: Kitchen, schedule: Schedule, records: Records) -> SignOff:
    """What stands in the way of handing the job over, or all that is handed over."""
    latest = latest_fits(records.fits)
    done: list[tuple[Front, RecordedFit]] = []
    not_done: list[tuple[Front, RecordedFit | None]] = []
    for front in schedule.fronts:
        fit = latest.get(front.label)
        if fit is not None and is_done(fit, front):
            done.append((front, fit))
        else:
            not_done.append((front, fit))
    snags = tuple(snag for snag in records.snags if snag.done is None)
    return SignOff(tuple(done), tuple(not_done), snags, unmade_openings(kitchen, schedule))


def unmade_openings(kitchen: Kitchen, schedule: Schedule) -> tuple[str, ...]:
    """The openings that are to have fronts and for which the schedule has none."""
    made = {opening_label(front.cabinet, front.opening) for front in schedule.fronts}
    wanted = (
        opening_label(cabinet.label, opening.label)
        for cabinet in kitchen.cabinets
        for opening in cabinet.openings
        if front_labels(cabinet.label, opening)
    )
    return tuple(label for label in wanted if label not in made)


def is_done(fit: RecordedFit, front: Front) -> bool:
    """Whether a front's latest record says that it is done, and it hangs as it did then."""
    return state_of(fit.facts.state, fit.hung, front).is_done
