"""How one job's boxes are made, where that is not as the shop makes them."""

from functools import partial

from django.http import HttpResponse
from django.urls import reverse

from fronts.models import BoxesMadeOf
from fronts.pages.measure.views.editor import Editor, edited
from fronts.pages.measure.views.parts import done
from fronts.pages.measure.views.removal import removed
from fronts.pages.shared.boxes_form import BoxesForm
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.services.boxes_made_of import boxes_made_of_clear, boxes_made_of_set
from fronts.snapshot.hardware import boxes_made_of_in_force
from shopjobs.access import SignedInRequest
from shopjobs.models import Job


@job_view("edit_kitchen")
def job_boxes(request: SignedInRequest, job: Job) -> HttpResponse:
    """How this job's boxes are made."""
    editor = _editor(request, job)
    return edited(
        request,
        editor,
        save=lambda: boxes_made_of_set(owner=job, boxes=editor.form.entered, **who(request)),
        done=lambda _: done(request, job, "job-boxes", f"{editor.heading} is saved."),
    )


def _editor(request: SignedInRequest, job: Job) -> Editor:
    own = BoxesMadeOf.objects.filter(job=job).first()
    held = boxes_made_of_in_force(job)
    return Editor(
        job=job,
        form=BoxesForm(posted(request), unit=job.unit, boxes=held, auto_id="job-boxes-%s"),
        target="job-boxes",
        heading="This job's way of making boxes",
        action=reverse("fronts:job-boxes", args=[job.pk]),
        hint="" if own else "As the shop's, until it is saved here.",
        remove=reverse("fronts:job-boxes-clear", args=[job.pk]) if own else "",
        remove_button="Take the shop's",
        rows=(own,) if own else (),
        is_level=True,
    )


@job_view("edit_kitchen", "POST")
def job_boxes_clear(request: SignedInRequest, job: Job) -> HttpResponse:
    """Let the shop's way of making boxes hold again."""
    said = "The shop's way of making boxes holds for this job again."
    clear = partial(boxes_made_of_clear, job=job, **who(request))
    return removed(request, job, "job-boxes", said, remove=clear, gone=False)
