"""Suppliers one by one: entered, changed, taken out."""

from functools import partial

from django.contrib import messages
from django.http import HttpResponse
from django.urls import reverse

from fronts.models import Supplier
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import found_or_404, posted, who
from fronts.pages.suppliers.forms.suppliers import SupplierForm
from fronts.pages.suppliers.views.guard import back, prices_view
from fronts.selectors.offers import supplier_of
from fronts.services.suppliers import supplier_delete, supplier_save
from shopjobs.access import SignedInRequest
from shopjobs.edit_conflict import last_writer
from shopjobs.pages import render_page

PAGE = "fronts/suppliers/supplier.html"


@prices_view()
def supplier_new(request: SignedInRequest) -> HttpResponse:
    """Enter a supplier."""
    return _answer(request, SupplierForm(posted(request), auto_id="supplier-new-%s"), None)


@prices_view()
def supplier_edit(request: SignedInRequest, key: int) -> HttpResponse:
    """Change what is known of a supplier."""
    row = found_or_404(supplier_of, request.shop, key)
    form = SupplierForm(posted(request), row=row, auto_id="supplier-%s")
    form.written_by = partial(last_writer, request.shop, [row])
    return _answer(request, form, row)


@prices_view("POST")
def supplier_delete_now(request: SignedInRequest, key: int) -> HttpResponse:
    """Take a supplier out with all offers; Undo brings them back."""
    row = found_or_404(supplier_of, request.shop, key)
    name = row.name
    count = supplier_delete(row=row, **who(request))
    offers = f", with {count} offer{'' if count == 1 else 's'}" if count else ""
    messages.success(request, f"{name} is taken out{offers}. Undo brings that back.")
    return back("suppliers")


def _answer(request: SignedInRequest, form: SupplierForm, row: Supplier | None) -> HttpResponse:
    return form_answer(
        request,
        form,
        show=partial(_page, request, form, row),
        save=lambda: supplier_save(shop=request.shop, facts=form.facts, row=row, **who(request)),
        done=partial(_done, request),
    )


def _done(request: SignedInRequest, row: Supplier) -> HttpResponse:
    messages.success(request, f"{row.name} is saved.")
    return back("suppliers")


def _page(
    request: SignedInRequest, form: SupplierForm, row: Supplier | None, *, status: int = 200
) -> HttpResponse:
    here = "shop-supplier-new" if row is None else "shop-supplier"
    context = {
        "form": form,
        "row": row,
        "action": reverse(f"fronts:{here}", args=[row.pk] if row else []),
        "heading": "New supplier" if row is None else form.initial["name"],
    }
    return render_page(request, PAGE, context, status=status)
