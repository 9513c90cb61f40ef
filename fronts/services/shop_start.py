"""What a shop starts with that works in millimetres: metric numbers of its own."""

from datetime import datetime

from fronts.models import ShopNumber, ShopStandard, Stock
from fronts.rules.metric import (
    METRIC_HINGES_BY_HEIGHT,
    METRIC_HINGES_BY_WEIGHT,
    METRIC_NUMBERS,
    METRIC_SLIDE_CLASSES,
    METRIC_STANDARD,
    METRIC_STOCK,
)
from fronts.services.standards import standard_set, tables_set
from fronts.services.stock import practice_set, stock_set
from shopjobs.models import Job, Person, Shop
from shopjobs.models.shop import Unit
from shopjobs.services.recording import recorded


@recorded
def shop_start(*, shop: Shop, at: datetime, by: Person | None = None) -> None:
    """Enter the metric numbers where the shop says nothing of its own yet.

    A shop that has jobs keeps what they were reckoned with: their figures stay as they are.
    """
    if shop.unit != Unit.MILLIMETRE or Job.with_deleted.filter(shop=shop).exists():
        return
    if not ShopStandard.objects.filter(shop=shop).exists():
        standard_set(owner=shop, standard=METRIC_STANDARD, at=at, by=by)
        tables_set(
            owner=shop,
            hinges_by_height=METRIC_HINGES_BY_HEIGHT,
            hinges_by_weight=METRIC_HINGES_BY_WEIGHT,
            slide_classes=METRIC_SLIDE_CLASSES,
            material="",
            frame_material="",
            at=at,
            by=by,
        )
    if not Stock.objects.filter(shop=shop, job=None).exists():
        stock_set(owner=shop, stock=METRIC_STOCK, at=at, by=by)
    if not ShopNumber.objects.filter(shop=shop, job=None).exists():
        practice_set(owner=shop, values=METRIC_NUMBERS, at=at, by=by)
