"""One front of an opening: what is decided about it alone."""

from dataclasses import replace

from django.http import HttpResponse
from django.urls import reverse

from fronts.facts.rows import columns_of
from fronts.models import Front
from fronts.pages.measure.forms.door_choice import door_labels
from fronts.pages.measure.forms.fronts import FrontForm, PlaceForm
from fronts.pages.measure.forms.row_forms import heads, rows_form
from fronts.pages.measure.views.editor import Editor, edited
from fronts.pages.measure.views.parts import opening_saved
from fronts.pages.shared.item_choice import items_of
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.rules.kitchen import FrontFacts
from fronts.rules.labels import numbered
from fronts.selectors.kitchens import front_of
from fronts.selectors.standards import standard_levels
from fronts.services.fronts import front_change
from fronts.snapshot.things import at_hand
from shopjobs.access import SignedInRequest
from shopjobs.models import Job

_PLACES = (
    "Places of its handles, from the front's lower left corner; none: where the rule puts them"
)


@job_view("edit_kitchen")
def front_edit(request: SignedInRequest, job: Job, opening_id: int, index: int) -> HttpResponse:
    """Change what is decided about one front."""
    front = found_or_404(front_of, job, opening_id, index)
    editor = _editor(request, job, front)
    return edited(
        request,
        editor,
        save=lambda: front_change(front=front, facts=_entered(editor), **who(request)),
        done=lambda _: opening_saved(request, job, front.opening, f"{editor.heading} is saved."),
    )


def _entered(editor: Editor) -> FrontFacts:
    """What is decided about the front, with the places of its handles."""
    facts: FrontFacts = editor.form.entered
    return replace(facts, handles=tuple(editor.table.stated() if editor.table else ()))


def _editor(request: SignedInRequest, job: Job, front: Front) -> Editor:
    opening = at_hand(front.opening)
    held = opening.fronts[front.position]
    target = f"opening-{front.opening_id}"
    form = FrontForm(
        posted(request),
        unit=job.unit,
        before=held,
        closing=opening.closing,
        doors=door_labels(job),
        items=items_of(job),
        levels=standard_levels(front.opening),
        auto_id=f"front-{front.opening_id}-{front.position}-%s",
    )
    table = rows_form(
        PlaceForm,
        data=posted(request),
        unit=job.unit,
        prefix=f"handles-{front.opening_id}-{front.position}",
        held=[columns_of(place) for place in held.handles],
    )
    label = numbered(str(front.opening), len(opening.fronts))[front.position]
    return Editor(
        job=job,
        form=form,
        target=target,
        heading=f"Front {label}",
        action=reverse("fronts:front-edit", args=[job.pk, front.opening_id, front.position]),
        drawn=front.opening.cabinet.label,
        table=table,
        table_legend=_PLACES,
        heads=tuple(heads(table)),
        rows=(front,),
    )
