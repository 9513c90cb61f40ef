"""A wall of the job: its drawing, its table, what is to settle, and its fronts."""

from typing import Any

from django.http import HttpResponse

from fronts.figures.findings import tally
from fronts.pages.measure.forms.lines import LinesForm
from fronts.pages.measure.forms.new_cabinet import NewCabinetForm
from fronts.pages.measure.rows.cells import NOTHING_TYPED, Typed
from fronts.pages.measure.rows.fronts import front_rows
from fronts.pages.measure.rows.walls import EVERY, left_over
from fronts.pages.measure.things.others import OTHERS
from fronts.pages.measure.things.registry import THING_PAGES
from fronts.pages.measure.views.new_cabinet import new_cabinet_editor
from fronts.pages.measure.views.parts import (
    KIND_LINKS,
    PAGE,
    part_answer,
    things_part,
    wall_part,
)
from fronts.pages.shared.drawn_walls import drawn_walls
from fronts.pages.shared.finding_links import Ways
from fronts.pages.shared.job_view import job_view
from fronts.rules.kitchen import Kitchen
from fronts.rules.runs import stood
from fronts.rules.schedule import schedule
from fronts.selectors.kitchens import labelled
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest, may
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part

FOLLOWS = "elevations"
"""The part that is worked out: it follows every change, and brings table, findings and fronts."""
IN_LISTS = tuple(page for page in THING_PAGES.values() if page is not OTHERS)
"""Kinds of thing with a list of their own; the others stand in the walls' tables."""


@job_view("measure", "GET", "HEAD")
def job_measure(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show a wall of the job; for htmx the part that it asks to see again."""
    if wants_part(request) and request.htmx.target not in (None, FOLLOWS):
        return part_answer(request, job, request.htmx.target)
    return measure_page(request, job)


def measure_page(
    request: SignedInRequest,
    job: Job,
    typed: Typed = NOTHING_TYPED,
    *,
    lines: LinesForm | None = None,
    status: int = 200,
) -> HttpResponse:
    """The wall that the request is about, with what was `typed` or the `lines` that are refused."""
    whole, may_edit = not wants_part(request), may(request.user, "edit_kitchen")
    said = request.POST if request.method == "POST" else request.GET
    kitchen = kitchen_of(job)
    context = {
        "job": job,
        "step": "measure",
        "part": not whole,
        "kinds": KIND_LINKS,
        "thing_pages": IN_LISTS,
        "standing_page": OTHERS,
        **wall_part(job, kitchen, said, typed),
    }
    context |= worked_out(
        job, kitchen, context["wall"], may_edit=may_edit, may_set=may(request.user, "standard")
    )
    if whole:
        wall = context["wall"]
        context["lines"] = lines or LinesForm(kitchen=kitchen, wall=wall)
        context["kinds_of_things"] = [things_part(job, page) for page in IN_LISTS]
        context |= _first_cabinet(job, kitchen, context) if may_edit else {}
    return render_page(request, PAGE, context, partial="follows", status=status)


def worked_out(
    job: Job, kitchen: Kitchen, wall: str, *, may_edit: bool, may_set: bool
) -> dict[str, Any]:
    """Everything on the page that the schedule says: drawings and fronts of the wall."""
    found = schedule(kitchen)
    ways = Ways(job, labelled(job), may_edit=may_edit, may_set=may_set)
    ways.of_fronts(found)
    findings = ways.findings(found.findings)
    walls = [one for one in kitchen.wall_names if wall in (EVERY, one)]
    drawn = drawn_walls(found, kitchen, ways.front, walls=walls)
    rows = front_rows(found, job.unit, ways.front, kitchen.practice.filler)
    return {
        "drawn": drawn,
        "left_over": left_over(found, wall, job.unit),
        "findings": findings,
        "tally": tally(found.findings),
        "fronts": [row for row in rows if row.wall in drawn],
    }


def _first_cabinet(job: Job, kitchen: Kitchen, context: dict[str, Any]) -> dict[str, Any]:
    """A wall with nothing on it begins with the form of its first cabinet."""
    if context["runs"] or context["every_wall"]:
        return {}
    form = NewCabinetForm(
        unit=job.unit,
        cabinets=stood(kitchen).cabinets,
        kind="base",
        wall=context["wall"],
        auto_id="cabinet-new-%s",
    )
    editor = new_cabinet_editor(job, form)
    return {"editor": editor, "form": editor.form}
