"""A count by hand as its two forms save it; what somebody did meanwhile is told first."""

from django.http import HttpResponse

from fronts.models import Goods
from fronts.pages.shared.form_answer import Show
from fronts.pages.shared.job_view import who
from fronts.pages.shelf.forms import CountForm
from fronts.services.saving import AskFirst
from fronts.services.shelf import CountedBefore, stock_count
from shopjobs.access import SignedInRequest


def as_counted(request: SignedInRequest, form: CountForm, item: str) -> Goods:
    """Keep what was counted of an item."""
    return stock_count(
        shop=request.shop, item=item, amount=form.cleaned_data["amount"],
        reason=form.cleaned_data["reason"], seen=form.last_seen, **who(request),
    )  # fmt: skip


def told_first(form: CountForm, asks: AskFirst, show: Show) -> HttpResponse:
    """The form as it was typed, with what changed since it was shown; saved again, it holds."""
    form.add_error(None, asks.message)
    form.has_clashes = True
    if isinstance(asks, CountedBefore):
        form.seen_now = str(asks.last)
    return show(status=409)
