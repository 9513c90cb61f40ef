"""What goes with something that is taken away, in words, as it is at that moment."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from fronts.models import (
    Box,
    BoxToMake,
    Cabinet,
    CutPlan,
    FitRecord,
    Front,
    FrontReceipt,
    Opening,
    OrderCheck,
)
from fronts.rules.fingerprint import parts_fingerprint
from fronts.rules.fits import hangs_still
from fronts.rules.results import Schedule
from fronts.selectors.fits import fit_records_of
from fronts.selectors.orders import order_lines
from fronts.selectors.plans import finished_plan
from fronts.selectors.schedules import schedule_of
from fronts.services.rows import called
from shopjobs.models import Job
from shopjobs.words import moment_in_words


@dataclass(frozen=True, slots=True)
class Settled:
    """What people settled by the kitchen as it is, as far as it holds.

    Items of the order whose checks stand, how many of each; records of fit by their keys; the
    cutting plan. Of a kitchen by which nothing was settled no schedule is asked.
    """

    checks: Mapping[str, int]
    fits: frozenset[int]
    plan: CutPlan | None

    def lost(self, job: Job) -> list[str]:
        """What of it holds no more by the kitchen as it is now, in words."""
        if not self.checks and not self.fits and self.plan is None:
            return []
        now = schedule_of(job)
        return [*self._fits_lost(job, now), *self._checks_lost(job, now), *self._plan_lost(now)]

    def _fits_lost(self, job: Job, now: Schedule) -> Iterator[str]:
        fits = fit_records_of(job) if self.fits else {}
        hanging = _hanging(fits, now)
        others = [
            label
            for label, record in fits.items()
            if record.pk in self.fits and record.pk not in hanging
        ]
        if others:
            are = "are other fronts now" if len(others) > 1 else "is another front now"
            yield f"{', '.join(others)} {are}, to be fitted anew"

    def _checks_lost(self, job: Job, now: Schedule) -> Iterator[str]:
        if not self.checks:
            return
        others = [
            f"{line.item} {line.was} → {line.need}"
            if line.was != line.need
            else f"{line.item}, for other fronts or by other figures"
            for line in sorted(order_lines(job, now), key=lambda line: line.item)
            if line.item in self.checks and not line.stands
        ]
        if others:
            word = "check holds" if len(others) == 1 else "checks hold"
            yield f"the order's {word} no more: {', '.join(others)}"

    def _plan_lost(self, now: Schedule) -> Iterator[str]:
        if self.plan is not None and self.plan.fingerprint != parts_fingerprint(now.parts):
            made = moment_in_words(self.plan.started_at)
            yield f"the cutting plan of {made} is of other parts"


def settled_in(job: Job) -> Settled:
    """What holds before something is taken away."""
    has_checks = OrderCheck.objects.filter(job=job).exists()
    fits, plan = fit_records_of(job), finished_plan(job)
    if not has_checks and not fits and plan is None:
        return NOTHING_SETTLED
    now = schedule_of(job)
    lines = order_lines(job, now) if has_checks else []
    return Settled(
        {line.item: line.need for line in lines if line.stands and line.need},
        _hanging(fits, now),
        plan if plan and plan.fingerprint == parts_fingerprint(now.parts) else None,
    )


NOTHING_SETTLED = Settled({}, frozenset(), None)


def in_cabinet(cabinet: Cabinet) -> list[str]:
    """A cabinet's openings, and what their fronts carry."""
    openings = Opening.objects.filter(cabinet=cabinet).select_related("cabinet")
    names = [str(opening) for opening in openings.order_by("position", "pk")]
    word = "opening" if len(names) == 1 else "openings"
    fronts = list(Front.objects.filter(opening__cabinet=cabinet))
    return [*([f"{word} {', '.join(names)}"] if names else []), *carried(fronts)]


def carried(fronts: Sequence[Front], fits: Sequence[Front] | None = None) -> list[str]:
    """The boxes of some fronts, what came of them, and the records of fit of some.

    Those are of the same fronts, if none is named.
    """
    boxes = sorted(
        (
            box
            for table in (Box, BoxToMake)
            for box in table._default_manager.filter(front__in=fronts).select_related(
                "front__opening__cabinet"
            )
        ),
        key=lambda box: (
            box.front.opening.position, box.front.opening_id, box.front.position
        ),
    )  # fmt: skip
    records = FitRecord.objects.filter(front__in=fronts if fits is None else fits)
    labels = dict.fromkeys(records.order_by("label").values_list("label", flat=True))
    word = "record" if len(labels) == 1 else "records"
    receipts = FrontReceipt.objects.filter(front__in=fronts)
    came = dict.fromkeys(receipts.order_by("label").values_list("label", flat=True))
    return [
        *([", ".join(map(called, boxes))] if boxes else []),
        *([f"the {word} of how {', '.join(labels)} fitted"] if labels else []),
        *([f"the check that {', '.join(came)} came"] if came else []),
    ]


def _hanging(fits: Mapping[str, FitRecord], now: Schedule) -> frozenset[int]:
    """The records whose fronts are those that were fitted."""
    fronts = {front.label: front for front in now.fronts}
    return frozenset(
        record.pk
        for label, record in fits.items()
        if label in fronts and hangs_still(record.hung, fronts[label])
    )
