"""The shop's screws and lengths on the shelf; a job's own are changed where its kitchen is."""

from functools import partial

from django.contrib import messages
from django.http import HttpResponse

from fronts.models import Stock
from fronts.pages.hardware.views.place import Place
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import posted, who
from fronts.pages.shared.stock_form import StockForm
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


def _done(request: SignedInRequest, place: Place, row: Stock) -> HttpResponse:
    messages.success(request, "Screws: saved.")
    return place.back("screws")


def _page(
    request: SignedInRequest, place: Place, form: StockForm, *, status: int = 200
) -> HttpResponse:
    return render_page(request, PAGE, {**place.around, "form": form}, status=status)
