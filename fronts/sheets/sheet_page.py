"""What sheets are made from, and what every sheet says of itself."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from functools import cached_property
from typing import Any

from django.template.loader import render_to_string

from fronts.cutting.model import Plan
from fronts.rules.fingerprint import fingerprint
from fronts.rules.kitchen import Kitchen
from fronts.rules.merged_jigs import JigPlan, merged_jigs
from fronts.rules.records import NO_RECORDS, Records
from fronts.rules.results import Schedule
from fronts.rules.runs import stood
from fronts.rules.schedule import schedule


@dataclass(frozen=True, slots=True)
class CutPlanSource:
    """Plans by the names of their materials; `made` says by whom, when and from which parts.

    `outdated` where the kitchen has other parts by now; `numbers` are those of the offcuts to
    keep, by their places, and `lost` says which offcuts it can't have any more.
    """

    plans: tuple[tuple[str, Plan], ...]
    made: str
    outdated: bool = False
    numbers: Mapping[str, str] = field(default_factory=dict)
    lost: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class OrderSource:
    """How far the job's order is, in words; and each item that was approved, likewise."""

    state: str
    items: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True)
class SheetSource:
    """A kitchen, its schedule, and the day on which that is printed.

    `records` are what people recorded on its job, for a sheet that needs them; `order` is how
    far its hardware is ordered.
    `first_printed`: when sheets with these codes were printed first, if not now. `site` is the
    address at which codes can be looked up, as `https://fronts.example/`; "" where there is none.
    """

    kitchen: Kitchen
    schedule: Schedule
    printed: date
    plan: CutPlanSource | None = None
    order: OrderSource | None = None
    records: Records = NO_RECORDS
    first_printed: Mapping[str, date] = field(default_factory=dict)
    site: str = ""

    @cached_property
    def fingerprint(self) -> str:
        """By which one sees whether a sheet is still true."""
        return fingerprint(self.schedule)

    @cached_property
    def jig_plan(self) -> JigPlan:
        """The jigs as they are made and taken along."""
        return merged_jigs(self.schedule, self.kitchen)


def source_of(kitchen: Kitchen, printed: date) -> SheetSource:
    """The kitchen with its schedule worked out, once for all its sheets."""
    kitchen = stood(kitchen)
    return SheetSource(kitchen, schedule(kitchen), printed)


def page(template: str, source: SheetSource, context: dict[str, Any]) -> str:
    """A sheet's whole HTML; the context brings its `title`."""
    job = source.kitchen.job
    shared = {
        "job": job,
        "for_whom": " · ".join(name for name in (job.client, job.site) if name),
        "unit_words": "All lengths in inches" if job.unit == "in" else "All lengths in millimetres",
        "printed": source.printed.isoformat(),
        "fingerprint": source.fingerprint,
    }
    return render_to_string(f"sheets/{template}", {**shared, **context})
