"""The offcuts of a plan: which it takes, which are kept of it, and whether it is sawn."""

from functools import partial

from django.contrib import messages
from django.http import Http404, HttpResponse

from fronts.models import CutPlan
from fronts.pages.cut.forms.offcuts import PlanOffcutsForm
from fronts.pages.cut.rows.plan_offcuts import PlanOffcuts, plan_offcuts
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.selectors.plans import finished_plan, named_plans
from fronts.services.plan_offcuts import plan_mark_sawn, plan_offcuts_keep, plan_unmark_sawn
from fronts.snapshot.stock import practice_in_force
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page

PAGE = "fronts/cut/offcuts_page.html"


@job_view("measure", to_post="edit_kitchen", shop_first=True)
def cut_offcuts(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the offcuts of the job's plan; keep some, or say that the plan is sawn."""
    plan = finished_plan(job)
    if plan is None:
        raise Http404
    shown = plan_offcuts(plan, named_plans(plan), practice_in_force(job), job.unit)
    form = PlanOffcutsForm(posted(request), shown=plan, places=_known(shown))
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, form, shown),
        save=partial(_do, request, plan, form),
        done=partial(_done, request, job),
    )


def _known(shown: PlanOffcuts) -> list[str]:
    """Pressed twice, a piece that is kept by now is asked for once more: that is no fault."""
    return [*shown.places, *(piece.place for piece in shown.kept)]


def _do(request: SignedInRequest, plan: CutPlan, form: PlanOffcutsForm) -> str:
    deed = form.cleaned_data["do"]
    if deed == "sawn":
        plan_mark_sawn(plan=plan, **who(request))
        return "Marked as sawn. Tick what of it goes on the rack."
    if deed == "unsawn":
        plan_unmark_sawn(plan=plan, **who(request))
        return "The plan is not sawn after all."
    rows = plan_offcuts_keep(plan=plan, places=form.cleaned_data["piece"], **who(request))
    labels = ", ".join(row.label for row in rows)
    return f"Kept: {labels}. Write that on the pieces." if rows else "They are kept already."


def _done(request: SignedInRequest, job: Job, said: object) -> HttpResponse:
    if isinstance(said, str):
        messages.success(request, said)
    return go_to(request, "fronts:cut-offcuts", job.pk)


def _page(
    request: SignedInRequest,
    job: Job,
    form: PlanOffcutsForm,
    shown: PlanOffcuts,
    *,
    status: int = 200,
) -> HttpResponse:
    ticked = request.POST.getlist("piece") if form.is_bound else shown.places
    context = {"job": job, "step": "cut", "form": form, "offcuts": shown, "ticked": ticked}
    return render_page(request, PAGE, context, status=status)
