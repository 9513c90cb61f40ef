"""The shop's screws and lengths on the shelf; a job's own are changed where its kitchen is."""

from functools import partial

from django.contrib import messages
from django.http import HttpResponse
from django.urls import reverse
from django.utils.safestring import mark_safe

from fronts.drawings.stock_screws import stock_screws_drawing
from fronts.models import Stock
from fronts.pages.hardware.forms.files import ItemsFileForm
from fronts.pages.hardware.rows.csv_in import one_from_csv
from fronts.pages.hardware.rows.csv_out import items_csv
from fronts.pages.hardware.views.files import PAGE as FILE_PAGE
from fronts.pages.hardware.views.files import read_file
from fronts.pages.hardware.views.place import Place
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import posted, who
from fronts.pages.shared.stock_form import StockForm
from fronts.rules.job_facts import Stock as StockFacts
from fronts.services.stock import stock_set
from fronts.snapshot.stock import stock_in_force
from shopjobs.access import SignedInRequest
from shopjobs.edit_conflict import last_writer
from shopjobs.pages import render_page

PAGE = "fronts/hardware/stock.html"


def stock(request: SignedInRequest, place: Place) -> HttpResponse:
    """Show and change what the shop keeps."""
    rows = list(Stock.objects.filter(shop=request.shop, job=None))
    held = stock_in_force(request.shop)
    form = StockForm(posted(request), unit=place.unit, stock=held, auto_id="stock-%s")
    form.is_merged = True
    form.written_by = partial(last_writer, request.shop, rows)
    return form_answer(
        request,
        form,
        show=partial(_page, request, place, form),
        save=lambda: stock_set(owner=request.shop, stock=form.entered, **who(request)),
        done=partial(_done, request, place),
    )


def _done(request: SignedInRequest, place: Place, row: object) -> HttpResponse:
    messages.success(request, "Screws: saved.")
    return place.back("screws")


def _page(
    request: SignedInRequest, place: Place, form: StockForm, *, status: int = 200
) -> HttpResponse:
    svg = stock_screws_drawing(stock_in_force(request.shop), place.unit)
    drawing = mark_safe(svg)  # noqa: S308 - drawn by us, every word in it escaped
    context = {**place.around, "form": form, "drawing": drawing}
    return render_page(request, PAGE, context, status=status)


def stock_csv(request: SignedInRequest, place: Place) -> HttpResponse:
    """Hand out what the shop keeps, as one line under its headings."""
    held = stock_in_force(request.shop)
    return items_csv(StockFacts, [held], unit=place.unit, name="screws.csv")


def stock_file(request: SignedInRequest, place: Place) -> HttpResponse:
    """Take what the shop keeps from a file, all of it or nothing."""
    place.may_change()
    form = ItemsFileForm(posted(request), request.FILES or None)
    return form_answer(
        request,
        form,
        show=partial(_file_page, request, place, form),
        save=lambda: stock_set(
            owner=request.shop,
            stock=read_file(form, partial(one_from_csv, StockFacts)),
            **who(request),
        ),
        done=partial(_done, request, place),
    )


def _file_page(
    request: SignedInRequest,
    place: Place,
    form: ItemsFileForm,
    *,
    status: int = 200,
) -> HttpResponse:
    context = {
        **place.around,
        "kind": {"heading": "Screws", "path": "screws", "declared": {"says": "screws and lengths"}},
        "csv": reverse("fronts:shop-stock-csv"),
        "action": reverse("fronts:shop-stock-file"),
        "form": form,
    }
    return render_page(request, FILE_PAGE, context, status=status)
