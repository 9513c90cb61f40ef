"""Snags as pages show them: open ones first, the most pressing on top."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date

from django.forms import Form
from django.utils import timezone

from fronts.models import Snag
from fronts.pages.shared.photos_shown import PhotoShown, photo_shown
from fronts.rules.snags import is_late
from fronts.selectors.snags import Called, SnagOn, fronts_called, on_now, snags_of
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class SnagShown:
    """A snag with its photos, what it is on, and the form that says what was done about it."""

    snag: Snag
    on: SnagOn
    is_late: bool
    photos: tuple[PhotoShown, ...]
    form: Form

    @property
    def row(self) -> str:
        """The id of its row on a page."""
        return f"snag-{self.snag.pk}"

    @property
    def is_open(self) -> bool:
        """Whether it is still to be settled."""
        return self.snag.done_at is None


FormOf = Callable[[Snag], Form]


def snag_shown(snag: Snag, called: Called, form: Form) -> SnagShown:
    """One snag, as of today."""
    photos = tuple(
        photo_shown(photo, "snag-photo", snag.job_id, snag.pk, photo.pk)
        for photo in snag.photos.all()
    )
    late = snag.done_at is None and is_late(snag.due, timezone.localdate())
    return SnagShown(snag, on_now(snag, called), late, photos, form)


def snags_shown(
    job: Job, form_of: FormOf, cabinet_id: int | None = None
) -> tuple[list[SnagShown], list[SnagShown]]:
    """The job's snags that are open, and those that are done; of one cabinet where it is given."""
    rows = snags_of(job) if cabinet_id is None else snags_of(job).filter(cabinet=cabinet_id)
    snags = list(rows)
    for snag in snags:
        snag.job = job
    called = fronts_called(job, snags)
    shown = [snag_shown(snag, called, form_of(snag)) for snag in snags]
    return _pressing(each for each in shown if each.is_open), _latest(shown)


def _pressing(shown: Iterable[SnagShown]) -> list[SnagShown]:
    """By the day by which they are to be settled; those without one last, as written down."""
    return sorted(shown, key=lambda each: each.snag.due or date.max)


def _latest(shown: Iterable[SnagShown]) -> list[SnagShown]:
    done = [(each.snag.done_at, each) for each in shown if each.snag.done_at is not None]
    return [each for _, each in sorted(done, key=lambda one: one[0], reverse=True)]
