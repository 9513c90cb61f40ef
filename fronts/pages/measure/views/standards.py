"""The house standard at a job, a cabinet or an opening, and a job's own stock."""

from functools import partial

from django.http import Http404, HttpResponse
from django.urls import reverse

from fronts.models import Cabinet, KindStandard, Opening, Stock
from fronts.pages.measure.views.editor import Editor, edited
from fronts.pages.measure.views.parts import done
from fronts.pages.measure.views.removal import removed
from fronts.pages.shared.item_choice import standard_items
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.pages.shared.standard_form import StandardForm
from fronts.pages.shared.stock_form import StockForm
from fronts.rules.kinds import CABINET_KINDS
from fronts.selectors.kitchens import cabinet_of, opening_of
from fronts.selectors.standards import standard_levels
from fronts.services.standards import kind_level, level_of, standard_set
from fronts.services.stock import stock_clear, stock_set
from fronts.snapshot.stock import stock_in_force
from shopjobs.access import SignedInRequest
from shopjobs.models import Job

_EMPTY = "What is left empty is as the greyed words say."


@job_view("edit_kitchen")
def job_standard(request: SignedInRequest, job: Job) -> HttpResponse:
    """What this job does otherwise than the shop."""
    action = reverse("fronts:job-standard", args=[job.pk])
    return _standard(request, job, job, "job-standard", "This job's standard", action)


@job_view("edit_kitchen")
def kind_standard(request: SignedInRequest, job: Job, cabinet_kind: str) -> HttpResponse:
    """What all cabinets of one kind do otherwise than the job."""
    if cabinet_kind not in CABINET_KINDS:
        raise Http404
    row = kind_level(job, cabinet_kind)
    action = reverse("fronts:kind-standard", args=[job.pk, cabinet_kind])
    heading = f"Standard of {str(row).lower()}"
    return _standard(request, job, row, "job-standard", heading, action)


@job_view("edit_kitchen")
def cabinet_standard(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """What one cabinet does otherwise than the job."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    action = reverse("fronts:cabinet-standard", args=[job.pk, cabinet.pk])
    heading = f"Standard of cabinet {cabinet.label}"
    return _standard(request, job, cabinet, f"cabinet-{cabinet.pk}", heading, action)


@job_view("edit_kitchen")
def opening_standard(request: SignedInRequest, job: Job, opening_id: int) -> HttpResponse:
    """What one opening does otherwise than its cabinet."""
    opening = found_or_404(opening_of, job, opening_id)
    opening.cabinet = cabinet_of(job, opening.cabinet_id)
    action = reverse("fronts:opening-standard", args=[job.pk, opening.pk])
    heading = f"Standard of opening {opening}"
    return _standard(request, job, opening, f"opening-{opening.pk}", heading, action)


def _standard(
    request: SignedInRequest,
    job: Job,
    owner: Job | KindStandard | Cabinet | Opening,
    target: str,
    heading: str,
    action: str,
) -> HttpResponse:
    levels, row = standard_levels(owner), level_of(owner)
    form = StandardForm(
        posted(request), unit=job.unit, levels=levels, items=standard_items(job),
        auto_id=f"{target}-standard-%s",
    )  # fmt: skip
    editor = Editor(
        job=job, form=form, target=target, heading=heading, action=action, hint=_EMPTY,
        rows=(row,) if row.pk else (), is_level=True,
    )  # fmt: skip
    return edited(
        request,
        editor,
        save=lambda: standard_set(owner=owner, standard=form.entered, **who(request)),
        done=lambda _: done(request, job, target, f"{heading} is saved."),
    )


@job_view("edit_kitchen")
def job_stock(request: SignedInRequest, job: Job) -> HttpResponse:
    """What this job takes from the shelf, where that is not what the shop keeps."""
    editor = _stock_editor(request, job)
    return edited(
        request,
        editor,
        save=lambda: stock_set(owner=job, stock=editor.form.entered, **who(request)),
        done=lambda _: done(request, job, "job-stock", "This job's stock is saved."),
    )


def _stock_editor(request: SignedInRequest, job: Job) -> Editor:
    own = Stock.objects.filter(job=job).first()
    held = stock_in_force(job)
    form = StockForm(posted(request), unit=job.unit, stock=held, auto_id="job-stock-%s")
    return Editor(
        job=job,
        form=form,
        target="job-stock",
        heading="This job's stock",
        action=reverse("fronts:job-stock", args=[job.pk]),
        hint="" if own else "As the shop's, until it is saved here.",
        remove=reverse("fronts:job-stock-clear", args=[job.pk]) if own else "",
        remove_button="Take the shop's",
        rows=(own,) if own else (),
        is_level=True,
    )


@job_view("edit_kitchen", "POST")
def job_stock_clear(request: SignedInRequest, job: Job) -> HttpResponse:
    """Let the shop's stock hold again."""
    said = "The shop's stock holds for this job again."
    clear = partial(stock_clear, job=job, **who(request))
    return removed(request, job, "job-stock", said, remove=clear, gone=False)
