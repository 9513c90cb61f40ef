"""Drawer boxes behind the fronts of an opening, with their shelf-pin holes."""

from dataclasses import replace
from functools import partial

from django.http import Http404, HttpResponse
from django.urls import reverse

from fronts.models import Box, Front
from fronts.pages.measure.forms.boxes import BoxForm, PinsForm, next_box, pin_rows, rise_offered
from fronts.pages.measure.forms.row_forms import heads, rows_form
from fronts.pages.measure.views.editor import Editor, edited
from fronts.pages.measure.views.parts import opening_saved
from fronts.pages.measure.views.removal import removed
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.rules.kitchen import Box as BoxFacts
from fronts.rules.kitchen import Opening
from fronts.rules.lengths import Mm, show
from fronts.selectors.kitchens import front_of
from fronts.services.boxes import box_enter, box_remove
from fronts.snapshot.things import at_hand, bare
from shopjobs.access import SignedInRequest
from shopjobs.models import Job


@job_view("edit_kitchen")
def box_edit(request: SignedInRequest, job: Job, opening_id: int, index: int) -> HttpResponse:
    """Enter or change the box behind one front of an opening."""
    front = _boxed(job, opening_id, index)
    editor = _editor(request, job, front)
    return edited(
        request,
        editor,
        save=lambda: box_enter(front=front, facts=_entered(editor), **who(request)),
        done=lambda _: opening_saved(request, job, front.opening, f"{editor.heading} is saved."),
    )


def _entered(editor: Editor) -> BoxFacts:
    """The box with its shelf-pin holes."""
    facts: BoxFacts = editor.form.entered
    return replace(facts, shelf_pins=tuple(editor.table.stated() if editor.table else ()))


@job_view("edit_kitchen", "POST")
def box_remove_now(request: SignedInRequest, job: Job, opening_id: int, index: int) -> HttpResponse:
    """Take a box away; its front stays."""
    front = _boxed(job, opening_id, index)
    if not hasattr(front, "box"):
        raise Http404
    said, target = f"{_name(front)} of {front.opening} is removed.", f"opening-{opening_id}"
    remove = partial(box_remove, front=front, **who(request))
    return removed(request, job, target, said, remove=remove, gone=False)


def _boxed(job: Job, opening_id: int, index: int) -> Front:
    front = found_or_404(front_of, job, opening_id, index)
    if not front.opening.closing.on_box:
        raise Http404
    return front


def _editor(request: SignedInRequest, job: Job, front: Front) -> Editor:
    opening, data = at_hand(front.opening), posted(request)
    here = [job.pk, front.opening_id, front.position]
    box = opening.fronts[front.position].box
    table = rows_form(
        PinsForm,
        data=data,
        unit=job.unit,
        prefix=f"pins-{front.opening_id}-{front.position}",
        held=pin_rows(box),
    )
    return Editor(
        job=job,
        form=_form(request, job, front, opening),
        target=f"opening-{front.opening_id}",
        heading=f"{_name(front)} of {front.opening}",
        action=reverse("fronts:box-edit", args=here),
        table=table,
        table_legend="Shelf-pin holes in the box front, from its lower left corner",
        heads=tuple(heads(table)),
        remove=reverse("fronts:box-remove", args=here) if box else "",
        remove_button="Remove the box",
        rows=(front.box,) if box else (),
    )


def _form(request: SignedInRequest, job: Job, front: Front, opening: Opening) -> BoxForm:
    box = opening.fronts[front.position].box
    auto_id = f"box-{front.opening_id}-{front.position}-%s"
    form = BoxForm(posted(request), unit=job.unit, box=box, auto_id=auto_id)
    form.fields["width"].widget.attrs["autofocus"] = True
    if box is not None:
        return form
    form.initial.update(_like_the_last(job, opening, front.position))
    likely = rise_offered(opening, front.position, Mm(job.step))
    if likely is not None:
        form.offer("rise", f"likely {show(likely, job.unit)}")
    return form


def _like_the_last(job: Job, opening: Opening, index: int) -> dict[str, object]:
    boxes = Box.objects.filter(front__opening__cabinet__job=job)
    last = boxes.select_related("front__opening").order_by("-pk").first()
    if last is None:
        return {}
    behind = at_hand(last.front.opening)
    return next_box(opening, index, bare(last), behind, last.front.position)


def _name(front: Front) -> str:
    return "Box" if len(front.opening.fronts.all()) == 1 else f"Box {front.position + 1}"
