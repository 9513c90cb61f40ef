"""What a job costs, by kind, cabinet and front; what it may cost is the owner's to set."""

from functools import partial
from typing import Any

from django.contrib import messages
from django.http import HttpResponse

from fronts.pages.cost.forms import BudgetForm
from fronts.pages.cost.rows import against, costs_shown
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.rules.money import Price
from fronts.selectors.costs import budget_of, cost_of
from fronts.selectors.offers import usual_currency
from fronts.services.budgets import job_budget_set
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page

PAGE = "fronts/cost/page.html"


@job_view("prices", to_post="budget")
def job_cost(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show what the job costs; set what it may cost."""
    budget = budget_of(job)
    form = BudgetForm(posted(request), budget=budget, usual=usual_currency(request.shop))
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, form, budget),
        save=lambda: job_budget_set(job=job, price=form.cleaned_data.get("price"), **who(request)),
        done=partial(_saved, request, job),
    )


def _saved(request: SignedInRequest, job: Job, _: Any) -> HttpResponse:
    messages.success(request, "What the job may cost is saved.")
    return go_to(request, "fronts:job-cost", job.pk)


def _page(
    request: SignedInRequest, job: Job, form: BudgetForm, budget: Price | None, *, status: int = 200
) -> HttpResponse:
    cost = cost_of(job)
    context = {
        "job": job,
        "step": "order",
        "form": form,
        "costs": costs_shown(cost),
        "against": against(budget, cost),
        "unpriced": cost.unpriced,
    }
    return render_page(request, PAGE, context, status=status)
