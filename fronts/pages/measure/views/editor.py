"""A form in the place of what it changes: shown, refused where it must be, kept."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cache, partial
from typing import Any

from django.core.exceptions import ValidationError
from django.db.models import Model
from django.forms.formsets import BaseFormSet
from django.http import HttpResponse

from fronts.pages.measure.forms.row_forms import RowForm
from fronts.pages.measure.rows.drawing import drawn_cabinet
from fronts.pages.shared.edit_conflict import conflict_message
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.pages.shared.return_link import return_link, return_word
from fronts.pages.shared.version import version_of
from fronts.services.saving import AskFirst
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part
from shopjobs.services.refused import Refused


@dataclass(frozen=True, slots=True, kw_only=True)
class Editor:
    """A form, and where it stands: `target` is the id of the element that it replaces.

    `drawn` is the label of the cabinet that is drawn beside it, `preview` the address that
    draws it as the form has it. `rows` are what is changed as it stands in the tables, `held`
    the same as the form states it.
    """

    job: Job
    form: KitchenForm
    target: str
    heading: str
    action: str
    button: str = "Save"
    leave: str = "Leave it"
    preview: str = ""
    drawn: str = ""
    table: "BaseFormSet[RowForm] | None" = None
    table_legend: str = ""
    heads: tuple[str, ...] = ()
    remove: str = ""
    hint: str = ""
    asks: AskFirst | None = None
    template: str = "fronts/measure/edit.html"
    rows: tuple[Model, ...] = ()
    held: Any = None

    def __post_init__(self) -> None:
        if self.rows:
            self.form.initial["version"] = version_of(*self.rows)

    @property
    def is_valid(self) -> bool:
        sound = self.form.is_valid()
        return (self.table is None or self.table.is_valid()) and sound


def show_editor(request: SignedInRequest, editor: Editor, *, status: int = 200) -> HttpResponse:
    """The page with the form; for htmx the form alone."""
    word = return_word(request)
    if word:
        editor = replace(editor, action=f"{editor.action}?back={word}")
    return render_page(
        request,
        editor.template,
        {
            "editor": editor,
            "form": editor.form,
            "drawing": cache(partial(drawn_cabinet, editor.job, editor.drawn)),
            "job": editor.job,
            "step": "measure",
            "back": return_link(request, editor.job),
            "in_place": wants_part(request),
        },
        partial="editor",
        status=status,
    )


def kept(
    request: SignedInRequest, editor: Editor, save: Callable[[], object]
) -> HttpResponse | None:
    """Save what was posted; the answer where that can't be, None where it is done.

    `save` does all or nothing, like any one service. A form that saw another state of what
    it changes is answered 409.
    """
    form = editor.form
    if not editor.is_valid:
        return show_editor(request, editor, status=422)
    version = version_of(*editor.rows)
    if editor.rows and form.data.get("version", "") != version:
        told = conflict_message(editor.job, editor.rows[0], editor.held, form.entered, form.unit)
        form.add_error(None, told)
        form.data = {**dict(form.data.items()), "version": version}
        return show_editor(request, editor, status=409)
    try:
        save()
    except AskFirst as question:
        return show_editor(request, replace(editor, asks=question), status=422)
    except ValidationError as error:
        form.refuse_all(error)
    except Refused as refused:
        form.refuse(refused)
    return show_editor(request, editor, status=422) if form.errors else None
