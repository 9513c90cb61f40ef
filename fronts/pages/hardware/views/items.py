"""Items one by one: entered, changed, put in order, taken out."""

from functools import partial
from typing import Any

from django.contrib import messages
from django.http import HttpResponse

from fronts.facts.rows import from_row
from fronts.models.items import Item
from fronts.pages.hardware.forms.items import ItemForm
from fronts.pages.hardware.views.kinds import ItemPage
from fronts.pages.hardware.views.place import Place
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import posted, who
from fronts.rules.usual_hardware import usual_hardware
from fronts.services.hardware import called, item_add, item_change, item_delete, item_move
from fronts.snapshot import ways_of
from shopjobs.access import SignedInRequest
from shopjobs.edit_conflict import last_writer
from shopjobs.pages import render_page
from shopjobs.words import capitalized

PAGE = "fronts/hardware/edit.html"


def item_new(request: SignedInRequest, place: Place, kind: ItemPage) -> HttpResponse:
    """Enter an item, last of its kind."""
    place.may_change()
    form = kind.form(posted(request), unit=place.unit, auto_id="item-new-%s")
    return form_answer(
        request,
        form,
        show=partial(_page, request, place, kind, form, None),
        save=lambda: item_add(owner=place.owner, item=form.entered, **who(request)),
        done=partial(_done, request, place, kind, "is entered"),
    )


def item_edit(request: SignedInRequest, place: Place, kind: ItemPage, key: int) -> HttpResponse:
    """Change what is known of an item."""
    row = place.item(kind, key)
    held: Any = from_row(kind.kind, row)
    form = kind.form(posted(request), unit=place.unit, held=held, auto_id=f"item-{key}-%s")
    form.is_merged = True
    form.written_by = partial(last_writer, place.owner, [row])
    return form_answer(
        request,
        form,
        show=partial(_page, request, place, kind, form, row),
        save=lambda: item_change(row=row, item=form.entered, **who(request)),
        done=partial(_done, request, place, kind, "is saved"),
    )


def item_move_by(request: SignedInRequest, place: Place, kind: ItemPage, key: int) -> HttpResponse:
    """Move an item one place up or down in its kind."""
    row = place.item(kind, key)
    order = list(kind.rows(row.hardware).values_list("pk", flat=True))
    at = order.index(row.pk)
    to = at - 1 if request.POST.get("to") == "up" else at + 1
    if 0 <= to < len(order):
        item_move(row=row, to=to, **who(request))
    return _done(request, place, kind, "is moved", row)


def item_delete_now(
    request: SignedInRequest, place: Place, kind: ItemPage, key: int
) -> HttpResponse:
    """Take an item off its list."""
    row = place.item(kind, key)
    name = _named(row)
    named = item_delete(row=row, **who(request))
    messages.success(request, "; ".join([f"{name} is taken off the list", *named]) + ".")
    return place.back(kind.path)


def _done(
    request: SignedInRequest, place: Place, kind: ItemPage, said: str, row: Item
) -> HttpResponse:
    messages.success(request, f"{_named(row)} {said}.")
    return place.back(kind.path)


def _named(row: Item) -> str:
    return capitalized(called(row))


def _page(
    request: SignedInRequest,
    place: Place,
    kind: ItemPage,
    form: ItemForm,
    row: Item | None,
    *,
    status: int = 200,
) -> HttpResponse:
    drawn: Any = _plain(place, kind) if row is None else from_row(kind.kind, row)
    context = {
        **place.around,
        "kind": kind,
        "form": form,
        "row": row,
        "action": place.to("item-new", kind.path)
        if row is None
        else place.to("item-edit", kind.path, row.pk),
        "heading": _named(row) if row is not None else f"New {kind.declared.one}",
        "drawing": kind.drawing(drawn, place.unit),
    }
    return render_page(request, PAGE, context, status=status)


def _plain(place: Place, kind: ItemPage) -> Any:
    """The first plain item of the kind, to say by it what the numbers mean."""
    return next(iter(getattr(usual_hardware(ways_of(place.owner)), kind.path)), None)
