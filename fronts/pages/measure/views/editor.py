"""A form in the place of what it changes: shown, refused where it must be, kept."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cache, partial
from typing import TypeVar

from django.db.models import Model
from django.http import HttpResponse

from fronts.pages.measure.forms.row_forms import RowsTable
from fronts.pages.measure.rows.drawing import drawn_cabinet
from fronts.pages.measure.rows.walls import AT
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.pages.shared.return_link import return_link, return_word
from fronts.pages.shared.wall_addresses import WALL, wall_query
from shopjobs.access import SignedInRequest
from shopjobs.edit_conflict import last_writer
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part

T = TypeVar("T")
TEMPLATE = "fronts/measure/edit.html"


@dataclass(frozen=True, slots=True, kw_only=True)
class Editor:
    """A form, and where it stands: `target` is the id of the element that it replaces.

    `drawn` is the label of the cabinet that is drawn beside it, `preview` the address that
    draws it as the form has it, `remove` the one that takes it away. `rows` are what is
    changed as it stands in the tables; a level of the shop's ways is there also where it says
    nothing and so has no row.
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
    table: RowsTable | None = None
    table_legend: str = ""
    heads: tuple[str, ...] = ()
    remove: str = ""
    remove_button: str = ""
    hint: str = ""
    rows: tuple[Model, ...] = ()
    is_level: bool = False

    def __post_init__(self) -> None:
        self.form.table = self.table
        self.form.is_merged = bool(self.rows) or self.is_level
        self.form.written_by = partial(last_writer, self.job, self.rows)


def edited(
    request: SignedInRequest,
    editor: Editor,
    *,
    save: Callable[[], T],
    done: Callable[[T], HttpResponse],
) -> HttpResponse:
    """The editor, or what was `done` once its form is saved."""
    return form_answer(
        request,
        editor.form,
        show=partial(show_editor, request, editor),
        save=save,
        done=done,
        tables=() if editor.table is None else (editor.table,),
    )


def show_editor(request: SignedInRequest, editor: Editor, *, status: int = 200) -> HttpResponse:
    """The page with the form; for htmx the form alone."""
    word = return_word(request)
    if word:
        editor = replace(editor, action=f"{editor.action}?back={word}")
    return render_page(
        request,
        TEMPLATE,
        {
            "editor": editor,
            "form": editor.form,
            "drawing": cache(partial(drawn_cabinet, editor.job, editor.drawn)),
            "job": editor.job,
            "step": "measure",
            "back": return_link(request, editor.job),
            "in_place": wants_part(request),
            "leave_query": _leaving(request, editor.target),
        },
        partial="editor",
        status=status,
    )


def _leaving(request: SignedInRequest, target: str) -> str:
    """The wall that one comes back to: the one that was asked about, else of what is changed."""
    wall = request.GET.get(WALL, "")
    return wall_query(wall) if wall else f"?{AT}={target}"
