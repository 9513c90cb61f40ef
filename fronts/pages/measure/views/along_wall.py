"""A row of a wall's table moved past its neighbour."""

import re

from django.http import Http404, HttpResponse
from django_htmx.http import reswap

from fronts.models import Cabinet, Thing
from fronts.pages.measure.things.others import OTHERS
from fronts.pages.measure.views.page import drawn_at_once
from fronts.pages.measure.views.parts import PAGE, done
from fronts.pages.shared.job_view import found_or_404, job_view, who
from fronts.selectors.kitchens import cabinet_of, thing_of
from fronts.services.along_wall import standing_move
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import wants_part

_KEY = re.compile(rf"(cabinet|{OTHERS.one})-([0-9]{{1,18}})")


@job_view("edit_kitchen", "POST")
def row_move(request: SignedInRequest, job: Job, key: str) -> HttpResponse:
    """Move what stands there one place earlier or later in its run."""
    row = standing_row_of(job, key)
    places = -1 if request.POST.get("to") == "earlier" else 1
    is_moved = standing_move(row=row, by_places=places, **who(request))
    way = "earlier" if places < 0 else "later"
    said = f"{row.label} stands one place {way}."
    if not is_moved:
        said = f"{row.label} is the {'first' if places < 0 else 'last'} of its run already."
    if not wants_part(request):
        return done(request, job, "cabinets", said, anchor=key)
    parts = (f"{PAGE}#said",)
    return reswap(drawn_at_once(request, job, row.wall, parts, {"said": said}), "none")


def standing_row_of(job: Job, key: str) -> Cabinet | Thing:
    """The cabinet or thing of a row's key; a 404 where there is none."""
    found = _KEY.fullmatch(key)
    if found is None:
        raise Http404
    number = int(found[2])
    if found[1] == "cabinet":
        return found_or_404(cabinet_of, job, number)
    row: Thing = found_or_404(thing_of, job, OTHERS.table, number)
    return row
