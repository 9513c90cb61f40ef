"""Taking something away: done at once, said with all that went with it, and offered back."""

from collections.abc import Callable

from django.http import HttpResponse

from fronts.pages.measure.views.parts import GONE, done
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.services.recording import revisions_kept


def removed(
    request: SignedInRequest,
    job: Job,
    target: str,
    said: str,
    *,
    remove: Callable[[], object],
    gone: bool = True,
) -> HttpResponse:
    """Take something away, and say so where it stood: at the element `target`.

    What is `gone` for good leaves that in its place; else it stands beside what is left there.
    """
    with revisions_kept() as kept:
        remove()
    more = {"template": GONE} if gone else {}
    return done(request, job, target, said, took=kept[0] if kept else None, **more)
