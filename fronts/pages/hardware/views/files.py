"""Items of one kind as a CSV file, out and in."""

from collections.abc import Callable
from functools import partial
from typing import TypeVar

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponse

from fronts.pages.hardware.forms.files import ItemsFileForm
from fronts.pages.hardware.rows.csv_in import CsvFaults, items_from_csv
from fronts.pages.hardware.rows.csv_out import items_csv
from fronts.pages.hardware.views.kinds import ItemPage
from fronts.pages.hardware.views.place import Place
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import posted, who
from fronts.rules.usual_hardware import usual_hardware
from fronts.services.hardware import items_set
from fronts.snapshot import ways_of
from fronts.snapshot.hardware import hardware_in_force
from shopjobs.access import SignedInRequest
from shopjobs.pages import render_page

PAGE = "fronts/hardware/file.html"

Read = TypeVar("Read")


def csv_out(request: SignedInRequest, place: Place, kind: ItemPage) -> HttpResponse:
    """Hand out one kind; where the list has none of it, the plain ones that hold."""
    items = getattr(hardware_in_force(place.owner), kind.path)
    items = items or getattr(usual_hardware(ways_of(place.owner)), kind.path)
    return items_csv(kind.kind, items, unit=place.unit, name=f"{kind.declared.says}.csv")


def csv_in(request: SignedInRequest, place: Place, kind: ItemPage) -> HttpResponse:
    """Take one kind in from a file, all of it or nothing."""
    place.may_change()
    form = ItemsFileForm(posted(request), request.FILES or None)
    named: list[str] = []
    return form_answer(
        request,
        form,
        show=partial(_page, request, place, kind, form),
        save=partial(_take_in, request, place, kind, form, named),
        done=partial(_taken_in, request, place, kind, named),
    )


def read_file(form: ItemsFileForm, reads: Callable[[bytes], Read]) -> Read:
    """What `reads` makes of the file; `ValidationError` after the form has its faults."""
    try:
        return reads(form.cleaned_data["file"])
    except CsvFaults as refused:
        form.faults = refused.faults
        nothing = "Nothing was taken in. What is wrong stands below."
        raise ValidationError({"file": nothing}) from refused


def _take_in(
    request: SignedInRequest,
    place: Place,
    kind: ItemPage,
    form: ItemsFileForm,
    named: list[str],
) -> None:
    """Let the list have what the file says; `named` is filled with who names what goes."""
    items = read_file(form, partial(items_from_csv, kind.kind))
    try:
        named += items_set(owner=place.owner, kind=kind.kind, items=items, **who(request))
    except ValidationError as error:
        raise ValidationError({"file": error.messages}) from error


def _taken_in(
    request: SignedInRequest, place: Place, kind: ItemPage, named: list[str], nothing: object
) -> HttpResponse:
    said = f"{kind.heading}: the list is as the file says"
    messages.success(request, "; ".join([said, *named]) + ".")
    return place.back(kind.path)


def _page(
    request: SignedInRequest,
    place: Place,
    kind: ItemPage,
    form: ItemsFileForm,
    *,
    status: int = 200,
) -> HttpResponse:
    context = {
        **place.around,
        "kind": kind,
        "csv": place.to("items-csv", kind.path),
        "action": place.to("items-file", kind.path),
        "form": form,
    }
    return render_page(request, PAGE, context, status=status)
