"""All that a page shows where one size of one opening is taken."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from urllib.parse import urlencode

from django.core.exceptions import ObjectDoesNotExist
from django.urls import reverse
from django.utils.safestring import SafeString, mark_safe

from fronts.drawings.drawing import SCREEN
from fronts.drawings.measured_opening import measured_opening
from fronts.drawings.svg import Px
from fronts.figures.what_follows import WhatFollows, what_follows
from fronts.pages.on_site.rows.openings import Stop, stops_of
from fronts.rules.kitchen import Kitchen
from fronts.rules.length_sums import read_sum
from fronts.rules.lengths import LengthError, Mm, show
from fronts.rules.opening_sizes import lean_of, widths_of
from fronts.rules.site_sizes import NAMES, SITE_SIZES, SiteSize, following, length_of
from fronts.rules.size_questions import off_by, plan_of, planned_size
from fronts.selectors.kitchens import placed_kitchen_of
from fronts.selectors.schedules import schedule_for
from shopjobs.models import Job

PAIR = "pair"
"""In an address: the diagonal that was taken just before, kept together with this one."""
_ROOM: tuple[Px, Px] = (340_00, 190_00)


@dataclass(frozen=True, slots=True)
class SizeLink:
    """One of the opening's six sizes, as it stands."""

    size: SiteSize
    shown: str
    href: str
    is_here: bool


@dataclass(frozen=True, slots=True)
class AtSize:
    """Where one stands: opening `place` of `stops`, and its size.

    `carried` is what was typed of the other diagonal just before.
    """

    job: Job
    kitchen: Kitchen
    stops: Sequence[Stop]
    place: int
    size: SiteSize
    carried: str = ""

    @property
    def stop(self) -> Stop:
        """The opening."""
        return self.stops[self.place]

    @property
    def number(self) -> int:
        """Its place as people count."""
        return self.place + 1

    @property
    def measured(self) -> int:
        """How many of the job's openings have all their sizes."""
        return sum(stop.is_measured for stop in self.stops)

    @property
    def length(self) -> Mm | None:
        """What was measured here, None where it was not yet."""
        return length_of(self.stop.opening.measured, self.size.name)

    @property
    def pair(self) -> Mm | None:
        """The other diagonal, where it was taken just before."""
        if self.size.across != "diagonal" or not self.carried:
            return None
        try:
            return read_sum(self.carried, self.job.unit, zero=False)
        except LengthError:
            return None

    @property
    def waits(self) -> bool:
        """Whether this diagonal is kept only with the other, which is not there yet."""
        other = length_of(self.stop.opening.measured, self.size.pair)
        return self.size.across == "diagonal" and other is None and self.pair is None

    @property
    def action(self) -> str:
        """Where the size is sent."""
        address = self.stop.address(self.size.name)
        return f"{address}?{urlencode({PAIR: self.carried})}" if self.pair else address

    @property
    def pair_address(self) -> str:
        """Where the other diagonal is taken, with which this one is kept."""
        return self.stop.address(self.size.pair)

    @property
    def then(self) -> str:
        """Where one goes on: to the next size, after the last to all openings."""
        after = self.after
        return after.action if after else reverse("fronts:job-on-site", args=[self.job.pk])

    @property
    def planned(self) -> str:
        """What the size is on the plan; of a diagonal about what the sizes so far make."""
        step, unit = self.kitchen.job.step, self.job.unit
        planned = show(planned_size(self.stop.opening, self.size, step), unit)
        return f"about {planned}" if self.size.across == "diagonal" else f"planned {planned}"

    @property
    def alike(self) -> tuple[str, str] | None:
        """What this size is most often like, to be taken in one tap: its pair, else the plan."""
        other = length_of(self.stop.opening.measured, self.size.pair) or self.pair
        if other is not None:
            is_diagonal, pair = self.size.across == "diagonal", SITE_SIZES[self.size.pair]
            return show(other, self.job.unit), f"as {'the other' if is_diagonal else pair.where}"
        return None if self.size.across == "diagonal" else (self._plan, "as planned")

    @property
    def drawing(self) -> SafeString:
        """The cabinet and its opening, with the size that is taken."""
        svg = measured_opening(
            self.stop.cabinet, self.stop.opening, self.size.name,
            unit=self.job.unit, ink=SCREEN, room=_ROOM,
        )  # fmt: skip
        return mark_safe(svg)  # noqa: S308 - drawn by us, every word in it escaped

    @property
    def links(self) -> list[SizeLink]:
        """The six sizes, each with what was measured."""
        return [self._link(size) for size in SITE_SIZES.values()]

    @property
    def said(self) -> str:
        """What is kept here now, beside the plan, and how the opening leans once that is known."""
        if self.length is None:
            return f"{self.stop.label}, {self.size.title}: not measured."
        unit = self.job.unit
        off = off_by(self.stop.opening, self.size.name, self.length)
        words = f"{self.stop.label}, {self.size.title}: {show(self.length, unit)}"
        if off.by:
            words += f", {show(abs(off.by), unit)} {'more' if off.by > 0 else 'less'} than "
            words += off.words
        return f"{words}.{self._lean()}"

    @property
    def before(self) -> str:
        """Where the size before this one is taken, "" at the very first."""
        at = NAMES.index(self.size.name)
        if at:
            return self.stop.address(NAMES[at - 1])
        return self.stops[self.place - 1].address(NAMES[-1]) if self.place else ""

    @property
    def next_opening(self) -> str:
        """Where the next opening is measured, "" after the last."""
        later = self.stops[self.place + 1 :]
        return later[0].href if later else ""

    @property
    def after(self) -> "AtSize | None":
        """Where one goes on from here, None where this was the last size of the last opening."""
        size = following(self.stop.opening.measured, self.size.name)
        if size is not None:
            return replace(self, size=size, carried="")
        place = self.place + 1
        if place == len(self.stops):
            return None
        return replace(self, place=place, size=SITE_SIZES[self.stops[place].first], carried="")

    def with_pair(self, typed: str) -> "AtSize":
        """At the other diagonal, with this one as it was typed."""
        return replace(self, size=SITE_SIZES[self.size.pair], carried=typed)

    @property
    def _plan(self) -> str:
        return show(plan_of(self.stop.opening, self.size), self.job.unit)

    def _link(self, size: SiteSize) -> SizeLink:
        length = length_of(self.stop.opening.measured, size.name)
        if length is None and size.name == self.size.pair:
            length = self.pair
        shown = "" if length is None else show(length, self.job.unit)
        return SizeLink(size, shown, self.stop.address(size.name), size == self.size)

    def _lean(self) -> str:
        opening = self.stop.opening
        lean = lean_of(opening, widths_of(opening)[0])
        if self.size.across != "diagonal" or lean is None:
            return ""
        if not lean:
            return " It stands square."
        side = "right" if lean > 0 else "left"
        return f" It leans {show(abs(lean), self.job.unit)} to the {side}."


def at_size(job: Job, opening: int, name: str, carried: str = "") -> AtSize:
    """The size of the opening of this key; ObjectDoesNotExist where the job has none."""
    kitchen = placed_kitchen_of(job)
    stops = stops_of(job, kitchen)
    place = next((at for at, stop in enumerate(stops) if stop.key == opening), None)
    if place is None:
        raise ObjectDoesNotExist
    return AtSize(job, kitchen, stops, place, SITE_SIZES[name], carried)


def follows_from(was: AtSize, now: AtSize) -> WhatFollows:
    """What follows for the fronts from the size that was taken in between."""
    worked = [(at.kitchen, schedule_for(at.job, at.kitchen)) for at in (was, now)]
    return what_follows(*worked)
