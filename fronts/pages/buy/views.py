"""What the shop buys for some of its jobs: looked at, and taken away as files for a supplier."""

from functools import partial
from typing import Any

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.utils import timezone
from django.views.decorators.http import require_POST, require_safe

from fronts.pages.buy.forms import LayByForm
from fronts.pages.buy.rows.files import purchase_csv, purchase_xlsx
from fronts.pages.buy.rows.from_stock import in_stock, value_of
from fronts.pages.buy.rows.jobs import job_choices
from fronts.pages.buy.rows.purchases import bought_rows
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import who
from fronts.pages.shared.purchase_asked import Asked, purchase_asked, purchase_from
from fronts.selectors.purchases import shares_of_stock
from fronts.services.shelf import shares_lay_by
from shopjobs.access import SignedInRequest, needs
from shopjobs.forms.house import HouseForm
from shopjobs.models import Person, Shop
from shopjobs.pages import render_page

PAGE = "fronts/buy/page.html"


@needs("prices")
@require_safe
def buy(request: SignedInRequest) -> HttpResponse:
    """Show what the chosen jobs need, by supplier; without any, the jobs to choose from."""
    asked = purchase_asked(request.shop, request.GET)
    return _page(request, asked, None, status=422 if asked.faults else 200)


def _page(
    request: SignedInRequest, asked: Asked, form: HouseForm | None, *, status: int = 200
) -> HttpResponse:
    context = shown(request.shop, request.user, asked, form)
    return render_page(request, PAGE, context, status=status)


@needs("prices")
@require_POST
def buy_lay_by(request: SignedInRequest) -> HttpResponse:
    """Lay by what is free in stock for the chosen jobs, all of what was shown or one item."""
    asked = purchase_asked(request.shop, request.POST)
    shares = shares_of_stock(request.shop, asked.bought.buying)
    form = LayByForm(request.POST, now={value_of(share): share for share in shares})
    return form_answer(
        request,
        form,
        show=partial(_page, request, asked, form),
        save=lambda: shares_lay_by(
            shop=request.shop, jobs=asked.bought.jobs, shares=form.shares, **who(request)
        ),
        done=partial(_laid_by, request, asked),
    )


def _laid_by(request: SignedInRequest, asked: Asked, _: object) -> HttpResponse:
    messages.success(request, "It is laid by. What is left to buy is reckoned anew.")
    return redirect(f"{reverse('fronts:shop-buy')}?{asked.query}")


def shown(
    shop: Shop, person: Person, asked: Asked, form: HouseForm | None = None
) -> dict[str, Any]:
    """All that the page shows a person of the shop."""
    return {
        "asked": asked,
        "form": form or HouseForm(),
        "in_stock": in_stock(shares_of_stock(shop, asked.bought.buying)),
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
