"""Lines of a notebook become rows of a wall's table."""

from functools import partial

from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse

from fronts.notebook import NO_FACES
from fronts.pages.measure.forms.lines import LinesForm
from fronts.pages.measure.rows.walls import wall_entered
from fronts.pages.measure.views.page import drawn_at_once, measure_page
from fronts.pages.measure.views.parts import PAGE
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.pages.shared.wall_addresses import new_walls_said, wall_query, walls_in
from fronts.rules.runs import standing_in
from fronts.services.notebook_lines import lines_enter
from fronts.services.saved_faces import faces_of
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import PartsResponse, wants_part


@job_view("edit_kitchen")
def lines_new(request: SignedInRequest, job: Job) -> HttpResponse:
    """Enter what the lines say behind all that stands on the wall, or before one of these."""
    kitchen, said = kitchen_of(job), request.POST or request.GET
    before = said.get("before", "")
    of_before = next((one.wall for one in standing_in(kitchen) if one.label == before), "")
    wall = of_before or wall_entered(job, kitchen, said)
    faces = faces_of(job.shop) if request.method == "POST" else NO_FACES
    form = LinesForm(posted(request), kitchen=kitchen, wall=wall, before=before, faces=faces)

    def save() -> int:
        return lines_enter(job=job, added=form.read, before=form.before, **who(request))

    return form_answer(
        request,
        form,
        show=partial(_show, request, job, form),
        save=save,
        done=partial(_entered, request, job, form),
    )


def _show(
    request: SignedInRequest, job: Job, form: LinesForm, *, status: int = 200
) -> HttpResponse:
    if wants_part(request):
        return _part(request, job, form, status)
    return measure_page(request, job, lines=form, status=status)


def _entered(
    request: SignedInRequest, job: Job, form: LinesForm, count: int | None
) -> HttpResponse:
    """An empty field for the next lines, on the wall of the last."""
    wall = _shown(form)
    if not wants_part(request):
        page = reverse("fronts:job-measure", args=[job.pk])
        return redirect(f"{page}{wall_query(wall)}#lines")
    said = f"{count} line{'' if count == 1 else 's'} entered." if count else "Entered already."
    named = [wall.label for wall in form.added.walls] if form.added else []
    said = f"{said} {new_walls_said(walls_in(form.kitchen), named)}".rstrip()
    kitchen = kitchen_of(job)
    parts = (f"{PAGE}#lines", f"{PAGE}#said")
    context = {"lines": LinesForm(kitchen=kitchen, wall=wall), "said": said}
    return drawn_at_once(request, job, wall, parts, context)


def _shown(form: LinesForm) -> str:
    """The wall of what was entered last; lines that are sent again are not read again."""
    if form.added is None:
        return form.wall
    named = [wall.label for wall in form.added.walls]
    standing = [cabinet.wall for cabinet in form.added.cabinets]
    standing += [thing.wall for thing in form.added.others]
    entered = [wall for wall in named if wall in standing] or named or standing
    return entered[-1] if entered else form.wall


def _part(request: SignedInRequest, job: Job, form: LinesForm, status: int) -> HttpResponse:
    context = {"job": job, "wall": form.wall, "lines": form}
    response = PartsResponse(request, (f"{PAGE}#lines",), context)
    response.status_code = status
    return response
