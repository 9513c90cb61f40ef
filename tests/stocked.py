"""What is in stock in tests: counted, laid by, and read back."""

from collections.abc import Mapping
from fractions import Fraction

from fronts.models import Goods
from fronts.models.shelf import LAID_BY
from fronts.rules.shelf import kept
from fronts.selectors.shelf import balance_of, last_entry_of, unit_named
from fronts.services.shelf import stock_count, stock_move
from shopjobs.models import Job, Person, Shop
from tests.factories import NOW


def counted(shop: Shop, by: Person, amount: int | Fraction, item: str = "bumper") -> Goods:
    """So many of an item are on hand in all, whatever there was."""
    last = last_entry_of(Goods.objects.filter(shop=shop, name=item).first())
    return stock_count(
        shop=shop, item=item, amount=Fraction(amount), reason="counted the shelf",
        seen=last.pk if last else None, by=by, at=NOW,
    )  # fmt: skip


def moved(goods: Goods, job: Job, by: Person, amount: int | Fraction, kind: str = LAID_BY) -> None:
    """So many laid by for a job, or moved otherwise."""
    count = kept(Fraction(amount), unit_named(job.shop, goods.name))
    stock_move(kind=kind, job=job, amounts=[(goods, count)], by=by, at=NOW)


def there_is(shop: Shop, item: str = "bumper") -> Mapping[str, int]:
    """What is free, under "", and laid by for which jobs; nothing where it is nowhere."""
    goods = Goods.objects.filter(shop=shop, name=item).select_related("shop").first()
    if goods is None:
        return {}
    balance = balance_of(goods)
    held = {"": balance.free, **{str(job): amount for job, amount in balance.laid_by}}
    return {place: amount for place, amount in held.items() if amount}
