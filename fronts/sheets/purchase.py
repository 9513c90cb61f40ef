"""The purchase sheet: all that one supplier is asked for, for one job or several together."""

from datetime import date

from django.template.loader import render_to_string

from fronts.figures.purchase import PurchaseWords


def content(words: PurchaseWords, shop: str, printed: date) -> str:
    """The sheet as HTML; `shop` is who buys."""
    context = {"words": words, "shop": shop, "printed": printed}
    return render_to_string("sheets/purchase.html", context)
