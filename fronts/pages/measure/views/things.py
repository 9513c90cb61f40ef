"""Things beside the cabinets, each kind in the same way: entered, changed, deleted."""

from dataclasses import replace
from functools import partial
from itertools import count
from typing import Any

from django.http import HttpResponse
from django.urls import reverse

from fronts.facts.rows import columns_of
from fronts.pages.measure.forms.row_forms import heads, rows_form
from fronts.pages.measure.things.others import OTHERS
from fronts.pages.measure.things.thing_page import ThingPage
from fronts.pages.measure.views.editor import Editor, edited
from fronts.pages.measure.views.parts import done
from fronts.pages.measure.views.removal import removed
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.selectors.kitchens import thing_of, things_of
from fronts.services.things import called, thing_change, thing_create
from fronts.snapshot.things import at_hand
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.words import capitalized


@job_view("edit_kitchen")
def thing_new(request: SignedInRequest, job: Job, page: ThingPage) -> HttpResponse:
    """Enter a thing; it starts as the last of its kind was."""
    target = page.new_key
    form = page.form(posted(request), unit=job.unit, auto_id=f"{target}-%s")
    form.initial.update(page.offers(job) if page.offers else like_the_last(job, page))
    if page.settle is not None:
        page.settle(form, job, None)
    heading = f"New {page.table._meta.verbose_name}"
    editor = Editor(
        job=job, form=form, target=target, heading=heading, button=f"Enter the {page.one}",
        action=reverse("fronts:thing-new", args=[job.pk, page]),
        **_table(request, job, page, "new", None),
    )  # fmt: skip
    return edited(
        request,
        editor,
        save=lambda: thing_create(job=job, facts=_entered(editor, page), **who(request)),
        done=partial(_entered_as, request, job, page),
    )


def _entered_as(request: SignedInRequest, job: Job, page: ThingPage, row: Any) -> HttpResponse:
    """The list with the new thing; what stands in a wall's table comes with the table."""
    said = f"{_named(row)} is entered."
    if page is OTHERS:
        return done(request, job, page.new_key, said, anchor=f"{page.one}-{row.pk}")
    return done(request, job, page.path, said, anchor=page.new_key)


@job_view("edit_kitchen")
def thing_edit(request: SignedInRequest, job: Job, page: ThingPage, key: int) -> HttpResponse:
    """Change what is known of a thing."""
    row = found_or_404(thing_of, job, page.table, key)
    target, held = f"{page.one}-{key}", at_hand(row)
    form = page.form(posted(request), unit=job.unit, held=held, auto_id=f"{target}-%s")
    if page.settle is not None:
        page.settle(form, job, row)
    editor = Editor(
        job=job, form=form, target=target, heading=_named(row), rows=(row,),
        action=reverse("fronts:thing-edit", args=[job.pk, page, key]),
        **_table(request, job, page, key, held),
    )  # fmt: skip
    return edited(
        request,
        editor,
        save=lambda: thing_change(row=row, facts=_entered(editor, page), **who(request)),
        done=lambda row: done(request, job, target, f"{_named(row)} is saved."),
    )


@job_view("edit_kitchen", "POST")
def thing_delete_now(request: SignedInRequest, job: Job, page: ThingPage, key: int) -> HttpResponse:
    """Delete a thing; what else that touches is said."""
    row = found_or_404(thing_of, job, page.table, key)
    said, target = f"{_named(row)} is deleted.", f"{page.one}-{key}"
    delete = partial(page.delete, row=row, **who(request))
    return removed(request, job, target, said, remove=delete)


def _named(row: Any) -> str:
    """The thing at the beginning of a sentence: `Door D1`."""
    return capitalized(called(row))


def _entered(editor: Editor, page: ThingPage) -> Any:
    """The thing with the rows in it."""
    facts = editor.form.entered
    if page.inside is None or editor.table is None:
        return facts
    return replace(facts, **{page.inside.fact: tuple(editor.table.stated())})


def _table(
    request: SignedInRequest, job: Job, page: ThingPage, key: int | str, held: Any
) -> dict[str, Any]:
    """The small table in the form, where this kind has one, with what the thing holds."""
    if page.inside is None:
        return {}
    rows = [] if held is None else getattr(held, page.inside.fact)
    table = rows_form(
        page.inside.form,
        data=posted(request),
        unit=job.unit,
        prefix=f"{page.inside.prefix}-{key}",
        held=[columns_of(one) for one in rows],
    )
    return {"table": table, "table_legend": page.inside.legend, "heads": tuple(heads(table))}


def like_the_last(job: Job, page: ThingPage) -> dict[str, object]:
    """What a new thing starts as: the next label, and what is alike in the last of its kind."""
    rows = list(things_of(job, page.table))
    taken = {row.label for row in rows}
    labels = (f"{page.letter}{number}" for number in count(len(rows) + 1))
    label = next(label for label in labels if label not in taken)
    return {"label": label} | {name: getattr(rows[-1], name) for name in page.alike if rows}
