"""Drawer boxes behind an opening, with their shelf-pin holes."""

from django.http import Http404, HttpResponse
from django.urls import reverse

from fronts.models import Box, Opening
from fronts.models.openings import BOXED
from fronts.pages.measure.forms.boxes import BoxForm, PinsForm, next_box, pin_rows, rise_offered
from fronts.pages.measure.forms.row_forms import heads, rows_form, stated
from fronts.pages.measure.rows.kitchen import opening_row
from fronts.pages.measure.views.cabinets import ask
from fronts.pages.measure.views.editor import Editor, kept, show_editor
from fronts.pages.measure.views.parts import PAGE, done
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.pages.shared.version import version_of
from fronts.rules.lengths import Mm, show
from fronts.selectors.kitchens import boxes_of, opening_of
from fronts.services.boxes import box_enter, box_remove
from fronts.services.saving import AskFirst
from shopjobs.access import SignedInRequest
from shopjobs.models import Job


@job_view("edit_kitchen")
def box_edit(request: SignedInRequest, job: Job, opening_id: int, index: int) -> HttpResponse:
    """Enter or change the box behind one front of an opening."""
    opening = _boxed(job, opening_id, index)
    box = boxes_of(opening).get(index)
    editor = _editor(request, job, opening, box, index)
    form = editor.form
    if not form.is_bound:
        return show_editor(request, editor)

    def save() -> None:
        entered, pins = box or Box(opening=opening, index=index), stated(editor.table)
        box_enter(box=entered, pins=pins, **who(request), **form.values)

    refusal = kept(request, editor, save, row=box)
    if refusal is not None:
        return refusal
    now = opening_of(job, opening_id) if box is None else opening
    said, row = f"{editor.heading} is saved.", opening_row(now, job.unit)
    return done(request, job, editor.target, said, template=f"{PAGE}#opening", opening=row)


def _editor(
    request: SignedInRequest, job: Job, opening: Opening, box: Box | None, index: int
) -> Editor:
    here = [job.pk, opening.pk, index]
    data = posted(request)
    table = rows_form(
        PinsForm,
        data=data,
        unit=job.unit,
        prefix=f"pins-{opening.pk}-{index}",
        initial=pin_rows(box) if data is None else (),
    )
    return Editor(
        job=job,
        form=_form(request, job, opening, box, index),
        target=f"opening-{opening.pk}",
        heading=f"{_name(opening, index)} of {opening}",
        action=reverse("fronts:box-edit", args=here),
        table=table,
        table_legend="Shelf-pin holes in the box front, from its lower left corner",
        heads=tuple(heads(table)),
        remove=reverse("fronts:box-remove", args=here) if box else "",
    )


@job_view("edit_kitchen")
def box_remove_page(
    request: SignedInRequest, job: Job, opening_id: int, index: int
) -> HttpResponse:
    """Ask, then take a box away."""
    opening = _boxed(job, opening_id, index)
    target, name = f"opening-{opening.pk}", f"{_name(opening, index)} of {opening}"
    if request.method == "POST":
        box_remove(opening=opening, index=index, **who(request))
        return done(request, job, target, f"{name} is removed.")
    question = AskFirst(
        f"Remove {name[0].lower()}{name[1:]}?", ["its sizes", "its shelf-pin holes"]
    )
    action = reverse("fronts:box-remove", args=[job.pk, opening.pk, index])
    return ask(request, job, target, question, action, "Remove the box")


def _boxed(job: Job, opening_id: int, index: int) -> Opening:
    opening = found_or_404(opening_of, job, opening_id)
    if opening.closed_by not in BOXED or index >= opening.count:
        raise Http404
    return opening


def _form(
    request: SignedInRequest, job: Job, opening: Opening, box: Box | None, index: int
) -> BoxForm:
    form = BoxForm(posted(request), unit=job.unit, box=box, auto_id=f"box-{opening.pk}-{index}-%s")
    form.fields["width"].widget.attrs["autofocus"] = True
    if box is None:
        latest = Box.objects.filter(opening__cabinet__job=job).select_related("opening")
        form.initial.update(next_box(opening, index, latest.order_by("-pk").first()))
        likely = rise_offered(opening, index, boxes_of(opening), Mm(job.step))
        if likely is not None:
            form.offer("rise", f"likely {show(likely, job.unit)}")
    else:
        form.initial["version"] = version_of(box)
    return form


def _name(opening: Opening, index: int) -> str:
    return "Box" if opening.count == 1 else f"Box {index + 1}"
