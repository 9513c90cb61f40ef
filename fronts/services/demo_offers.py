"""Invented suppliers of the demo shop, and what they ask."""

from datetime import datetime
from decimal import Decimal

from fronts.rules.money import Price
from fronts.rules.offers import BuyUnit, OfferFacts
from fronts.services.offers import offer_add
from fronts.services.suppliers import supplier_save
from shopjobs.models import Person, Shop

KESTREL, PENNYROYAL = "Kestrel Lane Fittings", "Pennyroyal Screws and Sundries"
TAMARACK, SALTMARSH = "Tamarack Board Yard", "Saltmarsh Glass"
_SUPPLIERS: tuple[dict[str, object], ...] = (
    {
        "name": KESTREL, "phone": "555 0142", "email": "orders@kestrel-lane.example",
        "address": "14 Kestrel Lane, Alderton", "account": "7731", "lead_days": 5,
        "note": "Free delivery on Thursdays",
    },
    {
        "name": PENNYROYAL, "phone": "555 0117", "email": "desk@pennyroyal.example",
        "address": "3 Mill Yard, Alderton", "account": "", "lead_days": 1,
        "note": "Counter opens at 7",
    },
    {
        "name": TAMARACK, "phone": "555 0178", "email": "yard@tamarack.example",
        "address": "Station Road, Fernley", "account": "K-208", "lead_days": 3, "note": "",
    },
    {
        "name": SALTMARSH, "phone": "555 0163", "email": "", "address": "2 Saltmarsh Row, Fernley",
        "account": "", "lead_days": 8, "note": "Cuts to size; order by template",
    },
)  # fmt: skip
_Row = tuple[str, str, str, str, BuyUnit, str, int | None, int]
_OFFERS: tuple[_Row, ...] = (
    ("hinge H-FRAME", KESTREL, "40-105", "10", "piece", "32.50", None, 1),
    ("hinge H-FRAME", PENNYROYAL, "FH12", "2", "piece", "7.90", None, 1),
    ("hinge H-CLIP", KESTREL, "40-110", "50", "piece", "118.00", None, 1),
    ("hinge plate 0 mm for H-CLIP", KESTREL, "41-000", "50", "piece", "41.00", None, 1),
    ("hinge plate 2 mm for H-CLIP", KESTREL, "41-002", "50", "piece", "41.00", None, 1),
    ("slide S-100, 18 in", KESTREL, "62-18", "1", "piece", "14.20", None, 6),
    ("slide S-100, 22 in", KESTREL, "62-22", "1", "piece", "16.80", None, 6),
    ("slide U-75, 21 in", KESTREL, "65-21", "1", "piece", "27.40", 10, 1),
    ("knob or pull K-1", PENNYROYAL, "TK-1", "1", "piece", "3.15", 4, 10),
    ("knob or pull P-96", KESTREL, "80-096", "10", "piece", "46.00", None, 1),
    ("hinge screw", PENNYROYAL, "HS-58", "500", "piece", "11.75", None, 1),
    ("slide screw", PENNYROYAL, "SS-12", "500", "piece", "13.20", None, 1),
    ("bumper", PENNYROYAL, "CB-8", "100", "piece", "4.60", None, 1),
    ("edge band E-1", TAMARACK, "W1-22", "250", "ft", "58.00", None, 1),
    ("glass stop", SALTMARSH, "", "10", "ft", "9.00", None, 1),
)


def demo_offers(*, shop: Shop, at: datetime, by: Person | None) -> None:
    """Enter the suppliers and their offers, in dollars."""
    rows = {
        str(facts["name"]): supplier_save(shop=shop, facts=facts, at=at, by=by)
        for facts in _SUPPLIERS
    }
    for item, supplier, code, pack, unit, price, days, least in _OFFERS:
        asked = OfferFacts(
            price=Price(Decimal(price), "USD"), code=code, pack=Decimal(pack), unit=unit,
            lead_days=days, least=least,
        )  # fmt: skip
        offer_add(shop=shop, item=item, supplier=rows[supplier], facts=asked, at=at, by=by)
