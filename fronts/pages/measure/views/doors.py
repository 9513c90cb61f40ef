"""Doors on hand: entered, changed, deleted."""

from dataclasses import replace
from functools import partial

from django.http import HttpResponse
from django.urls import reverse

from fronts.models import DoorOnHand, Front
from fronts.pages.measure.forms.doors import BoreForm, DoorForm, bore_rows
from fronts.pages.measure.forms.row_forms import heads, rows_form, stated
from fronts.pages.measure.views.editor import Editor, edited
from fronts.pages.measure.views.parts import done
from fronts.pages.measure.views.removal import Removal, removed
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.rules.kitchen import DoorOnHand as DoorFacts
from fronts.selectors.kitchens import door_of, doors_of
from fronts.services.doors import door_change, door_create, door_delete
from fronts.snapshot.doors import door_facts
from shopjobs.access import SignedInRequest
from shopjobs.models import Job

_BORES = "Places of old hinge bores"


@job_view("edit_kitchen")
def door_new(request: SignedInRequest, job: Job) -> HttpResponse:
    """Enter a door on hand; it starts as the last one was built."""
    form = DoorForm(posted(request), unit=job.unit, auto_id="door-new-%s")
    form.initial.update(_like_the_last(job))
    editor = _editor(request, job, form, "door-new", "New door on hand", None, None)
    return edited(
        request,
        editor,
        save=lambda: door_create(job=job, facts=_entered(editor), **who(request)),
        done=lambda door: done(
            request, job, "doors", f"Door {door.label} is entered.", anchor="door-new"
        ),
    )


@job_view("edit_kitchen")
def door_edit(request: SignedInRequest, job: Job, door_id: int) -> HttpResponse:
    """Change what is known of a door on hand."""
    door = found_or_404(door_of, job, door_id)
    target = f"door-{door.pk}"
    held = door_facts(door, list(door.hinge_bores.order_by("position", "pk")))
    form = DoorForm(posted(request), unit=job.unit, door=held, auto_id=f"{target}-%s")
    editor = _editor(request, job, form, target, f"Door {door.label}", door, held)
    return edited(
        request,
        editor,
        save=lambda: door_change(door=door, facts=_entered(editor), **who(request)),
        done=lambda _: done(request, job, target, f"Door {door.label} is saved."),
    )


def _entered(editor: Editor) -> DoorFacts:
    """The door with its old bores."""
    facts: DoorFacts = editor.form.entered
    return replace(facts, hinge_bores=tuple(stated(editor.table)))


@job_view("edit_kitchen")
def door_delete_page(request: SignedInRequest, job: Job, door_id: int) -> HttpResponse:
    """Name the openings that use a door, then delete it."""
    door = found_or_404(door_of, job, door_id)
    removal = Removal(
        job=job,
        target=f"door-{door_id}",
        question=f"Delete door {door.label}?",
        goes=partial(_fronts_of, door),
        action=reverse("fronts:door-delete", args=[job.pk, door_id]),
        button=f"Delete door {door.label}",
        said=f"Door {door.label} is deleted.",
    )
    delete = partial(door_delete, door=door, confirmed=True, **who(request))
    return removed(request, removal, remove=delete)


def _fronts_of(door: DoorOnHand) -> list[str]:
    """What is made from the door."""
    fronts = Front.objects.filter(door=door).select_related("opening__cabinet")
    return [f"{front.opening}, which then gets a new front" for front in fronts]


def _editor(
    request: SignedInRequest,
    job: Job,
    form: DoorForm,
    target: str,
    heading: str,
    door: DoorOnHand | None,
    held: DoorFacts | None,
) -> Editor:
    form.fields["label"].widget.attrs["autofocus"] = True
    table = rows_form(
        BoreForm,
        data=posted(request),
        unit=job.unit,
        prefix=f"bores-{door.pk if door else 'new'}",
        initial=bore_rows(held),
    )
    here = [job.pk, door.pk] if door else [job.pk]
    return Editor(
        job=job,
        form=form,
        target=target,
        heading=heading,
        action=reverse("fronts:door-edit" if door else "fronts:door-new", args=here),
        table=table,
        table_legend=_BORES,
        heads=tuple(heads(table)),
        button="Save" if door else "Enter the door",
        rows=(door,) if door else (),
        held=replace(held, hinge_bores=()) if held else None,
    )


def _like_the_last(job: Job) -> dict[str, object]:
    doors = list(doors_of(job))
    if not doors:
        return {"label": "D1"}
    names = ("thickness", "build", "stile", "rail", "panel_thickness", "material")
    taken = {each.label for each in doors}
    label = next(f"D{n}" for n in range(len(doors) + 1, len(doors) + 1000) if f"D{n}" not in taken)
    return {"label": label} | {name: getattr(doors[-1], name) for name in names}
