"""Cabinets: changed, copied, moved, deleted."""

from dataclasses import replace
from functools import partial

from django.http import HttpResponse
from django.urls import reverse

from fronts.models import Cabinet
from fronts.pages.measure.forms.cabinets import CabinetForm, CopyForm
from fronts.pages.measure.forms.wall_choice import offer_walls
from fronts.pages.measure.views.editor import Editor, edited
from fronts.pages.measure.views.parts import done
from fronts.pages.measure.views.removal import removed
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.rules.standards import EMPTY
from fronts.selectors.kitchens import cabinet_of, placed_kitchen_of, walls_of
from fronts.services.cabinets import (
    cabinet_change,
    cabinet_copy,
    cabinet_delete,
)
from fronts.snapshot.standards import standard_of
from fronts.snapshot.things import bare
from shopjobs.access import SignedInRequest
from shopjobs.models import Job


@job_view("edit_kitchen")
def cabinet_edit(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Change a cabinet's sizes and place."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    editor, wall = _editor(request, job, cabinet), cabinet.wall
    standard = standard_of(cabinet)
    return edited(
        request,
        editor,
        save=lambda: cabinet_change(
            cabinet=cabinet, facts=replace(editor.form.entered, standard=standard), **who(request)
        ),
        done=lambda _: _changed(request, job, cabinet, wall),
    )


def _changed(request: SignedInRequest, job: Job, cabinet: Cabinet, wall: str) -> HttpResponse:
    """The cabinet's own part of the page; all of them where it went to another wall."""
    said, target = f"Cabinet {cabinet.label} is saved.", f"cabinet-{cabinet.pk}"
    if cabinet.wall != wall:
        return done(request, job, "cabinets", said, anchor=target)
    return done(request, job, target, said)


def _editor(request: SignedInRequest, job: Job, cabinet: Cabinet) -> Editor:
    target, here = f"cabinet-{cabinet.pk}", [job.pk, cabinet.pk]
    held = replace(bare(cabinet), standard=EMPTY)
    form = CabinetForm(posted(request), unit=job.unit, cabinet=held, auto_id=f"{target}-%s")
    offer_walls(form, partial(walls_of, job), "wall")
    return Editor(
        job=job,
        form=form,
        target=target,
        heading=f"Cabinet {cabinet.label}",
        action=reverse("fronts:cabinet-edit", args=here),
        preview=reverse("fronts:cabinet-preview", args=here),
        drawn=cabinet.label,
        rows=(cabinet,),
    )


@job_view("edit_kitchen")
def cabinet_copy_page(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Copy a cabinet with its openings and boxes to the end of its run."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    editor = _copy_editor(request, job, cabinet)
    return edited(
        request,
        editor,
        save=lambda: cabinet_copy(cabinet=cabinet, **who(request), **editor.form.values),
        done=lambda copy: done(
            request,
            job,
            "cabinets",
            f"Cabinet {cabinet.label} is copied as {copy.label}.",
            anchor=f"cabinet-{copy.pk}",
        ),
    )


def _copy_editor(request: SignedInRequest, job: Job, cabinet: Cabinet) -> Editor:
    others = placed_kitchen_of(job).cabinets
    form = CopyForm(posted(request), unit=job.unit, cabinet=cabinet, cabinets=others)
    form.fields["label"].widget.attrs["autofocus"] = True
    return Editor(
        job=job,
        form=form,
        target=f"cabinet-{cabinet.pk}",
        heading=f"Copy cabinet {cabinet.label}",
        action=reverse("fronts:cabinet-copy", args=[job.pk, cabinet.pk]),
        button="Copy it",
        hint="Its openings and boxes come with it. A door on hand that it names stays where it is.",
    )


@job_view("edit_kitchen", "POST")
def cabinet_delete_now(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Delete a cabinet with all that is in it."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    said, target = f"Cabinet {cabinet.label} is deleted.", f"cabinet-{cabinet.pk}"
    delete = partial(cabinet_delete, cabinet=cabinet, **who(request))
    return removed(request, job, target, said, remove=delete)
