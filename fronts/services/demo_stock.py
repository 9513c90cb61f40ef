"""What lies on the invented shelf and rack of the demo shop: some of it does for its kitchen."""

from datetime import datetime
from fractions import Fraction

from fronts.rules.offcuts import OffcutFacts
from fronts.rules.practice import inches
from fronts.services.offcuts import offcut_enter
from fronts.services.shelf import stock_count
from shopjobs.models import Person, Shop

_HALF = Fraction(1, 2)
_GOODS: tuple[tuple[str, Fraction, str], ...] = (
    ("bumper", Fraction(60), "counted the drawer by the bench"),
    ("hinge screw", Fraction(240), "counted by weight"),
    ("hinge H-FRAME", Fraction(6), "left over from the last kitchen"),
    ("slide S-100, 22 in", Fraction(2), "ordered two too many"),
    ("edge band E-1", 12 + _HALF, "the end of a roll, measured"),
)
_OFFCUTS = (
    OffcutFacts("MDF", inches(3, 4), inches(46), inches(22), is_grained=False),
    OffcutFacts("hard maple", inches(3, 4), inches(52), inches(9, 4), is_stick=True),
)


def demo_stock(*, shop: Shop, at: datetime, by: Person) -> None:
    """Count the goods, and enter a piece of a sheet and one of a stick."""
    for item, amount, reason in _GOODS:
        stock_count(shop=shop, item=item, amount=amount, reason=reason, seen=None, by=by, at=at)
    for facts in _OFFCUTS:
        offcut_enter(shop=shop, facts=facts, job=None, by=by, at=at)
