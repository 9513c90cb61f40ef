"""What the shop buys for some of its jobs: looked at, and taken away as files for a supplier."""

from typing import Any

from django.http import HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_safe

from fronts.pages.buy.rows.files import purchase_csv, purchase_xlsx
from fronts.pages.buy.rows.jobs import job_choices
from fronts.pages.buy.rows.purchases import bought_rows
from fronts.pages.shared.purchase_asked import Asked, purchase_asked, purchase_from
from shopjobs.access import SignedInRequest, needs
from shopjobs.models import Person, Shop
from shopjobs.pages import render_page

PAGE = "fronts/buy/page.html"


@needs("prices")
@require_safe
def buy(request: SignedInRequest) -> HttpResponse:
    """Show what the chosen jobs need, by supplier; without any, the jobs to choose from."""
    asked = purchase_asked(request.shop, request.GET)
    status = 422 if asked.faults else 200
    return render_page(request, PAGE, shown(request.shop, request.user, asked), status=status)


def shown(shop: Shop, person: Person, asked: Asked) -> dict[str, Any]:
    """All that the page shows a person of the shop."""
    return {
        "asked": asked,
        "jobs": job_choices(person, asked.bought.jobs),
        "chosen": asked.bought.jobs,
        "bought": bought_rows(asked, shop.name, timezone.localdate()),
    }


@needs("prices")
@require_safe
def buy_csv(request: SignedInRequest, key: int) -> HttpResponse:
    """What one supplier is asked for, as a file for a spreadsheet."""
    return purchase_csv(purchase_from(request.shop, request.GET, key))


@needs("prices")
@require_safe
def buy_xlsx(request: SignedInRequest, key: int) -> HttpResponse:
    """The same as a spreadsheet's own file."""
    return purchase_xlsx(purchase_from(request.shop, request.GET, key))
