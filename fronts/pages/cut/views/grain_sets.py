"""Sets of fronts whose grain runs on: named, changed, taken apart."""

from functools import partial

from django.http import Http404, HttpResponse

from fronts.pages.cut.forms.grain_sets import GrainSetForm
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.rules.kinds import GRAIN_WAYS
from fronts.selectors.grain_sets import named_fronts
from fronts.selectors.schedules import schedule_of
from fronts.services.grain_sets import grain_set_end, grain_set_save
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page

PAGE = "fronts/cut/grain_sets.html"


@job_view("edit_kitchen")
def grain_sets(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the sets, with a form for another one, or for the one that the address names."""
    known = named_fronts(job)
    before = request.GET.get("set", "")
    if before and before not in {front.grain_set for front in known}:
        raise Http404
    form = GrainSetForm(posted(request), known=known, before=before)
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, form, before),
        save=lambda: grain_set_save(
            job=job,
            name=form.cleaned_data["name"],
            fronts=form.cleaned_data["chosen"],
            before=before,
            **who(request),
        ),
        done=lambda _: go_to(request, "fronts:grain-sets", job.pk),
    )


@job_view("edit_kitchen", "POST")
def grain_set_apart(request: SignedInRequest, job: Job) -> HttpResponse:
    """Take a set apart; one that is not there any more is apart already."""
    grain_set_end(job=job, name=request.POST.get("set", ""), **who(request))
    return go_to(request, "fronts:grain-sets", job.pk)


def _page(
    request: SignedInRequest, job: Job, form: GrainSetForm, before: str, *, status: int = 200
) -> HttpResponse:
    schedule = schedule_of(job)
    sets = [(one.name, GRAIN_WAYS[one.way].lower(), one.fronts) for one in schedule.grain_sets]
    findings = [each for each in schedule.findings if each.code.startswith("grain-")]
    context = {
        "job": job, "step": "cut", "form": form, "before": before, "sets": sets,
        "findings": findings,
    }  # fmt: skip
    return render_page(request, PAGE, context, status=status)
