"""The purchase sheet for a supplier, as PDF on the shop's paper."""

from typing import cast

from django.http import HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_safe

from fronts.pages.shared.file_answers import inline
from fronts.pages.shared.purchase_asked import purchase_from
from fronts.pages.sheets.views.refused import not_printed
from fronts.sheets import purchase
from fronts.sheets.pdf import Paper, PrintingError, render
from fronts.sheets.places import printing_place
from shopjobs.access import SignedInRequest, needs


@needs("prices")
@require_safe
def purchase_sheet(request: SignedInRequest, key: int) -> HttpResponse:
    """What one supplier is asked for, to print or to send."""
    shop = request.shop
    words = purchase_from(shop, request.GET, key)
    html = purchase.content(words, shop.name, timezone.localdate())
    try:
        with printing_place(shop.pk):
            content = render(html, cast(Paper, str(shop.paper)))
    except PrintingError as lacking:
        return not_printed(request, lacking)
    return inline(content, "application/pdf", f"{words.file_name}.pdf")
