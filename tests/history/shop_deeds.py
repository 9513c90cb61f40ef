"""Things that an owner does to what holds for all jobs, and to people."""

import random
from collections.abc import Callable, Mapping
from decimal import Decimal

from fronts.models import Offcut, Offer, Supplier
from fronts.rules.box_facts import BoxesMadeOf
from fronts.rules.items import HandleItem
from fronts.rules.money import Price
from fronts.rules.offcuts import OffcutFacts
from fronts.rules.offers import OfferFacts
from fronts.rules.practice import inches
from fronts.services.boxes_made_of import boxes_made_of_set
from fronts.services.hardware import items_set
from fronts.services.offcuts import offcut_change, offcut_enter, offcut_throw_away
from fronts.services.offers import offer_add, offer_change
from fronts.services.standards import tables_set
from fronts.services.stock import practice_set
from fronts.services.suppliers import supplier_delete, supplier_save
from shopjobs.models import Job, Person, Role, Shop
from shopjobs.services.people import person_change, person_deactivate, person_reactivate
from shopjobs.services.shops import shop_change
from tests.factories import NOW
from tests.history.date_deeds import days_of_shop
from tests.saying import standard_set, stock_set
from tests.stocked import counted

Deed = Callable[[Job, Person, random.Random], object]


def standard_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """Another gap, for every job."""
    gap = inches(1 + chance.randrange(9), 32)
    standard_set(owner=job.shop, gap_between=gap, at=NOW, by=by)


def stock_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """Other lengths on the shelf."""
    lengths = [inches(1), inches(2 + chance.randrange(9))]
    stock_set(owner=job.shop, screw_lengths=lengths, at=NOW, by=by)


def hardware_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """Other knobs, in another order."""
    codes = chance.sample("ABCDE", 3)
    items = [HandleItem(code, projection=inches(1 + chance.randrange(9), 8)) for code in codes]
    items_set(owner=job.shop, kind=HandleItem, items=items, at=NOW, by=by)


def boxes_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """Thicker sides."""
    boxes = BoxesMadeOf(side=inches(1 + chance.randrange(9), 16))
    boxes_made_of_set(owner=job.shop, boxes=boxes, at=NOW, by=by)


def numbers_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """Another ledge, or the usual one."""
    ledge = chance.choice([None, inches(1, 4), inches(3, 8)])
    practice_set(owner=job.shop, values={"ledge_thickness": ledge}, at=NOW, by=by)


def tables_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """Another table of hinges, for every job."""
    set_tables(job.shop, by, chance)


def facts_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """Another name over the door."""
    shop, name = job.shop, f"Shop {chance.randrange(10**6)}"
    shop_change(
        shop=shop, name=name, unit=shop.unit, step=shop.step, paper=shop.paper, by=by, at=NOW
    )


def offer_of_supplier(job: Job, by: Person, chance: random.Random) -> None:
    """Another price, or an offer more, now and then preferred; a supplier where there is none."""
    row = Supplier.objects.filter(shop=job.shop).order_by("pk").first()
    if row is None:
        supplier_save(shop=job.shop, facts={"name": "Ash Yard"}, by=by, at=NOW)
        return
    code = chance.choice("AB")
    asked = OfferFacts(Price(Decimal(1 + chance.randrange(99)), "EUR"), code=code)
    held = Offer.objects.filter(supplier=row, code=code).select_related("goods__shop").first()
    if held is None:
        offer_add(shop=job.shop, item="bumper", supplier=row, facts=asked, by=by, at=NOW)
    else:
        chosen = chance.random() < 1 / 2
        offer_change(row=held, supplier=row, facts=asked, preferred=chosen, by=by, at=NOW)


def supplier_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """A supplier goes with all offers, or comes."""
    rows = list(Supplier.objects.filter(shop=job.shop).select_related("shop"))
    if rows:
        supplier_delete(row=chance.choice(rows), by=by, at=NOW)
    else:
        supplier_save(shop=job.shop, facts={"name": "Cedar Yard"}, by=by, at=NOW)


def offcut_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """A piece is measured again, laid by or not, or goes; entered where there is none."""
    row = Offcut.objects.filter(shop=job.shop, gone_at=None).first()
    facts = OffcutFacts("birch", inches(3, 4), inches(20 + chance.randrange(9)), inches(9))
    if row is None:
        offcut_enter(shop=job.shop, facts=facts, job=None, by=by, at=NOW)
    elif chance.random() < 1 / 4:
        offcut_throw_away(row=row, why="split", by=by, at=NOW)
    else:
        offcut_change(row=row, facts=facts, job=chance.choice([None, job]), by=by, at=NOW)


def count_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """Another number of something on the shelf."""
    counted(job.shop, by, chance.randrange(1, 90))


def role_of_person(job: Job, by: Person, chance: random.Random) -> None:
    """Somebody becomes the office, or an installer."""
    person = _another(by)
    role = Role.INSTALLER if person.role == Role.OFFICE else Role.OFFICE
    name = f"Name {chance.randrange(10**6)}"
    person_change(person=person, first_name=name, last_name="", role=role, by=by, at=NOW)


def account_of_person(job: Job, by: Person, chance: random.Random) -> None:
    """An account is closed, or opened again."""
    person = _another(by)
    if person.is_active:
        person_deactivate(person=person, by=by, at=NOW)
    else:
        person_reactivate(person=person, by=by, at=NOW)


def _another(by: Person) -> Person:
    return Person.objects.filter(shop=by.shop).exclude(pk=by.pk).order_by("pk")[0]


def set_tables(owner: Job | Shop, by: Person, chance: random.Random) -> None:
    """A table of hinges, and a material."""
    heights = [(inches(30 + chance.randrange(9)), 2), (inches(90), 4)]
    tables_set(
        owner=owner, hinges_by_height=heights, hinges_by_weight=None, slide_classes=None,
        material="cherry", frame_material="", at=NOW, by=by,
    )  # fmt: skip


DEEDS_OF_SHOP: Mapping[str, Deed] = {
    deed.__name__: deed
    for deed in (
        standard_of_shop, stock_of_shop, hardware_of_shop, boxes_of_shop, numbers_of_shop,
        tables_of_shop, facts_of_shop, role_of_person, account_of_person,
        offer_of_supplier, supplier_of_shop, days_of_shop, offcut_of_shop, count_of_shop,
    )
}  # fmt: skip
