"""The whole list: what the shop buys and from whom; all of it as a file."""

from functools import partial

from django.contrib import messages
from django.http import HttpResponse

from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import posted, who
from fronts.pages.suppliers.forms.suppliers import CurrencyForm
from fronts.pages.suppliers.rows.file_out import offers_csv, offers_xlsx
from fronts.pages.suppliers.rows.goods import goods_groups
from fronts.pages.suppliers.views.guard import back, prices_view
from fronts.selectors.offers import listed_items, offers_by_name, suppliers_of, usual_currency
from fronts.services.suppliers import usual_currency_set
from shopjobs.access import SignedInRequest
from shopjobs.pages import render_page

PAGE = "fronts/suppliers/page.html"


@prices_view()
def suppliers(request: SignedInRequest) -> HttpResponse:
    """Show what the shop buys, by group, and its suppliers; set the usual currency."""
    initial = {"code": usual_currency(request.shop)}
    form = CurrencyForm(posted(request), initial=initial, auto_id="currency-%s")
    return form_answer(
        request,
        form,
        show=partial(_page, request, form),
        save=lambda: usual_currency_set(
            shop=request.shop, code=form.cleaned_data["code"], **who(request)
        ),
        done=partial(_currency_saved, request),
    )


def _currency_saved(request: SignedInRequest, row: object) -> HttpResponse:
    messages.success(request, "The usual currency is saved.")
    return back("suppliers")


def _page(request: SignedInRequest, form: CurrencyForm, *, status: int = 200) -> HttpResponse:
    shop, words = request.shop, request.GET.get("q", "")
    bare = "bare" in request.GET
    offers = offers_by_name(shop)
    rows = suppliers_of(shop)
    count = {row.pk: 0 for row in rows}
    for several in offers.values():
        for offer in several:
            count[offer.supplier_id] += 1
    context = {
        "form": form,
        "words": words,
        "bare": bare,
        "groups": goods_groups(listed_items(shop), offers, words, bare=bare),
        "suppliers": [(row, count[row.pk]) for row in rows],
        "has_offers": bool(offers),
    }
    return render_page(request, PAGE, context, status=status)


@prices_view("GET", "HEAD")
def offers_csv_out(request: SignedInRequest) -> HttpResponse:
    """All offers as CSV."""
    return offers_csv(request.shop)


@prices_view("GET", "HEAD")
def offers_xlsx_out(request: SignedInRequest) -> HttpResponse:
    """All offers as a spreadsheet."""
    return offers_xlsx(request.shop)
