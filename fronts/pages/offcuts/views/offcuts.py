"""The rack: what lies there, free or laid by; pieces entered, changed, thrown away."""

from functools import partial

from django.contrib import messages
from django.core.paginator import Paginator
from django.http import HttpResponse
from django.urls import reverse
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from fronts.models import Offcut
from fronts.pages.offcuts.forms.offcuts import AwayForm, OffcutForm
from fronts.pages.offcuts.rows.offcuts import offcut_groups
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import found_or_404, posted, who
from fronts.selectors.offcuts import (
    found_in,
    gone_lately,
    materials_kept,
    offcut_of,
    offcuts_of,
)
from fronts.services.offcuts import offcut_change, offcut_enter, offcut_throw_away
from shopjobs.access import SignedInRequest, in_turn, needs
from shopjobs.edit_conflict import last_writer
from shopjobs.pages import go_to, render_page

PAGE, ONE = "fronts/offcuts/page.html", "fronts/offcuts/offcut.html"
A_PAGE = 60
GONE_SHOWN = 12
LONGEST_WORDS = 200


@needs("measure")
@require_GET
def offcuts(request: SignedInRequest) -> HttpResponse:
    """Show the pieces that are looked for, by material and thickness."""
    shop, words = request.shop, request.GET.get("q", "")[:LONGEST_WORDS].replace("\0", "")
    rows = found_in(offcuts_of(shop), words)
    page = Paginator(rows, A_PAGE).get_page(request.GET.get("page", ""))
    context = {
        "words": words,
        "page": page,
        "pages": page.paginator.get_elided_page_range(page.number, on_each_side=2, on_ends=1),
        "groups": list(offcut_groups(page.object_list, shop.unit)),
        "gone": list(gone_lately(shop, GONE_SHOWN)),
    }
    return render_page(request, PAGE, context, partial="listed")


@needs("edit_kitchen")
@require_http_methods(["GET", "HEAD", "POST"])
@in_turn
def offcut_new(request: SignedInRequest) -> HttpResponse:
    """Enter a piece that lies there."""
    form = OffcutForm(posted(request), shop=request.shop, auto_id="offcut-new-%s")
    return form_answer(
        request,
        form,
        show=partial(_page, request, form, None),
        save=lambda: offcut_enter(
            shop=request.shop, facts=form.facts, job=form.cleaned_data["job"], **who(request)
        ),
        done=partial(_done, request, "is entered. Write that on it"),
    )


@needs("edit_kitchen")
@require_http_methods(["GET", "HEAD", "POST"])
@in_turn
def offcut_edit(request: SignedInRequest, key: int) -> HttpResponse:
    """Change what is known of a piece, or for which job it is laid by."""
    row = found_or_404(offcut_of, request.shop, key)
    form = OffcutForm(posted(request), shop=request.shop, row=row, auto_id="offcut-%s")
    form.written_by = partial(last_writer, request.shop, [row])
    return form_answer(
        request,
        form,
        show=partial(_page, request, form, row),
        save=lambda: offcut_change(
            row=row, facts=form.facts, job=form.cleaned_data["job"], **who(request)
        ),
        done=partial(_done, request, "is saved"),
    )


@needs("edit_kitchen")
@require_POST
@in_turn
def offcut_away(request: SignedInRequest, key: int) -> HttpResponse:
    """Take a piece off the rack; Undo brings it back."""
    row = found_or_404(offcut_of, request.shop, key)
    form = AwayForm(request.POST, auto_id="away-%s")
    return form_answer(
        request,
        form,
        show=partial(_page, request, None, row, form),
        save=lambda: offcut_throw_away(row=row, why=form.cleaned_data["why"], **who(request)),
        done=lambda _: _done(request, "is off the rack. Undo brings it back", row),
    )


def _done(request: SignedInRequest, said: str, row: Offcut) -> HttpResponse:
    messages.success(request, f"{row.label} {said}.")
    return go_to(request, "fronts:shop-offcuts")


def _page(
    request: SignedInRequest,
    form: OffcutForm | None,
    row: Offcut | None,
    away: AwayForm | None = None,
    *,
    status: int = 200,
) -> HttpResponse:
    here = "shop-offcut-new" if row is None else "shop-offcut"
    context = {
        "action": reverse(f"fronts:{here}", args=[row.pk] if row else []),
        "form": form or OffcutForm(shop=request.shop, row=row, auto_id="offcut-%s"),
        "away": away or AwayForm(auto_id="away-%s"),
        "row": row,
        "materials": materials_kept(request.shop),
    }
    return render_page(request, ONE, context, status=status)
