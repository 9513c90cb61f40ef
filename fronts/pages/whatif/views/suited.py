"""Which standard suits the doors on hand: laps or gaps tried one by one, with what each costs."""

from functools import partial
from typing import Any

from django.http import HttpResponse

from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view
from fronts.pages.whatif.forms.suited import SuitedForm
from fronts.pages.whatif.rows.choices import Suited, suited
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest
from shopjobs.forms.seen import shown
from shopjobs.models import Job
from shopjobs.pages import render_page

PAGE = "fronts/whatif/suited.html"


@job_view("edit_kitchen", "GET", "HEAD")
def job_suited_standard(request: SignedInRequest, job: Job) -> HttpResponse:
    """Try the choices that were asked for, else the usual ones; nothing is kept."""
    kitchen = kitchen_of(job)
    asked: Any = {**shown(SuitedForm(kitchen=kitchen)), **request.GET.dict()}
    form = SuitedForm(asked if kitchen.doors_on_hand else None, kitchen=kitchen)
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, form),
        save=lambda: suited(form.tried_in, form.entered),
        done=lambda found: _page(request, job, form, found=found),
    )


def _page(
    request: SignedInRequest,
    job: Job,
    form: SuitedForm,
    *,
    found: Suited | None = None,
    status: int = 200,
) -> HttpResponse:
    context = {
        "job": job,
        "step": "what-if",
        "form": form,
        "found": found,
        "doors": len(form.kitchen.doors_on_hand),
    }
    return render_page(request, PAGE, context, partial="suited", status=status)
