"""A form in the place of what it changes: shown, refused where it must be, kept."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cache, partial, wraps
from typing import Any, Concatenate, ParamSpec, TypeVar

from django.core.exceptions import ObjectDoesNotExist, ValidationError
from django.db import transaction
from django.db.models import Model, QuerySet
from django.forms.formsets import BaseFormSet
from django.http import Http404, HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_http_methods

from fronts.pages.measure.forms.row_forms import RowForm
from fronts.pages.measure.rows.drawing import drawn_cabinet
from fronts.pages.shared.edit_conflict import stale_message
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.pages.shared.return_link import back_word, way_back
from fronts.pages.shared.version import version_of
from fronts.services.keeping import AskFirst
from shopjobs.access import AnyView, Capability, SignedInRequest, needs
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part
from shopjobs.services.refused import Refused

P = ParamSpec("P")
T = TypeVar("T")


@dataclass(frozen=True, slots=True, kw_only=True)
class Editor:
    """A form, and where it stands: `target` is the id of the element that it replaces.

    `drawn` is the label of the cabinet that is drawn beside it, `preview` the address that
    draws it as the form has it.
    """

    job: Job
    form: KitchenForm
    target: str
    heading: str
    action: str
    button: str = "Save"
    preview: str = ""
    drawn: str = ""
    table: "BaseFormSet[RowForm] | None" = None
    table_legend: str = ""
    heads: tuple[str, ...] = ()
    remove: str = ""
    hint: str = ""
    asks: AskFirst | None = None
    template: str = "fronts/measure/edit.html"

    @property
    def is_valid(self) -> bool:
        sound = self.form.is_valid()
        return (self.table is None or self.table.is_valid()) and sound


def job_view(
    capability: Capability, *methods: str
) -> Callable[[Callable[Concatenate[SignedInRequest, Job, P], HttpResponse]], AnyView[Any]]:
    """Hand the view its job; while one request changes a job, others that would wait.

    The view's page is drawn after that, when others may go on.
    `methods` are those that the view answers, GET and POST where none is named.
    """

    def guard(
        view: Callable[Concatenate[SignedInRequest, Job, P], HttpResponse],
    ) -> AnyView[Any]:
        @needs(capability)
        @wraps(view)
        def found(
            request: SignedInRequest, /, job_id: int, *args: P.args, **kwargs: P.kwargs
        ) -> HttpResponse:
            jobs = Job.objects.filter(shop=request.shop)
            if request.method != "POST":
                return view(request, _one_of(jobs, request, job_id), *args, **kwargs)
            with transaction.atomic():
                job = _one_of(jobs.select_for_update(), request, job_id)
                return view(request, job, *args, **kwargs)

        return require_http_methods([*(methods or ("GET", "HEAD", "POST"))])(found)

    return guard


def _one_of(jobs: QuerySet[Job], request: SignedInRequest, job_id: int) -> Job:
    job = found_or_404(jobs.get, pk=job_id)
    job.shop = request.shop
    return job


def found_or_404(find: Callable[..., T], *args: Any, **kwargs: Any) -> T:
    """What a selector finds; what it doesn't find does not exist."""
    try:
        return find(*args, **kwargs)
    except ObjectDoesNotExist as missing:
        raise Http404 from missing


def who(request: SignedInRequest) -> dict[str, Any]:
    """When something is done, and by whom, as the services ask."""
    return {"at": timezone.now(), "by": request.user}


def posted(request: SignedInRequest) -> Any:
    """What was posted, or None."""
    return request.POST if request.method == "POST" else None


def show_editor(request: SignedInRequest, editor: Editor, *, status: int = 200) -> HttpResponse:
    """The page with the form; for htmx the form alone."""
    word = back_word(request)
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
            "back": way_back(request, editor.job),
            "in_place": wants_part(request),
        },
        partial="editor",
        status=status,
    )


def kept(
    request: SignedInRequest, editor: Editor, save: Callable[[], object], row: Model | None = None
) -> HttpResponse | None:
    """Save what was posted; the answer where that can't be, None where it is done.

    `save` does all or nothing, like any one service.
    `row` is what is changed as it stands now; a form that saw it otherwise is answered 409.
    """
    form = editor.form
    if not editor.is_valid:
        return show_editor(request, editor, status=422)
    if row is not None and form.data.get("version", "") != version_of(row):
        form.add_error(None, stale_message(editor.job, row, form.values, form.unit))
        form.data = {**dict(form.data.items()), "version": version_of(row)}
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
