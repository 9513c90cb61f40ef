"""A shop that does everything its own way: a value of its own in all that a shop can say."""

from decimal import Decimal
from fractions import Fraction
from typing import Any

from fronts.facts.rows import columns_of
from fronts.rules.box_facts import BoxesMadeOf
from fronts.rules.facts import rows_of
from fronts.rules.items import HandleItem, Hardware, HingeItem, LiftItem, SlideItem, Span
from fronts.rules.lengths import INCH, Mm
from fronts.rules.money import Price
from fronts.rules.offers import OfferFacts
from fronts.rules.practice import NUMBERS, PLAIN, PRACTICE
from fronts.rules.standards import COMMON_STOCK, DEFAULTS
from fronts.services.boxes_made_of import boxes_made_of_set
from fronts.services.hardware import items_set
from fronts.services.offers import offer_add
from fronts.services.standards import tables_set
from fronts.services.stock import practice_set
from fronts.services.suppliers import supplier_save, usual_currency_set
from shopjobs.models import Shop
from tests.factories import NOW
from tests.saying import standard_set, stock_set


def own_ways(shop: Shop, part: Fraction) -> None:
    """Let the shop say everything: `part` of what is usual, so that two parts never agree."""
    standard_set(owner=shop, at=NOW, **own_standard(part))
    stock_set(
        owner=shop,
        at=NOW,
        screw_lengths=[_of(each, part) for each in COMMON_STOCK.screw_lengths],
        knob_screw_lengths=[_of(each, part) for each in COMMON_STOCK.knob_screw_lengths],
        slide_lengths=[_of(each, part) for each in COMMON_STOCK.slide_lengths],
        knob_thread=f"M{part.denominator}",
        knob_thread_depth=_of(COMMON_STOCK.knob_thread_depth, part),
    )
    boxes_made_of_set(owner=shop, at=NOW, boxes=own_boxes(part))
    for fact, _ in rows_of(Hardware):
        items = getattr(own_hardware(part), fact.name)
        items_set(owner=shop, at=NOW, kind=fact.kind, items=items)
    practice_set(owner=shop, at=NOW, values=own_numbers(part))
    own_offers(shop, part)
    tables_set(
        owner=shop,
        at=NOW,
        hinges_by_height=[(_of(most, part), count) for most, count in PRACTICE.hinges_by_height],
        hinges_by_weight=[(100 * part, 3)],
        slide_classes=[100 * part],
        material=f"{part.denominator} mm board",
        frame_material=f"{part.denominator} mm oak",
    )


def own_offers(shop: Shop, part: Fraction) -> None:
    """What two suppliers ask for its hinge, in a currency that is not its usual one."""
    usual_currency_set(shop=shop, code="CHF" if part.denominator % 2 else "SEK", at=NOW)
    price = Price(Decimal(100 * part.numerator) / part.denominator, "CAD")
    for name in (f"Supplier {part}", f"Another {part}"):
        facts = {"name": name, "account": f"A-{part}", "lead_days": part.denominator}
        row = supplier_save(shop=shop, facts=facts, at=NOW)
        asked = OfferFacts(price, code=f"C-{part}", pack=Decimal(part.denominator), note=name)
        offer_add(shop=shop, item="hinge H", supplier=row, facts=asked, preferred=True, at=NOW)


def own_hardware(part: Fraction) -> Hardware:
    """An item of each kind, whose sizes no shop with another part has."""
    return Hardware(
        hinges=(
            HingeItem("H", "overlay", overlay_span=Span(Mm(0), INCH * part), usual_bore=5 * part),
            HingeItem("I", "inset", gaps=(2 * part,)),
        ),
        slides=(SlideItem("S", "side", (500 * part, 600 * part), 40 * part),),
        handles=(HandleItem("K", centres=100 * part, projection=30 * part),),
        lifts=(LiftItem("L", part, 9 * part),),
    )


def own_boxes(part: Fraction) -> BoxesMadeOf:
    """How its boxes are made."""
    return BoxesMadeOf(side=15 * part, joint="dado", heights=(100 * part,), material=f"ply {part}")


def own_numbers(part: Fraction) -> dict[str, Fraction | None]:
    """Every number of the shop's, `part` of the usual one; `part` itself where that is none.

    A number that may not be so small is as many times as large.
    """
    usual = {each.name: getattr(PRACTICE, each.name) for each in NUMBERS}
    own = {name: round(value * part, 9) or part for name, value in usual.items()}
    small = {name for name, value in own.items() if name in PLAIN and value < PLAIN[name][0]}
    return own | {name: round(usual[name] / part, 9) for name in small}


def own_standard(part: Fraction) -> dict[str, Any]:
    """Every column of the standard but the reveal's, since a level gives that or the overlay."""
    usual = columns_of(DEFAULTS)
    bands = dict.fromkeys(("band_left", "band_right", "band_top", "band_bottom"), f"E-{part}")
    told = {name: f"{name} {part}" for name, value in usual.items() if isinstance(value, str)}
    words = {**told, "mount": "inset", "made_by": "here", "front_build": "five-piece", **bands}
    sizes = {name: _of(value, part) for name, value in usual.items() if name not in words}
    said = {name: size for name, size in sizes.items() if not name.startswith("reveal_")}
    return {**said, **words}


def _of(usual: Mm | None, part: Fraction) -> Mm:
    return (INCH if usual is None else usual) * part
