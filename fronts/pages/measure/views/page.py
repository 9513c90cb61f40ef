"""The job's main page: its walls, what is wrong, its fronts, and all that was entered."""

from collections.abc import Sequence
from typing import Any

from django.http import HttpResponse

from fronts.models import Cabinet
from fronts.pages.measure.forms.new_cabinet import NewCabinetForm
from fronts.pages.measure.rows.fronts import front_rows
from fronts.pages.measure.rows.kitchen import wall_rows
from fronts.pages.measure.things.registry import THING_PAGES
from fronts.pages.measure.views.new_cabinet import new_cabinet_editor
from fronts.pages.measure.views.parts import KIND_LINKS, PAGE, part_answer, things_part
from fronts.pages.shared.drawn_walls import drawn_walls
from fronts.pages.shared.finding_links import FindingRow, Ways
from fronts.pages.shared.job_view import job_view
from fronts.rules.schedule import schedule
from fronts.selectors.kitchens import cabinets_of, labelled, placed_kitchen_of
from shopjobs.access import SignedInRequest, may
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part

FOLLOWS = "elevations"
"""The part that is worked out: it follows every change, and brings findings and fronts."""


@job_view("measure", "GET", "HEAD")
def job_measure(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the whole job; for htmx the part that it asks to see again."""
    if wants_part(request) and request.htmx.target not in (None, FOLLOWS):
        return part_answer(request, job, request.htmx.target)
    whole, may_edit = not wants_part(request), may(request.user, "edit_kitchen")
    cabinets = list(cabinets_of(job)) if whole else labelled(job)
    context = {
        "job": job,
        "step": "measure",
        "part": not whole,
        "kinds": KIND_LINKS,
        "thing_pages": THING_PAGES.values(),
        **worked_out(job, cabinets, may_edit=may_edit),
    }
    if whole:
        context["walls"] = wall_rows(cabinets, job.unit)
        context["kinds_of_things"] = [things_part(job, page) for page in THING_PAGES.values()]
        context |= _first_cabinet(job, cabinets) if may_edit else {}
    return render_page(request, PAGE, context, partial="follows")


def worked_out(job: Job, cabinets: Sequence[Cabinet], *, may_edit: bool) -> dict[str, Any]:
    """Everything on the page that the schedule says."""
    kitchen = placed_kitchen_of(job)
    found = schedule(kitchen)
    ways = Ways(job, cabinets, may_edit=may_edit)
    ways.of_fronts(found)
    findings = ways.findings(found.findings)
    return {
        "drawn": drawn_walls(found, kitchen, ways.front),
        "findings": findings,
        "tally": tally(findings),
        "fronts": front_rows(found, job.unit, ways.front, kitchen.practice.filler),
    }


def tally(findings: Sequence[FindingRow]) -> str:
    """How many findings of each kind: `2 stops, 1 check`."""
    counted = [(sum(each.level == level for each in findings), level)
               for level in ("stop", "check", "note")]  # fmt: skip
    return ", ".join(f"{n} {level}{'s' if n > 1 else ''}" for n, level in counted if n)


def _first_cabinet(job: Job, cabinets: Sequence[Cabinet]) -> dict[str, Any]:
    """An empty job begins with the form of its first cabinet."""
    if cabinets:
        return {}
    form = NewCabinetForm(unit=job.unit, cabinets=(), kind="base", auto_id="cabinet-new-%s")
    editor = new_cabinet_editor(job, form)
    return {"editor": editor, "form": editor.form}
