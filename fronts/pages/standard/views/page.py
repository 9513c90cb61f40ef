"""One short page of the shop's standard: shown, saved, drawn while one types."""

from collections.abc import Sequence
from functools import partial

from django.contrib import messages
from django.db.models import Model
from django.http import HttpResponse
from django.shortcuts import render
from django.utils.safestring import SafeString, mark_safe
from django.views.decorators.http import require_http_methods

from fronts.models import BoxesMadeOf, ShopNumber
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import posted, who
from fronts.pages.standard.forms.held import BOXES, held_by
from fronts.pages.standard.forms.short_pages import SHORT_PAGES, ShortPage
from fronts.pages.standard.forms.ways import WaysForm, kind_of
from fronts.rules.practice import NUMBER_NAMES, TABLES
from fronts.services.standards import shared_level_of
from fronts.services.ways import Ways, ways_set
from shopjobs.access import SignedInRequest, in_turn, needs
from shopjobs.edit_conflict import last_writer
from shopjobs.models import Shop
from shopjobs.pages import go_to, render_page

PAGE = "fronts/standard/page.html"
DRAWING = f"{PAGE}#preview"


@needs("standard")
@require_http_methods(["GET", "HEAD", "POST"])
@in_turn
def short_page(request: SignedInRequest, topic: ShortPage) -> HttpResponse:
    """Show and change what one page says of how this shop works."""
    level = shared_level_of(request.shop)
    form = WaysForm(posted(request), page=topic, held=held_by(request.shop),
                    auto_id="standard-%s")  # fmt: skip
    form.written_by = partial(_written_by, request.shop, level)
    return form_answer(
        request,
        form,
        show=partial(_page, request, form),
        save=lambda: ways_set(
            shop=request.shop, ways=_ways(form), what=f"standard: {topic.title}", **who(request)
        ),
        done=lambda _: _saved(request, topic),
    )


@needs("standard")
@require_http_methods(["GET"])
def short_page_drawing(request: SignedInRequest, topic: ShortPage) -> HttpResponse:
    """The page's drawing with what is typed, as far as it can be read; nothing is kept."""
    held = held_by(request.shop)
    form = WaysForm(request.GET, page=topic, held=held, auto_id="standard-%s")
    form.is_merged = False
    drawing = _drawing(form)
    return render(request, DRAWING, {"drawing": drawing, "waits": bool(form.errors), "oob": True})


def _page(request: SignedInRequest, form: WaysForm, *, status: int = 200) -> HttpResponse:
    pages = list(SHORT_PAGES.values())
    at = pages.index(form.page)
    context = {
        "form": form,
        "page": form.page,
        "drawing": _drawing(form),
        "before": pages[at - 1] if at else None,
        "after": pages[at + 1] if at + 1 < len(pages) else None,
    }
    return render_page(request, PAGE, context, status=status)


def _drawing(form: WaysForm) -> SafeString:
    return mark_safe(form.page.draw(form.figures()))  # noqa: S308 - drawn by us, words escaped


def _saved(request: SignedInRequest, topic: ShortPage) -> HttpResponse:
    messages.success(request, f"{topic.title}: saved.")
    return go_to(request, "fronts:shop-standard-page", topic.path)


def _ways(form: WaysForm) -> Ways:
    kinds = form.asks_of
    return Ways(
        standard=form.entered if "standard" in kinds else None,
        boxes=form.boxes if "boxes" in kinds else None,
        numbers=form.given(NUMBER_NAMES),
        tables=form.given(TABLES),
    )


def _written_by(shop: Shop, level: Model, name: str) -> str:
    """Who saved a field last; each of the numbers is a row of its own."""
    rows: Sequence[Model]
    match kind_of(name):
        case "numbers":
            rows = list(ShopNumber.objects.filter(shop=shop, job=None, name=name))
        case "boxes":
            rows = list(BoxesMadeOf.objects.filter(shop=shop, job=None))
        case _:
            rows = [level]
    return last_writer(shop, rows, name.removeprefix(BOXES))
