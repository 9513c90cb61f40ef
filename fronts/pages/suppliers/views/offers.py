"""Offers one by one: entered, changed, preferred, taken out."""

from functools import partial
from typing import Any

from django.contrib import messages
from django.http import HttpResponse
from django.urls import reverse

from fronts.models import Offer, Supplier
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import found_or_404, posted, who
from fronts.pages.suppliers.forms.offers import OfferForm
from fronts.pages.suppliers.views.guard import back, prices_view
from fronts.selectors.offers import (
    is_preferred,
    known_names,
    offer_of,
    supplier_of,
    suppliers_of,
    usual_currency,
)
from fronts.services.offers import offer_add, offer_change, offer_delete, offer_prefer
from shopjobs.access import SignedInRequest
from shopjobs.edit_conflict import last_writer
from shopjobs.pages import render_page

PAGE = "fronts/suppliers/offer.html"


@prices_view()
def offer_new(request: SignedInRequest) -> HttpResponse:
    """Enter an offer; an address may name the item and the supplier."""
    initial = {name: request.GET.get(name, "") for name in ("item", "supplier")}
    form = _form(request, None, initial=initial, auto_id="offer-new-%s")
    return form_answer(
        request,
        form,
        show=partial(_page, request, form, None),
        save=lambda: offer_add(
            shop=request.shop, item=form.cleaned_data["item"], supplier=_chosen(request, form),
            facts=form.facts, preferred=form.cleaned_data["preferred"], **who(request),
        ),
        done=partial(_done, request, "is entered"),
    )  # fmt: skip


@prices_view()
def offer_edit(request: SignedInRequest, key: int) -> HttpResponse:
    """Change an offer."""
    row = found_or_404(offer_of, request.shop, key)
    form = _form(request, row, preferred=is_preferred(row), auto_id="offer-%s")
    form.written_by = partial(last_writer, request.shop, [row])
    return form_answer(
        request,
        form,
        show=partial(_page, request, form, row),
        save=lambda: offer_change(
            row=row, supplier=_chosen(request, form), facts=form.facts,
            preferred=form.cleaned_data["preferred"], **who(request),
        ),
        done=partial(_done, request, "is saved"),
    )  # fmt: skip


@prices_view("POST")
def offer_prefer_now(request: SignedInRequest, key: int) -> HttpResponse:
    """Let an offer be the one that is taken."""
    row = offer_prefer(row=found_or_404(offer_of, request.shop, key), **who(request))
    return _done(request, "is preferred", row)


@prices_view("POST")
def offer_delete_now(request: SignedInRequest, key: int) -> HttpResponse:
    """Take an offer out; Undo brings it back."""
    row = found_or_404(offer_of, request.shop, key)
    said = f"The offer of {row.supplier} for {row.goods}"
    offer_delete(row=row, **who(request))
    messages.success(request, f"{said} is taken out. Undo brings it back.")
    return back()


def _form(request: SignedInRequest, row: Offer | None, **kwargs: Any) -> OfferForm:
    return OfferForm(
        posted(request),
        suppliers=suppliers_of(request.shop),
        usual=usual_currency(request.shop),
        row=row,
        **kwargs,
    )


def _chosen(request: SignedInRequest, form: OfferForm) -> Supplier:
    return found_or_404(supplier_of, request.shop, form.cleaned_data["supplier"])


def _done(request: SignedInRequest, said: str, row: Offer) -> HttpResponse:
    messages.success(request, f"The offer of {row.supplier} for {row.goods} {said}.")
    return back(f"offer-{row.pk}")


def _page(
    request: SignedInRequest, form: OfferForm, row: Offer | None, *, status: int = 200
) -> HttpResponse:
    here = "shop-offer-new" if row is None else "shop-offer"
    context = {
        "form": form,
        "row": row,
        "items": known_names(request.shop) if row is None else [],
        "has_suppliers": bool(suppliers_of(request.shop)),
        "action": reverse(f"fronts:{here}", args=[row.pk] if row else []),
    }
    return render_page(request, PAGE, context, status=status)
