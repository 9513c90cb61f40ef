"""Drawer boxes behind the fronts of an opening, with their shelf-pin holes."""

from collections.abc import Callable
from dataclasses import replace
from functools import partial

from django.http import Http404, HttpResponse
from django.urls import reverse

from fronts.models import Box, Front
from fronts.pages.measure.forms.boxes import (
    BoxForm,
    BoxToMakeForm,
    PinsForm,
    next_box,
    pin_rows,
    rise_offered,
)
from fronts.pages.measure.forms.row_forms import heads, rows_form
from fronts.pages.measure.views.editor import Editor, edited
from fronts.pages.measure.views.parts import opening_saved
from fronts.pages.measure.views.removal import removed
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.rules.box_facts import Box as BoxFacts
from fronts.rules.kitchen import Opening
from fronts.rules.lengths import Mm, show
from fronts.selectors.kitchens import front_of, opening_of
from fronts.services.boxes import box_enter, box_make, box_remove
from fronts.services.fronts import on_box
from fronts.snapshot.things import at_hand, bare
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.services.recording import revisions_kept


@job_view("edit_kitchen")
def box_edit(request: SignedInRequest, job: Job, opening_id: int, index: int) -> HttpResponse:
    """Enter or change the box behind one front of an opening."""
    front = _boxed(job, opening_id, index)
    editor = _editor(request, job, front)
    return _answered(
        request,
        front,
        editor,
        save=lambda: box_enter(front=front, facts=_entered(editor), **who(request)),
    )


def _entered(editor: Editor) -> BoxFacts:
    """The box with its shelf-pin holes."""
    facts: BoxFacts = editor.form.entered
    return replace(facts, shelf_pins=tuple(editor.table.stated() if editor.table else ()))


@job_view("edit_kitchen")
def box_make_edit(request: SignedInRequest, job: Job, opening_id: int, index: int) -> HttpResponse:
    """Decide that the box behind one front is to be made, and what it carries."""
    front = _boxed(job, opening_id, index)
    editor = _to_make_editor(request, job, front)
    return _answered(
        request,
        front,
        editor,
        save=lambda: box_make(front=front, facts=editor.form.entered, **who(request)),
    )


def _to_make_editor(request: SignedInRequest, job: Job, front: Front) -> Editor:
    here = [job.pk, front.opening_id, front.position]
    held = bare(front.box_to_make) if hasattr(front, "box_to_make") else None
    auto_id = f"make-{front.opening_id}-{front.position}-%s"
    return Editor(
        job=job,
        form=BoxToMakeForm(posted(request), unit=job.unit, box=held, auto_id=auto_id),
        target=f"opening-{front.opening_id}",
        heading=f"{_name(front)} of {front.opening}, to be made",
        action=reverse("fronts:box-make", args=here),
        remove=reverse("fronts:box-remove", args=here) if held else "",
        remove_button="Make no box",
        rows=(front.box_to_make,) if held else (),
    )


def _answered(
    request: SignedInRequest, front: Front, editor: Editor, save: Callable[[], object]
) -> HttpResponse:
    """The form, or once it is saved the opening as it is by then."""
    said, was_to_make = f"{editor.heading} is saved.", hasattr(front, "box_to_make")

    def done(made: object) -> HttpResponse:
        # A box that stays one is at hand; what came in another's place is read again.
        if isinstance(made, Box) and not was_to_make:
            front.box = made
            return opening_saved(request, editor.job, front.opening, said, kept)
        opening = opening_of(editor.job, front.opening_id)
        return opening_saved(request, editor.job, opening, said, kept)

    with revisions_kept() as kept:
        return edited(request, editor, save=save, done=done)


@job_view("edit_kitchen", "POST")
def box_remove_now(request: SignedInRequest, job: Job, opening_id: int, index: int) -> HttpResponse:
    """Take a box away; its front stays."""
    front = _boxed(job, opening_id, index)
    if not on_box(front):
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
