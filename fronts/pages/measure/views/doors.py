"""Doors on hand as a table that is typed like a spreadsheet."""

from functools import partial
from typing import Any

from django.http import HttpResponse
from django.shortcuts import redirect

from fronts.pages.measure.rows.cells import NOTHING_TYPED, Typed
from fronts.pages.measure.rows.doors import door_rows
from fronts.pages.measure.things.door_cells import DOOR_CELLS, NewDoorsForm
from fronts.pages.measure.things.doors import DOORS
from fronts.pages.measure.views.things import like_the_last
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.selectors.kitchens import things_of
from fronts.services.doors import doors_enter
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import PartsResponse, render_page, wants_part

PAGE = "fronts/measure/doors.html"


@job_view("measure", "GET", "HEAD")
def job_doors(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the table of the job's doors on hand; for htmx its rows."""
    return doors_page(request, job)


@job_view("edit_kitchen", "POST")
def doors_new(request: SignedInRequest, job: Job) -> HttpResponse:
    """Enter the door of the empty row, and those that were pasted with it."""
    form = _form(job, posted(request))

    def save() -> int:
        doors_enter(job=job, doors=form.entered, **who(request))
        return len(form.entered)

    return form_answer(
        request, form, show=partial(_refused, request, job, form), save=save,
        done=lambda count: _entered(request, job, count),
    )  # fmt: skip


def doors_page(
    request: SignedInRequest,
    job: Job,
    typed: Typed = NOTHING_TYPED,
    *,
    row: NewDoorsForm | None = None,
    status: int = 200,
) -> HttpResponse:
    """The table, with what was `typed` or the `row` refused."""
    context = _rows(job, typed) | {
        "job": job, "step": "measure", "part": wants_part(request),
        "row_form": row or _form(job, None),
    }  # fmt: skip
    return render_page(request, PAGE, context, partial="doors", status=status)


def _rows(job: Job, typed: Typed) -> dict[str, Any]:
    doors = list(things_of(job, DOORS.table))
    notes = {door.pk: DOORS.words(door, job.unit).notes for door in doors}
    rows = door_rows(doors, DOOR_CELLS, job.unit, notes, typed)
    return {"doors": rows, "columns": tuple(DOOR_CELLS.values()), "faults": typed.faults}


def _form(job: Job, data: Any) -> NewDoorsForm:
    taken = set(things_of(job, DOORS.table).values_list("label", flat=True))
    return NewDoorsForm(data, unit=job.unit, usual=like_the_last(job, DOORS), taken=taken)


def _refused(
    request: SignedInRequest, job: Job, form: NewDoorsForm, *, status: int = 200
) -> HttpResponse:
    if not wants_part(request):
        return doors_page(request, job, row=form, status=status)
    context = {"job": job, "row_form": form}
    response = PartsResponse(request, (f"{PAGE}#row-new",), context)
    response.status_code = status
    return response


def _entered(request: SignedInRequest, job: Job, count: int | None) -> HttpResponse:
    if not wants_part(request):
        return redirect("fronts:job-doors", job.pk)
    empty = _form(job, None)
    empty.fields["width"].widget.attrs["autofocus"] = True
    said = "1 door is entered." if count == 1 else f"{count} doors are entered."
    context = {
        "job": job, "row_form": empty, "part": True,
        "said": said if count else "It is entered already.", **_rows(job, NOTHING_TYPED),
    }  # fmt: skip
    parts = (f"{PAGE}#row-new", f"{PAGE}#doors", f"{PAGE}#said")
    return announce_change(PartsResponse(request, parts, context))
