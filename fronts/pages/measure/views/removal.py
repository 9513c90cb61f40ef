"""Taking something away: asked first, naming what goes with it, then done."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from django.http import HttpResponse

from fronts.pages.measure.views.parts import GONE, done
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part


@dataclass(frozen=True, slots=True, kw_only=True)
class Removal:
    """What is asked, and where: `target` is the id of the element that it stands in for.

    `said` is what is told once it is done; what is `gone` for good leaves that in its place.
    """

    job: Job
    target: str
    question: str
    goes: Callable[[], Iterable[str]]
    action: str
    button: str
    said: str
    gone: bool = True


def removed(
    request: SignedInRequest, removal: Removal, *, remove: Callable[[], object]
) -> HttpResponse:
    """Ask before what can't be undone; once that is answered, do it."""
    if request.method != "POST":
        return _ask(request, removal)
    remove()
    more = {"template": GONE} if removal.gone else {}
    return done(request, removal.job, removal.target, removal.said, **more)


def _ask(request: SignedInRequest, removal: Removal) -> HttpResponse:
    context = {
        "job": removal.job,
        "step": "measure",
        "removal": removal,
        "target": removal.target,
        "goes": list(removal.goes()),
        "in_place": wants_part(request),
    }
    return render_page(request, "fronts/measure/ask.html", context, partial="ask")
