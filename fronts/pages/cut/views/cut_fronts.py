"""Which fronts are cut, to which size, and what a change since makes of them."""

from functools import partial

from django.contrib import messages
from django.http import HttpResponse

from fronts.pages.cut.forms.cut_fronts import CutFrontsForm
from fronts.pages.cut.rows.cut_fronts import to_cut
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.selectors.cuts import cuts_of
from fronts.selectors.kitchens import front_keys_of
from fronts.selectors.schedules import worked_out
from fronts.services.front_cuts import fronts_mark_cut, fronts_unmark_cut
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page


@job_view("measure", to_post="fit")
def cut_fronts(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the fronts with what they were cut to; mark some as cut, or take their marks back."""
    form = CutFrontsForm(posted(request))
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, form),
        save=partial(_mark, request, job, form),
        done=lambda _: _marked(request, job),
    )


def _mark(request: SignedInRequest, job: Job, form: CutFrontsForm) -> None:
    seen = form.cleaned_data["front"]
    if form.cleaned_data["take_back"]:
        fronts_unmark_cut(job=job, labels=[*seen], **who(request))
        return
    kitchen, schedule = worked_out(job)
    fronts_mark_cut(job=job, kitchen=kitchen, schedule=schedule, seen=seen, **who(request))


def _marked(request: SignedInRequest, job: Job) -> HttpResponse:
    few = len(request.POST.getlist("front"))
    fronts = "1 front" if few == 1 else f"{few} fronts"
    said = "not cut after all" if request.POST.get("take_back") else "marked as cut"
    messages.success(request, f"{fronts} {said}.")
    return go_to(request, "fronts:cut-fronts", job.pk)


def _page(
    request: SignedInRequest, job: Job, form: CutFrontsForm, *, status: int = 200
) -> HttpResponse:
    cabinets = to_cut(*worked_out(job), cuts_of(job, front_keys_of(job)))
    fronts = [front for cabinet in cabinets for front in cabinet.fronts]
    context = {
        "job": job,
        "step": "cut",
        "form": form,
        "cabinets": cabinets,
        "cut": sum(front.cut is not None for front in fronts),
        "fronts": len(fronts),
        "changed": sum(bool(front.todo) for front in fronts),
        "ticked": request.POST.getlist("front"),
    }
    return render_page(request, "fronts/cut/cut_fronts.html", context, status=status)
