"""Every job in sight: the list, as it is asked for, and the form that makes a job."""

from typing import Any

from django.core.exceptions import PermissionDenied
from django.http import HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_http_methods

from shopjobs.access import SignedInRequest, may, signed_in
from shopjobs.forms.job_list import JobListForm
from shopjobs.forms.jobs import NewJobForm
from shopjobs.job_list import AS_FITTED, Asked, job_page, jobs_on
from shopjobs.models import Role
from shopjobs.pages import go_to, render_page
from shopjobs.selectors import deleted_jobs_of
from shopjobs.services.jobs import job_create
from shopjobs.views.made_once import made_once

PAGE = "shopjobs/job_list.html"


@signed_in
@require_http_methods(["GET", "POST"])
def job_list(request: SignedInRequest) -> HttpResponse:
    """Show the shop's jobs; make a new one."""
    form = NewJobForm(request.POST if request.method == "POST" else None, shop=request.shop)
    if form.is_bound:
        if not may(request.user, "jobs"):
            raise PermissionDenied
        if job := made_once(request, form, job_create):
            return go_to(request, "fronts:job-measure", job.pk)
    asking = JobListForm(request.GET, person=request.user)
    asked = asking.asked()
    shown = {"form": form, "asking": asking, **_listed(request, asked)}
    part = "new-job" if form.is_bound else "listed"
    refused = form.is_bound or not asking.is_valid()
    return render_page(request, PAGE, shown, partial=part, status=422 if refused else 200)


def _listed(request: SignedInRequest, asked: Asked) -> dict[str, Any]:
    """The jobs of the page that is asked for, and where a job opens."""
    today = timezone.localdate()
    page = job_page(request.user, asked, today, request.GET.get("page", ""))
    is_installer = request.user.role == Role.INSTALLER
    return {
        "jobs": jobs_on(page, today),
        "page": page,
        "pages": page.paginator.get_elided_page_range(page.number, on_each_side=2, on_ends=1),
        "opens": "fronts:job-fit" if is_installer else "fronts:job-measure",
        "today": today,
        "asked": asked,
        "is_narrowed": asked != Asked(order=asked.order),
        "as_fitted": asked.order == AS_FITTED,
        "deleted": deleted_jobs_of(request.user) if may(request.user, "jobs") else None,
    }
