"""Doors on hand that no front is made of, over all jobs; one goes to another job."""

from functools import partial

from django.contrib import messages
from django.core.paginator import Paginator
from django.http import HttpResponse
from django.views.decorators.http import require_GET, require_http_methods

from fronts.models import DoorOnHand
from fronts.pages.offcuts.forms.doors import DoorMoveForm
from fronts.pages.offcuts.rows.doors import door_shown, doors_by_job
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import found_or_404, posted, who
from fronts.selectors.unused_doors import door_on_hand_of, fronts_by_door, jobs_with_doors
from fronts.services.door_moves import door_move
from shopjobs.access import SignedInRequest, needs
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page

PAGE, ONE = "fronts/offcuts/doors.html", "fronts/offcuts/door.html"
JOBS_A_PAGE = 8
"""As many kitchens are worked out for a page."""
JOBS_OFFERED = 200


@needs("measure")
@require_GET
def doors(request: SignedInRequest) -> HttpResponse:
    """Show the doors that are left over, a few jobs at a time."""
    jobs = jobs_with_doors(request.shop)
    page = Paginator(jobs, JOBS_A_PAGE).get_page(request.GET.get("page", ""))
    context = {
        "page": page,
        "pages": page.paginator.get_elided_page_range(page.number, on_each_side=2, on_ends=1),
        "jobs": list(doors_by_job(list(page.object_list))),
    }
    return render_page(request, PAGE, context, partial="listed")


@needs("edit_kitchen")
@require_http_methods(["GET", "HEAD", "POST"])
def door_move_to(request: SignedInRequest, key: int) -> HttpResponse:
    """Give a door to another job."""
    row = found_or_404(door_on_hand_of, request.shop, key)
    initial = {"seen_in": row.job_id}
    form = DoorMoveForm(posted(request), shop=request.shop, initial=initial, auto_id="door-%s")
    return form_answer(
        request,
        form,
        show=partial(_page, request, form, row),
        save=lambda: door_move(
            row=row, seen_in=form.cleaned_data["seen_in"], to=form.cleaned_data["to"],
            **who(request),
        ),
        done=partial(_done, request),
    )  # fmt: skip


def _done(request: SignedInRequest, row: DoorOnHand) -> HttpResponse:
    messages.success(request, f"It is door {row.label} of job {row.job.number} now.")
    return go_to(request, "fronts:shop-doors")


def _page(
    request: SignedInRequest, form: DoorMoveForm, row: DoorOnHand, *, status: int = 200
) -> HttpResponse:
    jobs = Job.objects.filter(shop=request.shop, archived_at=None).exclude(pk=row.job_id)
    context = {
        "form": form,
        "job": row.job,
        "door": door_shown(row, row.job.unit),
        "front": fronts_by_door(row.job).get(row.label),
        "offered": jobs.order_by("-updated_at", "-pk")[:JOBS_OFFERED],
    }
    return render_page(request, ONE, context, status=status)
