"""The demo shop's jobs: a kitchen with the shop's own ways and lists, and a metric one beside it.

The second is one that came from a shop that works in millimetres: it says its unit, numbers and
hardware itself, and the shop's own stay as they are.
"""

from dataclasses import replace
from datetime import datetime

from django.conf import settings
from django.db import transaction
from django.utils import timezone

from fronts.jobfile import read
from fronts.models import ShopStandard
from fronts.rules.kitchen import Kitchen
from fronts.rules.standards import EMPTY
from fronts.services.boxes_made_of import boxes_made_of_set
from fronts.services.demo_offers import demo_offers
from fronts.services.demo_stock import demo_stock
from fronts.services.hardware import ITEM_FACTS, items_set
from fronts.services.imports import job_import
from fronts.services.standards import standard_set
from fronts.services.stock import stock_set
from shopjobs.models import Job, Person, Role, Shop
from shopjobs.services.demo import demo_shop

FILE = "fixtures/demo.job.json"
METRIC_FILE = "fixtures/demo-metric.job.json"


@transaction.atomic
def load_demo() -> Job | None:
    """Load the demo kitchens into the demo shop; the first's job, None where that was done before.

    What people did to them since then, deleting included, stays done.
    """
    at = timezone.now()
    shop = demo_shop(at=at)
    job = demo_kitchen(kitchen=_kitchen(FILE), shop=shop, at=at)
    if job is not None:
        owner = _owner_of(shop)
        job_import(kitchen=_kitchen(METRIC_FILE), shop=shop, at=at, by=owner)
        if owner is not None:
            demo_stock(shop=shop, at=at, by=owner)
    return job


@transaction.atomic
def demo_kitchen(*, kitchen: Kitchen, shop: Shop, at: datetime) -> Job | None:
    """Make the file's ways and lists the shop's own, and a job that follows them."""
    if ShopStandard.objects.filter(shop=shop).exists():
        return None
    owner = _owner_of(shop)
    standard_set(owner=shop, standard=kitchen.standard, at=at, by=owner)
    stock_set(owner=shop, stock=kitchen.stock, at=at, by=owner)
    for kind, (fact, _) in ITEM_FACTS.items():
        items = getattr(kitchen.hardware, fact.name)
        items_set(owner=shop, kind=kind, items=items, at=at, by=owner)
    boxes_made_of_set(owner=shop, boxes=kitchen.boxes_made_of, at=at, by=owner)
    demo_offers(shop=shop, at=at, by=owner)
    silent = replace(kitchen, standard=EMPTY)
    return job_import(kitchen=silent, shop=shop, at=at, by=owner)


def _kitchen(file: str) -> Kitchen:
    return read((settings.BASE_DIR / file).read_text(encoding="utf-8"))


def _owner_of(shop: Shop) -> Person | None:
    return Person.objects.filter(shop=shop, role=Role.OWNER).first()
