"""The demo shop's kitchen: read from its job file, with the ways and lists of the shop."""

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
from fronts.services.hardware import ITEM_FACTS, items_set
from fronts.services.imports import job_import
from fronts.services.standards import standard_set
from fronts.services.stock import stock_set
from shopjobs.models import Job, Person, Role, Shop
from shopjobs.services.demo import demo_shop

FILE = "fixtures/demo.job.json"


def load_demo() -> Job | None:
    """Load the demo kitchen into the demo shop; None where that was done before.

    What people did to it since then, deleting included, stays done.
    """
    at = timezone.now()
    kitchen = read((settings.BASE_DIR / FILE).read_text(encoding="utf-8"))
    return demo_kitchen(kitchen=kitchen, shop=demo_shop(at=at), at=at)


@transaction.atomic
def demo_kitchen(*, kitchen: Kitchen, shop: Shop, at: datetime) -> Job | None:
    """Make the file's ways and lists the shop's own, and a job that follows them."""
    if ShopStandard.objects.filter(shop=shop).exists():
        return None
    owner = Person.objects.filter(shop=shop, role=Role.OWNER).first()
    standard_set(owner=shop, standard=kitchen.standard, at=at, by=owner)
    stock_set(owner=shop, stock=kitchen.stock, at=at, by=owner)
    for kind, (fact, _) in ITEM_FACTS.items():
        items = getattr(kitchen.hardware, fact.name)
        items_set(owner=shop, kind=kind, items=items, at=at, by=owner)
    boxes_made_of_set(owner=shop, boxes=kitchen.boxes_made_of, at=at, by=owner)
    silent = replace(kitchen, standard=EMPTY)
    return job_import(kitchen=silent, shop=shop, at=at, by=owner)
