"""One thing in stock: where it is, what happened to it; counted, laid by, given back, used."""

from collections.abc import Iterable
from functools import partial

from django.contrib import messages
from django.core.paginator import Paginator
from django.http import HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_POST, require_safe

from fronts.models import Goods
from fronts.models.shelf import LAID_BY
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import found_or_404, who
from fronts.pages.shared.row_key import row_key
from fronts.pages.shelf.forms import CountForm, MoveForm
from fronts.pages.shelf.rows.balances import ForJob, stock_row
from fronts.pages.shelf.rows.ledger import ledger_row
from fronts.pages.shelf.views.counted import as_counted, told_first
from fronts.selectors.shelf import (
    Balance,
    balance_of,
    entries_of,
    goods_of,
    last_entry_of,
    unit_of,
)
from fronts.services.shelf import stock_move
from shopjobs.access import SignedInRequest, needs, signed_in
from shopjobs.forms.house import HouseForm
from shopjobs.models import Job
from shopjobs.pages import render_page
from shopjobs.selectors import jobs_of

PAGE = "fronts/shelf/item.html"
A_PAGE = 50


@signed_in
@require_safe
def shelf_item(request: SignedInRequest, goods_id: int) -> HttpResponse:
    """Show where a thing is, and what happened to it."""
    goods = found_or_404(goods_of, request.shop, goods_id)
    return _page(request, goods, HouseForm())


@needs("order")
@require_POST
def shelf_count(request: SignedInRequest, goods_id: int) -> HttpResponse:
    """Say how many there are in all."""
    goods = found_or_404(goods_of, request.shop, goods_id)
    form = CountForm(request.POST, unit=unit_of(goods), auto_id="count-%s")
    show = partial(_page, request, goods, form)
    return form_answer(
        request,
        form,
        show=show,
        save=lambda: as_counted(request, form, goods.name),
        done=partial(_done, request, "is counted"),
        ask=lambda asks: told_first(form, asks, show),
    )


@needs("order")
@require_POST
def shelf_move(request: SignedInRequest, goods_id: int) -> HttpResponse:
    """Lay some of it by for a job, give it back, or take it out for the job."""
    goods = found_or_404(goods_of, request.shop, goods_id)
    form = _move_form(request, balance_of(goods))
    return form_answer(
        request,
        form,
        show=partial(_page, request, goods, form),
        save=partial(_moved, request, goods, form),
        done=partial(_done, request, "is moved"),
    )


def _moved(request: SignedInRequest, goods: Goods, form: MoveForm) -> Goods:
    job = Job.with_deleted.get(shop=request.shop, pk=form.cleaned_data["job"])
    job.shop = request.shop
    amounts = [(goods, form.amount)]
    stock_move(kind=form.cleaned_data["kind"], job=job, amounts=amounts, **who(request))
    return goods


def _move_form(request: SignedInRequest, balance: Balance) -> MoveForm:
    """The form that was sent; what is laid by for a job that was deleted may be given back."""
    jobs = {job.pk: job for job in [*_open_jobs(request), *(job for job, _ in balance.laid_by)]}
    said = request.POST.get("job", "")
    is_row = request.POST.get("kind") != LAID_BY and row_key(said) is not None
    auto_id = f"laid-by-{said}-%s" if is_row else "lay-by-%s"
    return MoveForm(request.POST, unit=balance.unit, jobs=jobs.values(), auto_id=auto_id)


def _open_jobs(request: SignedInRequest) -> Iterable[Job]:
    return jobs_of(request.user).filter(archived_at=None)


def _done(request: SignedInRequest, said: str, goods: Goods) -> HttpResponse:
    messages.success(request, f"{goods} {said}.")
    return redirect("fronts:shop-shelf-item", goods.pk)


def _page(
    request: SignedInRequest, goods: Goods, form: HouseForm, *, status: int = 200
) -> HttpResponse:
    balance, last = balance_of(goods), last_entry_of(goods)
    page = Paginator(entries_of(goods), A_PAGE).get_page(request.GET.get("page"))
    row = stock_row(balance)
    context = {
        "row": row,
        "form": form,
        "seen": "" if last is None else last.pk,
        "count": form if isinstance(form, CountForm) else _count_form(balance),
        "lay_by": form if _is_of(form, None) else _lay_by_form(request, balance),
        "laid_by": [
            (each, form if _is_of(form, each) else _row_form(balance, each))
            for each in row.for_jobs
        ],
        "page": page,
        "steps": [ledger_row(entry, balance.unit) for entry in page],
    }
    return render_page(request, PAGE, context, status=status)


def _is_of(form: HouseForm, held: ForJob | None) -> bool:
    """Whether a form that was sent moves what is laid by for a job; without one, what is free."""
    if not isinstance(form, MoveForm):
        return False
    lays_by = form.data.get("kind") == LAID_BY
    return lays_by if held is None else not lays_by and form.data.get("job") == str(held.job.pk)


def _count_form(balance: Balance) -> CountForm:
    return CountForm(unit=balance.unit, auto_id="count-%s")


def _lay_by_form(request: SignedInRequest, balance: Balance) -> MoveForm:
    return MoveForm(unit=balance.unit, jobs=_open_jobs(request), auto_id="lay-by-%s")


def _row_form(balance: Balance, held: ForJob) -> MoveForm:
    """To give back what is laid by for a job, or use it: all of it where nobody says less."""
    return MoveForm(
        unit=balance.unit, jobs=[held.job], initial={"amount": held.number},
        auto_id=f"laid-by-{held.job.pk}-%s",
    )  # fmt: skip
