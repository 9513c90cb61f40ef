"""A wall of the job: its drawing, its table, what is to settle, and its fronts."""

from dataclasses import replace
from functools import cache, partial
from typing import Any

from django.http import HttpResponse
from django.urls import reverse
from django_htmx.http import push_url

from fronts.figures.findings import tally
from fronts.pages.measure.forms.lines import LinesForm
from fronts.pages.measure.forms.new_cabinet import NewCabinetForm
from fronts.pages.measure.forms.new_row import NewRowForm
from fronts.pages.measure.rows.cells import NOTHING_TYPED, Typed
from fronts.pages.measure.rows.fronts import front_rows
from fronts.pages.measure.rows.marks import marks_of
from fronts.pages.measure.rows.walls import left_over, lines_go_on, wall_shown
from fronts.pages.measure.things.others import OTHERS
from fronts.pages.measure.things.registry import THING_PAGES
from fronts.pages.measure.views.new_cabinet import new_cabinet_editor
from fronts.pages.measure.views.parts import (
    KIND_LINKS,
    PAGE,
    part_answer,
    standard_part,
    things_part,
    wall_head,
    wall_part,
    wall_rows,
)
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.drawn_walls import drawn_walls
from fronts.pages.shared.finding_links import Ways
from fronts.pages.shared.job_view import job_view
from fronts.pages.shared.wall_addresses import EVERY, WALL, wall_query
from fronts.rules.kitchen import Kitchen
from fronts.rules.runs import stood
from fronts.selectors.labels import keys_by_label
from fronts.selectors.schedules import schedule_for
from fronts.selectors.snags import open_by_label
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest, may
from shopjobs.models import Job
from shopjobs.pages import PartsResponse, render_page, wants_part

FOLLOWS = ("follows", "follows-drawn")
"""What follows every change: all that is worked out, or all but the drawing."""
IN_LISTS = tuple(page for page in THING_PAGES.values() if page is not OTHERS)
"""Kinds of thing with a list of their own; the others stand in the walls' tables."""


@job_view("measure", "GET", "HEAD")
def job_measure(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show a wall of the job; for htmx the part that it asks to see again."""
    if wants_part(request) and request.htmx.target not in (None, *FOLLOWS):
        return part_answer(request, job, request.htmx.target)
    return measure_page(request, job)


def measure_page(
    request: SignedInRequest,
    job: Job,
    typed: Typed = NOTHING_TYPED,
    *,
    lines: LinesForm | None = None,
    row: NewRowForm | None = None,
    status: int = 200,
) -> HttpResponse:
    """The wall that the request is about, with what was `typed` or the `lines` or `row` refused."""
    whole, may_edit = not wants_part(request), may(request.user, "edit_kitchen")
    said = request.POST if request.method == "POST" else request.GET
    kitchen = kitchen_of(job)
    context: dict[str, Any] = {
        "step": "measure",
        "kinds": KIND_LINKS,
        "standing_page": OTHERS,
        "part": not whole,
    }
    context |= _worked_out(request, job, kitchen, wall_part(job, kitchen, said, typed))
    if whole:
        wall = context["wall"]
        context["lines"] = lines or LinesForm(kitchen=kitchen, wall=wall)
        context["row_form"] = row or NewRowForm(None, kitchen=kitchen, wall=wall, asked={})
        context["kinds_of_things"] = [things_part(job, page) for page in IN_LISTS]
        context |= standard_part(job)
        context |= _first_cabinet(job, kitchen, context) if may_edit else {}
    part = request.htmx.target or FOLLOWS[0]
    return render_page(request, PAGE, context, partial=part, status=status)


def drawn_at_once(
    request: SignedInRequest,
    job: Job,
    wall: str | None,
    parts: tuple[str, ...],
    context: dict[str, Any],
) -> HttpResponse:
    """Parts of the page and the wall's drawing; all else that follows asks for itself again.

    Without a `wall` it is the one that was shown; where another was, all of this one comes along.
    """
    kitchen = kitchen_of(job)
    if wall is None:
        wall, is_shown = wall_shown(job, kitchen, request.GET), True
    else:
        is_shown = request.POST.get(WALL, "") == wall
    shown = _worked_out(request, job, kitchen, wall_head(kitchen, wall))
    context = {**shown, **context, "job": job, "part": True}
    if is_shown:
        response = PartsResponse(request, (*parts, f"{PAGE}#elevations"), context)
        return announce_change(response, drawn=True)
    context |= wall_rows(job, kitchen, wall, NOTHING_TYPED)
    response = PartsResponse(request, (*parts, f"{PAGE}#followers", f"{PAGE}#follows"), context)
    address = f"{reverse('fronts:job-measure', args=[job.pk])}{wall_query(wall)}"
    return announce_change(push_url(response, address), drawn=True)


def _worked_out(
    request: SignedInRequest, job: Job, kitchen: Kitchen, shown: dict[str, Any]
) -> dict[str, Any]:
    """What is shown of a wall, with all that is worked out."""
    rights = {
        "may_edit": may(request.user, "edit_kitchen"),
        "may_set": may(request.user, "standard"),
    }
    found = worked_out(job, kitchen, shown["wall"], **rights)
    return {"job": job, "thing_pages": IN_LISTS, **shown, **found}


def worked_out(
    job: Job, kitchen: Kitchen, wall: str, *, may_edit: bool, may_set: bool
) -> dict[str, Any]:
    """Everything on the page that the schedule says; each part once a template shows it."""
    found = schedule_for(job, kitchen)
    ways = Ways(job, keys_by_label(job), may_edit=may_edit, may_set=may_set)
    walls = [one for one in kitchen.wall_names if wall in (EVERY, one)]

    findings = cache(lambda: ways.findings(found.findings))
    return {
        "drawn": cache(
            lambda: drawn_walls(found, kitchen, ways.front, walls=walls, snags=open_by_label(job))
        ),
        "left_over": left_over(found, wall, job.unit),
        "goes_on": cache(partial(lines_go_on, kitchen, wall)),
        "findings": findings,
        "marks": cache(lambda: marks_of(findings())),
        "tally": tally(found.findings),
        "to_settle": bool(found.findings),
        "has_fronts": any(front.wall in walls for front in found.fronts),
        "fronts": cache(partial(front_rows, found, kitchen, ways.front, walls)),
    }


def _first_cabinet(job: Job, kitchen: Kitchen, context: dict[str, Any]) -> dict[str, Any]:
    """A wall with nothing on it begins with its first cabinet: without scripts, with its form."""
    if context["runs"] or context["every_wall"]:
        return {}
    form = NewCabinetForm(
        unit=job.unit,
        cabinets=stood(kitchen).cabinets,
        kind="base",
        wall=context["wall"],
        auto_id="cabinet-new-%s",
    )
    editor = replace(new_cabinet_editor(job, form), target="first-cabinet")
    return {"editor": editor, "form": editor.form}
