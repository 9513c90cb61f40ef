"""All that is in stock, or what is laid by for one job; a first count of something."""

from collections.abc import Mapping
from functools import partial
from typing import Any

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.views.decorators.http import require_safe

from fronts.models import Goods
from fronts.models.shelf import USED
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.pages.shared.row_key import row_key
from fronts.pages.shelf.forms import NewCountForm
from fronts.pages.shelf.rows.balances import stock_groups
from fronts.pages.shelf.views.counted import as_counted, told_first
from fronts.selectors.offers import known_names, listed_items
from fronts.selectors.shelf import balances_of, laid_by_for, unit_named
from fronts.services.shelf import stock_move
from shopjobs.access import SignedInRequest, needs, signed_in
from shopjobs.models import Job
from shopjobs.pages import render_page

PAGE, NEW = "fronts/shelf/page.html", "fronts/shelf/new.html"


@signed_in
@require_safe
def shelf(request: SignedInRequest) -> HttpResponse:
    """Show what is in stock, by group."""
    balances, words = balances_of(request.shop), request.GET.get("q", "")
    job = _job_asked(request)
    context = {
        "words": words,
        "of_job": job,
        "has_any": bool(balances),
        "laid_by": job is not None and any(each.at(job) for each in balances),
        "groups": stock_groups(balances, listed_items(request.shop), words, job),
    }
    return render_page(request, PAGE, context)


def _job_asked(request: SignedInRequest) -> Job | None:
    """The job that an address narrows the list to."""
    said = request.GET.get("job", "")
    if not said:
        return None
    key = row_key(said)
    if key is None:
        raise Http404
    return found_or_404(Job.objects.filter(shop=request.shop).get, pk=key)


@job_view("order", "POST")
def shelf_use_all(request: SignedInRequest, job: Job) -> HttpResponse:
    """Take out all that is laid by for a job: it is used there."""
    amounts = laid_by_for(job)
    if amounts:
        stock_move(kind=USED, job=job, amounts=amounts, **who(request))
        count = f"{len(amounts)} item{'' if len(amounts) == 1 else 's'}"
        said = f"Took {count} out of stock for {job}. Undo beside its order takes that back."
        messages.success(request, said)
    return redirect(f"{reverse('fronts:shop-shelf')}?job={job.pk}")


@needs("order")
def shelf_count_new(request: SignedInRequest) -> HttpResponse:
    """Count something by its name, whether or not any of it was ever in stock."""
    sent: Mapping[str, Any] = request.POST if request.method == "POST" else request.GET
    item = sent.get("item", "")
    form = NewCountForm(
        posted(request), unit=unit_named(request.shop, item), initial={"item": item},
        auto_id="stock-new-%s",
    )  # fmt: skip
    return form_answer(
        request,
        form,
        show=partial(_new_page, request, form),
        save=lambda: as_counted(request, form, form.cleaned_data["item"]),
        done=partial(_done, request),
        ask=lambda asks: told_first(form, asks, partial(_new_page, request, form)),
    )


def _done(request: SignedInRequest, goods: Goods) -> HttpResponse:
    messages.success(request, f"{goods} is counted.")
    return redirect("fronts:shop-shelf-item", goods.pk)


def _new_page(request: SignedInRequest, form: NewCountForm, *, status: int = 200) -> HttpResponse:
    context = {"form": form, "items": known_names(request.shop), "seen": form.seen_now}
    return render_page(request, NEW, context, status=status)
