"""The shop's own page of habits: its standard, boxes, numbers and tables."""

from collections.abc import Mapping, Sequence
from functools import partial
from typing import Any

from django.contrib import messages
from django.db.models import Model
from django.http import HttpResponse
from django.views.decorators.http import require_http_methods

from fronts.models import BoxesMadeOf, ShopNumber
from fronts.pages.shared.boxes_form import BoxesForm
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import who
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.pages.shared.standard_form import StandardForm
from fronts.pages.standard.forms.numbers import NumbersForm
from fronts.pages.standard.forms.tables import TablesForm
from fronts.selectors.standards import standard_levels
from fronts.services.boxes_made_of import boxes_made_of_set
from fronts.services.standards import shared_level_of, standard_set, tables_set
from fronts.services.stock import practice_set
from fronts.snapshot.hardware import bands_in_force, boxes_made_of_in_force
from fronts.snapshot.stock import practice_in_force
from shopjobs.access import SignedInRequest, in_turn, needs
from shopjobs.edit_conflict import last_writer
from shopjobs.models import Shop
from shopjobs.pages import go_to, render_page

PAGE = "fronts/standard/page.html"
_HEADS = {
    "standard": "How fronts lie",
    "boxes": "Drawer boxes that are made",
    "numbers": "The shop's numbers",
    "tables": "Tables and materials",
}


@needs("standard")
@require_http_methods(["GET", "POST"])
@in_turn
def shop_standard(request: SignedInRequest) -> HttpResponse:
    """Show and change how this shop works; each of the forms is saved by itself."""
    name = request.POST.get("form", "")
    forms = _forms(request, name)
    changed = forms.get(name)
    show = partial(_page, request, forms, changed)
    if changed is None:
        return show()
    return form_answer(
        request,
        changed,
        show=show,
        save=partial(_save, request, name, changed),
        done=lambda _: _saved(request, name),
    )


def _forms(request: SignedInRequest, name: str) -> dict[str, KitchenForm]:
    """All forms of the page, the one of this name with what was sent."""
    shop = request.shop
    level = shared_level_of(shop)
    practice = practice_in_force(shop, level)

    def known(each: str) -> dict[str, Any]:
        data = request.POST if each == name else None
        return {"data": data, "unit": shop.unit, "auto_id": f"{each}-%s"}

    forms: dict[str, KitchenForm] = {
        "standard": StandardForm(
            levels=standard_levels(shop), bands=partial(bands_in_force, shop), **known("standard")
        ),
        "boxes": BoxesForm(boxes=boxes_made_of_in_force(shop), **known("boxes")),
        "numbers": NumbersForm(held=practice, **known("numbers")),
        "tables": TablesForm(held=practice, **known("tables")),
    }
    for each, rows in _rows(shop, level).items():
        forms[each].is_merged = True
        forms[each].written_by = partial(_written_by, shop, rows)
    return forms


def _page(
    request: SignedInRequest,
    forms: Mapping[str, KitchenForm],
    changed: KitchenForm | None,
    *,
    status: int = 200,
) -> HttpResponse:
    shown = [{"name": name, "head": _HEADS[name], "form": form} for name, form in forms.items()]
    context = {"forms": shown, "form": changed, "shop": request.shop}
    return render_page(request, PAGE, context, status=status)


def _saved(request: SignedInRequest, name: str) -> HttpResponse:
    messages.success(request, f"{_HEADS[name]}: saved.")
    return go_to(request, "fronts:shop-standard")


def _rows(shop: Shop, level: Model) -> dict[str, list[Model]]:
    """What each of the forms changes."""
    return {
        "standard": [level],
        "tables": [level],
        "boxes": list(BoxesMadeOf.objects.filter(shop=shop, job=None)),
        "numbers": list(ShopNumber.objects.filter(shop=shop, job=None)),
    }


def _written_by(shop: Shop, rows: Sequence[Model], name: str) -> str:
    """Who saved a field last; each of the numbers is a row of its own."""
    own = [row for row in rows if getattr(row, "name", name) == name]
    return last_writer(shop, own, name)


def _save(request: SignedInRequest, name: str, form: KitchenForm) -> None:
    shop, by_whom = request.shop, who(request)
    match name:
        case "standard":
            standard_set(owner=shop, standard=form.entered, **by_whom)
        case "boxes":
            boxes_made_of_set(owner=shop, boxes=form.entered, **by_whom)
        case "numbers":
            practice_set(owner=shop, values=form.values, **by_whom)
        case "tables":
            tables_set(owner=shop, **by_whom, **form.values)
