"""Doors on hand: entered, changed, deleted."""

from django.http import HttpResponse
from django.urls import reverse
from django.utils import timezone

from fronts.models import DoorOnHand, Opening
from fronts.pages.measure.forms.doors import BoreForm, DoorForm, bore_rows
from fronts.pages.measure.forms.row_forms import heads, rows_form, stated
from fronts.pages.measure.views.cabinets import ask
from fronts.pages.measure.views.editor import Editor, kept, show_editor
from fronts.pages.measure.views.parts import GONE, done
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.pages.shared.version import version_of
from fronts.selectors.kitchens import door_of, doors_of
from fronts.services.doors import door_change, door_create, door_delete
from fronts.services.saving import AskFirst
from shopjobs.access import SignedInRequest
from shopjobs.models import Job

_BORES = "Places of old hinge bores"


@job_view("edit_kitchen")
def door_new(request: SignedInRequest, job: Job) -> HttpResponse:
    """Enter a door on hand; it starts as the last one was built."""
    form = DoorForm(posted(request), unit=job.unit, auto_id="door-new-%s")
    form.initial.update(_like_the_last(job))
    editor = _editor(request, job, form, "door-new", "New door on hand", None)
    if not form.is_bound:
        return show_editor(request, editor)

    def save() -> None:
        bores = stated(editor.table)
        door_create(job=job, hinge_bores=bores, **who(request), **form.values)

    refusal = kept(request, editor, save)
    said = f"Door {form['label'].value()} is entered."
    return refusal or done(request, job, "doors", said, anchor="door-new")


@job_view("edit_kitchen")
def door_edit(request: SignedInRequest, job: Job, door_id: int) -> HttpResponse:
    """Change what is known of a door on hand."""
    door = found_or_404(door_of, job, door_id)
    target = f"door-{door.pk}"
    form = DoorForm(posted(request), unit=job.unit, door=door, auto_id=f"{target}-%s")
    form.initial["version"] = version_of(door)
    editor = _editor(request, job, form, target, f"Door {door.label}", door)
    if not form.is_bound:
        return show_editor(request, editor)

    def save() -> None:
        bores = stated(editor.table)
        door_change(door=door, hinge_bores=bores, **who(request), **form.values)

    refusal = kept(request, editor, save, row=door)
    return refusal or done(request, job, target, f"Door {door.label} is saved.")


@job_view("edit_kitchen")
def door_delete_page(request: SignedInRequest, job: Job, door_id: int) -> HttpResponse:
    """Name the openings that use a door, then delete it."""
    door = found_or_404(door_of, job, door_id)
    label = door.label
    if request.method == "POST":
        door_delete(door=door, at=timezone.now(), confirmed=True, by=request.user)
        return done(request, job, f"door-{door_id}", f"Door {label} is deleted.", template=GONE)
    used = Opening.objects.filter(front_door=door).select_related("cabinet")
    question = AskFirst(
        f"Delete door {label}?", [f"{opening}, which then gets a new front" for opening in used]
    )
    action = reverse("fronts:door-delete", args=[job.pk, door.pk])
    return ask(request, job, f"door-{door.pk}", question, action, f"Delete door {label}")


def _editor(
    request: SignedInRequest,
    job: Job,
    form: DoorForm,
    target: str,
    heading: str,
    door: DoorOnHand | None,
) -> Editor:
    form.fields["label"].widget.attrs["autofocus"] = True
    table = rows_form(
        BoreForm,
        data=posted(request),
        unit=job.unit,
        prefix=f"bores-{door.pk if door else 'new'}",
        initial=bore_rows(door),
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
    )


def _like_the_last(job: Job) -> dict[str, object]:
    doors = list(doors_of(job))
    if not doors:
        return {"label": "D1"}
    names = ("thickness", "build", "stile", "rail", "panel_thickness", "material")
    taken = {each.label for each in doors}
    label = next(f"D{n}" for n in range(len(doors) + 1, len(doors) + 1000) if f"D{n}" not in taken)
    return {"label": label} | {name: getattr(doors[-1], name) for name in names}
