"""The shop's own page."""

from functools import partial

from django.contrib import messages
from django.http import HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_http_methods

from shopjobs.access import SignedInRequest, in_turn, needs
from shopjobs.edit_conflict import last_writer
from shopjobs.forms.house import unsaved
from shopjobs.forms.shops import ShopForm
from shopjobs.models import Shop
from shopjobs.pages import go_to, render_page
from shopjobs.services.refused import Refused
from shopjobs.services.shops import shop_change


@needs("standard")
@require_http_methods(["GET", "POST"])
@in_turn
def shop_page(request: SignedInRequest) -> HttpResponse:
    """Show and change the shop's name, unit, step and paper."""
    form = ShopForm(request.POST if request.method == "POST" else None, shop=request.shop)
    form.written_by = partial(last_writer, request.shop, [request.shop])
    if form.is_bound and _changed(request, form):
        messages.success(request, "The shop's settings are saved.")
        return go_to(request, "shopjobs:shop-page")
    return render_page(
        request,
        "shopjobs/shop_page.html",
        {"form": form},
        partial="shop-form",
        status=unsaved(form),
    )


def _changed(request: SignedInRequest, form: ShopForm) -> bool:
    if not form.is_valid():
        return False
    try:
        # Another copy of the row, so that the page's heading keeps what is saved.
        fresh = Shop.objects.get(pk=request.shop.pk)
        shop_change(shop=fresh, by=request.user, at=timezone.now(), **form.cleaned_data)
    except Refused as refused:
        form.refuse(refused)
        return False
    return True
