"""A new cabinet, and the form of the one after it."""

from functools import partial
from typing import Any, cast

from django.http import HttpResponse
from django.urls import reverse

from fronts.models import Cabinet
from fronts.pages.measure.forms.new_cabinet import NewCabinetForm
from fronts.pages.measure.forms.wall_choice import offer_walls
from fronts.pages.measure.views.editor import Editor, edited
from fronts.pages.measure.views.parts import done
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.pages.shared.wall_addresses import WALL
from fronts.rules.kinds import CABINET_KINDS, CabinetKind
from fronts.selectors.kitchens import placed_kitchen_of, walls_of
from fronts.services.cabinets import (
    cabinet_create,
)
from shopjobs.access import SignedInRequest
from shopjobs.models import Job


@job_view("edit_kitchen")
def cabinet_new(request: SignedInRequest, job: Job) -> HttpResponse:
    """Enter a cabinet; the form of the next one follows."""
    form = new_cabinet_form(request, job)
    return edited(
        request,
        new_cabinet_editor(job, form),
        save=lambda: cabinet_create(job=job, facts=form.entered, **who(request)),
        done=partial(_entered, request, job),
    )


def _entered(request: SignedInRequest, job: Job, cabinet: Cabinet) -> HttpResponse:
    """The new cabinet, and the form of the next one."""
    upcoming = NewCabinetForm(
        unit=job.unit,
        cabinets=placed_kitchen_of(job).cabinets,
        kind=cast(CabinetKind, cabinet.kind),
        wall=cabinet.wall,
        auto_id="cabinet-new-%s",
    )
    more: dict[str, Any] = {
        "template": "fronts/measure/edit.html#editor",
        "editor": new_cabinet_editor(job, upcoming),
        "form": upcoming,
        "in_place": True,
    }
    said, at = f"Cabinet {cabinet.label} is entered.", f"cabinet-{cabinet.pk}"
    return done(request, job, "cabinet-new", said, anchor=at, **more)


def new_cabinet_form(request: SignedInRequest, job: Job) -> NewCabinetForm:
    """The form of the next cabinet, of the kind that is asked for."""
    asked = (request.POST or request.GET).get("kind", "")
    return NewCabinetForm(
        posted(request),
        unit=job.unit,
        cabinets=placed_kitchen_of(job).cabinets,
        kind=cast(CabinetKind, asked if asked in CABINET_KINDS else "base"),
        wall=request.GET.get(WALL, ""),
        auto_id="cabinet-new-%s",
    )


def new_cabinet_editor(job: Job, form: KitchenForm) -> Editor:
    """Where the next cabinet is entered."""
    walls = walls_of(job)
    if walls:
        offer_walls(form, lambda: walls, "wall")
    form.fields["width"].widget.attrs["autofocus"] = True
    return Editor(
        job=job,
        form=form,
        target="cabinet-new",
        heading="New cabinet",
        action=reverse("fronts:cabinet-new", args=[job.pk]),
        preview=reverse("fronts:cabinet-new-preview", args=[job.pk]),
        button="Enter the cabinet",
        leave="Close",
    )
