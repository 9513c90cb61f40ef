"""The parts of a job's page that stand for one thing each, and what is answered once it changed."""

import re
from collections.abc import Callable, Mapping, Sequence
from functools import partial
from typing import Any
from urllib.parse import urlencode

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect
from django.template.loader import render_to_string
from django.urls import reverse
from django.utils.cache import patch_vary_headers
from django_htmx.http import reswap, retarget

from fronts.models import Opening
from fronts.pages.measure.rows.cells import NOTHING_TYPED, SAYS, Typed
from fronts.pages.measure.rows.kind_standards import kind_rows
from fronts.pages.measure.rows.openings import opening_row
from fronts.pages.measure.rows.walls import AT, wall_links, wall_shown
from fronts.pages.measure.things.others import OTHERS
from fronts.pages.measure.things.registry import THING_PAGES
from fronts.pages.measure.things.thing_page import ThingPage, ThingRow
from fronts.pages.measure.things.wall_table import cabinet_row, run_rows, standing_row
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.job_view import found_or_404
from fronts.pages.shared.return_link import return_link
from fronts.pages.shared.undo_offer import undo_offer
from fronts.pages.shared.wall_addresses import EVERY, WALL, wall_query
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.selectors.kitchens import cabinets_of, opening_of, thing_of, things_of, with_fronts
from fronts.snapshot import job_facts, kitchen_of
from fronts.snapshot.things import rows_at_hand
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
NO_PLACES: Mapping[str, Mm] = {}
"""A single row leaves its place along the wall to the table, which follows every change."""
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
        page = reverse("fronts:job-measure", args=[job.pk])
        return redirect(f"{page}?{AT}={anchor or part}#{anchor or part}")
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
    name, context = ("", {}) if "template" in more else part_of(job, part, at=more.get("changed"))
    shown = wall_too(request.GET.get(WALL, ""))
    context = {"wall_too": shown, **context, "job": job, "part": True, "kinds": KIND_LINKS, **more}
    also = (*more.get("also", ()), *(["said"] if "said" in more else []))
    names = (more.get("template", f"{PAGE}#{name}"), *(f"{PAGE}#{each}" for each in also))
    response = PartsResponse(request, names, context)
    patch_vary_headers(response, ["HX-Request"])
    return response


def part_of(job: Job, part: str, at: str | None = None) -> tuple[str, Context]:
    """The template's name for a part, and what it shows: a wall's table is the one of `at`."""
    numbered = _NUMBERED.fullmatch(part)
    if numbered:
        return _NUMBERED_PARTS[numbered[1]](job, int(numbered[2]))
    if part == "cabinets":
        return part, wall_part(job, kitchen_of(job), {AT: at or ""})
    if part == "job-standard":
        return part, standard_part(job)
    if part in THING_PAGES:
        return "things", things_part(job, THING_PAGES[part])
    if part in _NEW:
        return "thing-new", {"page": _NEW[part]}
    if part not in _PARTS:
        raise Http404
    return part, {}


def wall_part(
    job: Job, kitchen: Kitchen, said: Mapping[str, str], typed: Typed = NOTHING_TYPED
) -> Context:
    """The table of the wall that is shown."""
    wall = wall_shown(job, kitchen, said)
    return {**wall_head(kitchen, wall), **wall_rows(job, kitchen, wall, typed)}


def wall_head(kitchen: Kitchen, wall: str) -> Context:
    """Which wall is shown, and the ways to the others."""
    return {
        "wall": wall,
        "wall_query": wall_query(wall) if wall else "",
        "wall_too": wall_too(wall),
        "every_wall": wall == EVERY,
        "wall_links": wall_links(kitchen, wall),
    }


def wall_rows(job: Job, kitchen: Kitchen, wall: str, typed: Typed) -> Context:
    """The rows of a wall's table."""
    cabinets = list(cabinets_of(job).filter(wall=wall))
    things = list(things_of(job, OTHERS.table).filter(wall=wall))
    runs = run_rows(wall, kitchen, cabinets, things, unit=job.unit, typed=typed)
    return {"runs": runs, "columns": tuple(SAYS.values()), "faults": typed.faults}


def wall_too(wall: str) -> str:
    """What an address says of the wall beside something else."""
    return f"&{urlencode({WALL: wall})}"


def things_part(job: Job, page: ThingPage) -> Context:
    """All things of one kind."""
    rows = [ThingRow(page, row, page.words(row, job.unit)) for row in things_of(job, page.table)]
    return {"page": page, "things": rows}


def standard_part(job: Job) -> Context:
    """The ways to the job's standard, and to that of each kind of cabinet."""
    return {"cabinet_kinds": kind_rows(job)}


def _cabinet(job: Job, number: int) -> tuple[str, Context]:
    cabinet = found_or_404(cabinets_of(job).get, pk=number)
    row = cabinet_row(cabinet, rows_at_hand(cabinet), job_facts(job), NO_PLACES)
    return "cabinet", {"cabinet": row, "wall": cabinet.wall}


def _opening(job: Job, number: int) -> tuple[str, Context]:
    opening = found_or_404(opening_of, job, number)
    return "opening", {"opening": opening_row(opening, job.unit)}


def _new_opening(job: Job, number: int) -> tuple[str, Context]:
    """The way to its next opening, which has the focus where one comes back to it."""
    return "opening-new", {**_cabinet(job, number)[1], "changed": f"opening-new-{number}"}


def _thing(page: ThingPage, job: Job, number: int) -> tuple[str, Context]:
    row = found_or_404(thing_of, job, page.table, number)
    if page is OTHERS:
        standing = standing_row(row, job.unit, NO_PLACES)
        return "standing", {"cabinet": standing, "wall": row.wall}
    return "thing", {"page": page, "thing": ThingRow(page, row, page.words(row, job.unit))}


_NUMBERED_PARTS: Mapping[str, Callable[[Job, int], tuple[str, Context]]] = {
    "cabinet": _cabinet,
    "opening": _opening,
    "opening-new": _new_opening,
    **{one: partial(_thing, page) for one, page in _PAGES_BY_ONE.items()},
}
_PARTS = ("cabinet-new", "job-stock", "job-boxes")
"""Parts that say the same of every kitchen."""
