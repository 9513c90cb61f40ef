"""The parts of a job's page that stand for one thing each, and what is answered once it changed."""

import re
from collections.abc import Callable, Mapping, Sequence
from functools import partial
from typing import Any

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect
from django.template.loader import render_to_string
from django.urls import reverse
from django.utils.cache import patch_vary_headers
from django_htmx.http import reswap, retarget

from fronts.models import Opening
from fronts.pages.measure.rows.kitchen import cabinet_row, wall_rows
from fronts.pages.measure.rows.openings import opening_row
from fronts.pages.measure.things.registry import THING_PAGES
from fronts.pages.measure.things.thing_page import ThingPage, ThingRow
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.job_view import found_or_404
from fronts.pages.shared.return_link import return_link
from fronts.pages.shared.undo_offer import undo_offer
from fronts.selectors.kitchens import cabinets_of, opening_of, thing_of, things_of, with_fronts
from shopjobs.access import SignedInRequest
from shopjobs.models import Job, Revision
from shopjobs.pages import PartsResponse, wants_part

PAGE = "fronts/measure/page.html"
GONE = f"{PAGE}#gone"
OFFER = "fronts/history/offer.html"
KIND_LINKS = (
    ("?kind=base", "Add a base cabinet"),
    ("?kind=wall", "Add a wall cabinet"),
    ("?kind=tall", "Add a tall cabinet"),
)
_PAGES_BY_ONE = {page.one: page for page in THING_PAGES.values()}
_NEW = {page.new_key: page for page in THING_PAGES.values()}
_ONES = "|".join(_PAGES_BY_ONE)
_NUMBERED = re.compile(rf"(cabinet|opening|opening-new|{_ONES})-([0-9]{{1,18}})")

Context = dict[str, Any]


def done(
    request: SignedInRequest,
    job: Job,
    part: str,
    said: str,
    *,
    anchor: str = "",
    took: Revision | None = None,
    **more: Any,
) -> HttpResponse:
    """What is answered once something changed: its part of the page, or the way to it.

    `also` names further parts; `template` shows another in the part's place. What `took`
    something away is said with all that went, and with its own Undo.
    """
    offer = undo_offer(job, said, took, anchor or part) if took else None
    if not wants_part(request):
        words = render_to_string(OFFER, {"offer": offer}, request) if offer else said
        messages.success(request, words)
        back = return_link(request, job)
        if back:
            return redirect(back)
        return redirect(f"{reverse('fronts:job-measure', args=[job.pk])}#{anchor or part}")
    more |= {"said": said, "changed": anchor or part, "offer": offer}
    response = part_answer(request, job, part, **more)
    retarget(response, f"#{part}")
    reswap(response, "outerHTML")
    return announce_change(response)


def opening_saved(
    request: SignedInRequest,
    job: Job,
    opening: Opening,
    said: str,
    kept: Sequence[Revision] = (),
) -> HttpResponse:
    """The opening as it is now, with its fronts and boxes; what was `kept` may have taken some."""
    row, template = opening_row(with_fronts(opening), job.unit), f"{PAGE}#opening"
    took = next((revision for revision in kept if revision.went), None)
    part = f"opening-{opening.pk}"
    return done(request, job, part, said, took=took, template=template, opening=row)


def part_answer(request: SignedInRequest, job: Job, part: str, **more: Any) -> HttpResponse:
    """One part of the job's page, by the id of its element."""
    name, context = ("", {}) if "template" in more else part_of(job, part)
    context |= {"job": job, "part": True, "kinds": KIND_LINKS, **more}
    also = (*more.get("also", ()), *(["said"] if "said" in more else []))
    names = (more.get("template", f"{PAGE}#{name}"), *(f"{PAGE}#{each}" for each in also))
    response = PartsResponse(request, names, context)
    patch_vary_headers(response, ["HX-Request"])
    return response


def part_of(job: Job, part: str) -> tuple[str, Context]:
    """The template's name for a part, and what it shows."""
    numbered = _NUMBERED.fullmatch(part)
    if numbered:
        return _NUMBERED_PARTS[numbered[1]](job, int(numbered[2]))
    if part in THING_PAGES:
        return "things", things_part(job, THING_PAGES[part])
    if part in _NEW:
        return "thing-new", {"page": _NEW[part]}
    if part not in _PARTS:
        raise Http404
    return part, _PARTS[part](job)


def cabinets_part(job: Job) -> Context:
    """All cabinets, wall by wall."""
    return {"walls": wall_rows(list(cabinets_of(job)), job.unit)}


def things_part(job: Job, page: ThingPage) -> Context:
    """All things of one kind."""
    rows = [ThingRow(page, row, page.words(row, job.unit)) for row in things_of(job, page.table)]
    return {"page": page, "things": rows}


def _cabinet(job: Job, number: int) -> tuple[str, Context]:
    cabinet = found_or_404(cabinets_of(job).get, pk=number)
    return "cabinet", {"cabinet": cabinet_row(cabinet, job.unit)}


def _opening(job: Job, number: int) -> tuple[str, Context]:
    opening = found_or_404(opening_of, job, number)
    return "opening", {"opening": opening_row(opening, job.unit)}


def _new_opening(job: Job, number: int) -> tuple[str, Context]:
    return "opening-new", _cabinet(job, number)[1]


def _thing(page: ThingPage, job: Job, number: int) -> tuple[str, Context]:
    row = found_or_404(thing_of, job, page.table, number)
    return "thing", {"page": page, "thing": ThingRow(page, row, page.words(row, job.unit))}


def _nothing(job: Job) -> Context:
    return {}


_NUMBERED_PARTS: Mapping[str, Callable[[Job, int], tuple[str, Context]]] = {
    "cabinet": _cabinet,
    "opening": _opening,
    "opening-new": _new_opening,
    **{one: partial(_thing, page) for one, page in _PAGES_BY_ONE.items()},
}
_PARTS: Mapping[str, Callable[[Job], Context]] = {
    "cabinets": cabinets_part,
    "cabinet-new": _nothing,
    "job-standard": _nothing,
    "job-stock": _nothing,
    "job-boxes": _nothing,
}
