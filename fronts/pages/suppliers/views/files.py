"""Offers from a file: chosen, looked through, then taken in, all of it or some."""

from functools import partial

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponse

from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import posted, who
from fronts.pages.shared.table_file import TableFault
from fronts.pages.suppliers.forms.files import OffersFileForm, TakeForm, cells_text
from fronts.pages.suppliers.rows.columns import COLUMNS
from fronts.pages.suppliers.rows.file_in import Cells, cells_in
from fronts.pages.suppliers.rows.preview import lines_to_take, preview, state_of
from fronts.pages.suppliers.views.guard import back, prices_view
from fronts.services.offers_file import offers_take
from shopjobs.access import SignedInRequest
from shopjobs.pages import render_page

FILE, PREVIEW = "fronts/suppliers/file.html", "fronts/suppliers/preview.html"


@prices_view()
def offers_file(request: SignedInRequest) -> HttpResponse:
    """Ask for a file; show what it would change."""
    form = OffersFileForm(posted(request), request.FILES or None, auto_id="offers-%s")
    return form_answer(
        request,
        form,
        show=partial(_file_page, request, form),
        save=partial(_read, form),
        done=partial(_seen, request),
    )


@prices_view("POST")
def offers_take_now(request: SignedInRequest) -> HttpResponse:
    """Take in what was seen, but for the lines that are left out; as one step."""
    form = TakeForm(request.POST, columns=len(COLUMNS), now=state_of(request.shop))
    return form_answer(
        request,
        form,
        show=partial(_shown_again, request, form),
        save=lambda: offers_take(
            shop=request.shop,
            lines=lines_to_take(request.shop, form.cells, form.left_out),
            **who(request),
        ),
        done=partial(_taken, request),
    )


def _read(form: OffersFileForm) -> tuple[Cells, list[str]]:
    try:
        return cells_in(form.cleaned_data["file"])
    except TableFault as fault:
        raise ValidationError({"file": str(fault)}) from fault


def _seen(request: SignedInRequest, read: tuple[Cells, list[str]]) -> HttpResponse:
    cells, unknown = read
    return _preview_page(request, TakeForm(columns=len(COLUMNS)), cells, unknown)


def _taken(request: SignedInRequest, counts: tuple[int, int] | None) -> HttpResponse:
    """Say what was done; what was sent twice was done the first time."""
    if counts is not None:
        new, changed = counts
        messages.success(request, f"Taken in: {new} new, {changed} changed. Undo takes that back.")
    return back()


def _shown_again(request: SignedInRequest, form: TakeForm, *, status: int = 200) -> HttpResponse:
    if form.cells:
        return _preview_page(request, form, form.cells, [], status=status)
    return _file_page(request, form, status=status)


def _preview_page(
    request: SignedInRequest,
    form: TakeForm,
    cells: Cells,
    unknown: list[str],
    *,
    status: int = 200,
) -> HttpResponse:
    context = {
        "form": form,
        "preview": preview(request.shop, cells, form.left_out),
        "unknown": unknown,
        "cells": cells_text(cells),
        "seen": state_of(request.shop),
    }
    return render_page(request, PREVIEW, context, status=status)


def _file_page(
    request: SignedInRequest, form: OffersFileForm | TakeForm, *, status: int = 200
) -> HttpResponse:
    asks = form if isinstance(form, OffersFileForm) else OffersFileForm(auto_id="offers-%s")
    context = {"form": form, "asks": asks, "columns": COLUMNS.values()}
    return render_page(request, FILE, context, status=status)
