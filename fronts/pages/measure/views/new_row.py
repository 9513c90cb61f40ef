"""The empty row at the end of a wall's table becomes a cabinet or a thing."""

from functools import partial

from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse

from fronts.notebook import Added
from fronts.pages.measure.forms.new_row import NewRowForm
from fronts.pages.measure.rows.walls import wall_entered
from fronts.pages.measure.views.page import drawn_at_once, measure_page
from fronts.pages.measure.views.parts import PAGE
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.pages.shared.wall_addresses import wall_query
from fronts.services.notebook_lines import lines_enter
from fronts.services.saved_faces import faces_of
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import PartsResponse, wants_part


@job_view("edit_kitchen")
def row_new(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the empty row for what is to stand there, or enter what it says."""
    kitchen = kitchen_of(job)
    said = request.POST or request.GET
    wall = wall_entered(job, kitchen, said)
    form = NewRowForm(
        posted(request),
        kitchen=kitchen,
        wall=wall,
        asked=request.GET.dict(),
        faces=faces_of(job.shop),
    )

    def save() -> int:
        return lines_enter(job=job, added=form.entered, **who(request))

    return form_answer(
        request,
        form,
        show=partial(_show, request, job, form),
        save=save,
        done=lambda _: _entered(request, job, form),
    )


def _show(
    request: SignedInRequest, job: Job, form: NewRowForm, *, status: int = 200
) -> HttpResponse:
    if wants_part(request):
        return _part(request, job, form, status)
    return measure_page(request, job, row=form, status=status)


def _entered(request: SignedInRequest, job: Job, form: NewRowForm) -> HttpResponse:
    """The next empty row: for one of the same kind, or the first on a wall that is new."""
    wall, kind, said = form.wall, form.data.get("kind", ""), "It is entered already."
    if form.added is not None:
        said = f"{_label(form.added)} is entered."
        if form.added.walls:
            wall, kind = form.added.walls[0].label, "base"
    if not wants_part(request):
        page = reverse("fronts:job-measure", args=[job.pk])
        return redirect(f"{page}{wall_query(wall)}#row-new")
    empty = NewRowForm(None, kitchen=kitchen_of(job), wall=wall, asked={"kind": kind})
    parts = (f"{PAGE}#row-new", f"{PAGE}#said")
    return drawn_at_once(request, job, wall, parts, {"row_form": empty, "said": said})


def _label(added: Added) -> str:
    if added.walls:
        return f"Wall {added.walls[0].label}"
    return added.cabinets[0].label if added.cabinets else added.others[0].label


def _part(request: SignedInRequest, job: Job, form: NewRowForm, status: int) -> HttpResponse:
    context = {"job": job, "wall": form.wall, "row_form": form}
    response = PartsResponse(request, (f"{PAGE}#row-new",), context)
    response.status_code = status
    return response
