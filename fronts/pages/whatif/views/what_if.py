"""A job's standard with changes, and what would come of them; kept only where somebody says so."""

from functools import partial
from typing import Any

from django.contrib import messages
from django.http import HttpResponse

from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.item_choice import standard_items
from fronts.pages.shared.job_view import job_view, who
from fronts.pages.shared.standard_form import StandardForm
from fronts.pages.whatif.rows.compared import Compared, compared
from fronts.selectors.standards import standard_levels
from fronts.services.standards import level_of, standard_set
from fronts.snapshot import kitchen_of
from fronts.snapshot.standards import standard_if
from shopjobs.access import SignedInRequest
from shopjobs.edit_conflict import last_writer
from shopjobs.forms.seen import SEEN, shown, typed_in
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page

PAGE = "fronts/whatif/page.html"
KEEP = "keep"
"""What the button sends that keeps what was shown."""


@job_view("edit_kitchen")
def job_what_if(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show what another standard would change, or keep it once that was shown."""
    form = _form(request, job)
    show = partial(_page, request, job, form)
    if request.POST.get("do") == KEEP:
        keep = partial(standard_set, owner=job, **who(request))
        return form_answer(
            request, form, show=show, save=lambda: keep(standard=form.entered),
            done=lambda _: _kept(request, job),
        )  # fmt: skip
    return form_answer(
        request,
        form,
        show=show,
        save=lambda: compared(
            kitchen_of(job), standard_if(job, form.entered), request.POST.get("wall", "")
        ),
        done=lambda found: _page(request, job, form, found=found),
    )


def _form(request: SignedInRequest, job: Job) -> StandardForm:
    """The job's standard, with what was sent; an address may name changes of its own."""
    row = level_of(job)
    make = partial(
        StandardForm, unit=job.unit, levels=standard_levels(job),
        items=standard_items(job), auto_id="what-if-%s",
    )  # fmt: skip
    form = make(_sent(request, make()))
    form.is_merged = True
    form.written_by = partial(last_writer, job, (row,) if row.pk else ())
    return form


def _sent(request: SignedInRequest, form: StandardForm) -> Any:
    """What was typed; of an address, its own changes to what the job says now."""
    if request.method == "POST":
        return request.POST
    now = shown(form)
    named = {name: request.GET[name] for name in now if name in request.GET}
    return {**now, **named, SEEN: form[SEEN].value()} if named else None


def _kept(request: SignedInRequest, job: Job) -> HttpResponse:
    messages.success(request, "This job's standard is saved.")
    return go_to(request, "fronts:job-measure", job.pk)


def _page(
    request: SignedInRequest,
    job: Job,
    form: StandardForm,
    *,
    found: Compared | None = None,
    status: int = 200,
) -> HttpResponse:
    context = {"job": job, "step": "what-if", "form": form, "found": found}
    if found is not None:
        context["sent"] = {**typed_in(form), SEEN: form.data[SEEN]}
    return render_page(request, PAGE, context, partial="what-if", status=status)
