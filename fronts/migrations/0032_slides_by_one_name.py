"""A slide is bought under one name, whichever unit a job works in; offers come along."""

import re
from fractions import Fraction
from typing import Any

from django.db import migrations
from django.db.models import Max

SLIDE = re.compile(r"slide (?P<code>.+), (?P<length>≈?[0-9 ./]+) (?P<unit>in|mm)")
INCH = Fraction(127, 5)


def named_alike(apps: Any, _: Any) -> None:
    """The name of each slide as it is made: in inches, or else in millimetres."""
    goods = apps.get_model("fronts", "Goods").objects
    for one in goods.filter(name__startswith="slide ").order_by("pk"):
        said = SLIDE.fullmatch(one.name)
        if said is None:
            continue
        length = _length(apps, one.shop_id, said["code"], said["length"], said["unit"])
        name = one.name if length is None else f"slide {said['code']}, {_called(length)}"
        if name == one.name:
            continue
        held = goods.filter(shop=one.shop_id, name=name).first()
        if held is None:
            goods.filter(pk=one.pk).update(name=name)
        else:
            _taken_over(one, held)


def _length(apps: Any, shop: int, code: str, length: str, unit: str) -> Fraction | None:
    """How long it is; where its name was rounded, as the one of its code that reads so."""
    if not length.startswith("≈"):
        return _read(length, unit)
    slides = apps.get_model("fronts", "SlideItem").objects.filter(hardware__shop=shop, code=code)
    found = {
        each
        for lengths in slides.values_list("lengths", flat=True)
        for each in lengths
        if _is_shown_so(each, length, unit)
    }
    return found.pop() if len(found) == 1 else None


def _read(length: str, unit: str) -> Fraction | None:
    try:
        number = sum((Fraction(part) for part in length.split()), Fraction(0))
    except (ValueError, ZeroDivisionError):
        return None
    return number * INCH if unit == "in" else number


def _is_shown_so(length: Fraction, shown: str, unit: str) -> bool:
    """Whether a length rounds to what is shown: to 1/64 in, or to 1/100 mm."""
    near = _read(shown.removeprefix("≈"), unit)
    finest = INCH / 64 if unit == "in" else Fraction(1, 100)
    return near is not None and round(length / finest) * finest == near


def _called(length: Fraction) -> str:
    inches = length / INCH
    if (inches * 16).denominator == 1:
        whole, rest = divmod(inches, 1)
        return " ".join(str(part) for part in (whole, rest) if part) + " in"
    hundredths = round(length * 100)
    exact = Fraction(hundredths, 100)
    text = f"{hundredths // 100}.{hundredths % 100:02}".rstrip("0").rstrip(".")
    return f"{'' if exact == length else '≈'}{text} mm"


def _taken_over(goods: Any, held: Any) -> None:
    """Its offers, but for those that are there already, behind those that are."""
    there = set(held.offers.values_list("supplier", "code"))
    last = held.offers.aggregate(last=Max("place"))["last"] or 0
    for step, offer in enumerate(goods.offers.order_by("place"), 1):
        if (offer.supplier_id, offer.code) not in there:
            goods.offers.filter(pk=offer.pk).update(goods=held, place=last + step)
    goods.delete()


class Migration(migrations.Migration):

    dependencies = [
        ("fronts", "0031_offcuts"),
    ]

    operations = [
        migrations.RunPython(named_alike, migrations.RunPython.noop),
    ]
