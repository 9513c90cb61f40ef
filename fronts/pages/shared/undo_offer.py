"""What is said of something that went, with the form that takes it back right there."""

from dataclasses import dataclass

from django.urls import reverse

from fronts.pages.shared.history_addresses import undo_address
from shopjobs.models import Job, Revision


@dataclass(frozen=True, slots=True)
class UndoOffer:
    """What was done, in words, and the revision that says what went with it.

    `undo` is where its form is posted, `back` the page that follows.
    """

    said: str
    revision: Revision
    undo: str
    back: str


def undo_offer(job: Job, said: str, revision: Revision, anchor: str) -> UndoOffer:
    """Offer to take it back; what comes back stands on the job's page at the anchor."""
    page = reverse("fronts:job-measure", args=[job.pk])
    return UndoOffer(said, revision, undo_address(job), f"{page}#{anchor}")
