"""Openings: entered, changed, measured on site, deleted."""

from collections.abc import Sequence
from functools import partial
from typing import Any

from django.http import HttpResponse
from django.urls import reverse

from fronts.figures.what_follows import Worked, what_follows
from fronts.models import Cabinet, Opening
from fronts.pages.measure.forms.door_choice import door_labels
from fronts.pages.measure.forms.openings import MeasuredForm, OpeningForm, offered
from fronts.pages.measure.views.editor import Editor, edited
from fronts.pages.measure.views.parts import done, opening_saved
from fronts.pages.measure.views.removal import removed
from fronts.pages.shared.follows import say_what_follows
from fronts.pages.shared.item_choice import items_of
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.pages.shared.return_link import is_from_fitting
from fronts.rules.member_width import member_width
from fronts.rules.next_opening import next_opening
from fronts.selectors.kitchens import cabinet_of, opening_of, placed_kitchen_of
from fronts.selectors.schedules import worked_out
from fronts.selectors.standards import standard_levels
from fronts.services.openings import opening_change, opening_create, opening_delete
from fronts.snapshot.things import at_hand
from shopjobs.access import SignedInRequest
from shopjobs.models import Job, Revision
from shopjobs.services.recording import revisions_kept


@job_view("edit_kitchen")
def opening_new(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Enter an opening; the form starts with the space that is still free."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    editor = _new_editor(request, job, cabinet)
    return edited(
        request,
        editor,
        save=lambda: opening_create(cabinet=cabinet, facts=editor.form.entered, **who(request)),
        done=lambda opening: done(
            request,
            job,
            editor.target,
            f"Opening {opening} is entered.",
        ),
    )


def _new_editor(request: SignedInRequest, job: Job, cabinet: Cabinet) -> Editor:
    target, kitchen = f"opening-new-{cabinet.pk}", placed_kitchen_of(job)
    facts = kitchen.cabinet(cabinet.label)
    known = next_opening(facts, member_width(facts.build, kitchen.job.unit))
    form = OpeningForm(
        posted(request),
        unit=job.unit,
        doors=door_labels(job),
        items=items_of(job),
        levels=standard_levels(cabinet),
        initial=offered(known),
        auto_id=f"{target}-%s",
    )
    form.fields["label"].widget.attrs["autofocus"] = True
    return Editor(
        job=job,
        form=form,
        target=target,
        heading=f"New opening in cabinet {cabinet.label}",
        action=reverse("fronts:opening-new", args=[job.pk, cabinet.pk]),
        preview=reverse("fronts:opening-new-preview", args=[job.pk, cabinet.pk]),
        drawn=cabinet.label,
        button="Enter the opening",
    )


@job_view("edit_kitchen")
def opening_edit(request: SignedInRequest, job: Job, opening_id: int) -> HttpResponse:
    """Change all that is known of an opening."""
    return _edited(request, job, opening_id, everything=True)


@job_view("measure")
def opening_measured(request: SignedInRequest, job: Job, opening_id: int) -> HttpResponse:
    """Enter the sizes of an opening that were found on site, and nothing else."""
    return _edited(request, job, opening_id, everything=False)


def _edited(
    request: SignedInRequest, job: Job, opening_id: int, *, everything: bool
) -> HttpResponse:
    opening = found_or_404(opening_of, job, opening_id)
    editor = _editor(request, job, opening, everything=everything)
    is_mended = editor.form.is_bound and is_from_fitting(request)
    was = worked_out(job) if is_mended else None
    with revisions_kept() as kept:
        return edited(
            request,
            editor,
            save=lambda: opening_change(opening=opening, facts=editor.form.entered, **who(request)),
            done=lambda _: _saved(request, job, opening, kept, was),
        )


def _saved(
    request: SignedInRequest,
    job: Job,
    opening: Opening,
    kept: Sequence[Revision],
    was: Worked | None,
) -> HttpResponse:
    """Who mended it while fitting is told what follows, front by front; elsewhere it is seen."""
    answer = opening_saved(request, job, opening, f"Opening {opening} is saved.", kept)
    if was is not None:
        say_what_follows(request, what_follows(was, worked_out(job)))
    return answer


def _editor(request: SignedInRequest, job: Job, opening: Opening, *, everything: bool) -> Editor:
    target, here = f"opening-{opening.pk}", [job.pk, opening.pk]
    held = at_hand(opening)
    known: dict[str, Any] = {"unit": job.unit, "before": held, "auto_id": f"{target}-%s"}
    form: MeasuredForm = (
        OpeningForm(
            posted(request),
            doors=door_labels(job),
            items=items_of(job),
            levels=standard_levels(opening),
            **known,
        )
        if everything
        else MeasuredForm(posted(request), **known)
    )
    page = "opening-edit" if everything else "opening-measured"
    return Editor(
        job=job,
        form=form,
        target=target,
        heading=f"Opening {opening}",
        action=reverse(f"fronts:{page}", args=here),
        preview=reverse("fronts:opening-preview", args=here) if everything else "",
        drawn=opening.cabinet.label,
        rows=(opening, *opening.fronts.all()),
    )


@job_view("edit_kitchen", "POST")
def opening_delete_now(request: SignedInRequest, job: Job, opening_id: int) -> HttpResponse:
    """Delete an opening with all that its fronts carry."""
    opening = found_or_404(opening_of, job, opening_id)
    said, target = f"Opening {opening} is deleted.", f"opening-{opening_id}"
    delete = partial(opening_delete, opening=opening, **who(request))
    return removed(request, job, target, said, remove=delete)
