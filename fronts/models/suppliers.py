"""Suppliers, what the shop buys, and what each supplier asks for it."""

from typing import cast

from django.db import models
from django.db.models import Q
from django.db.models.functions import Lower

from fronts.facts import WordsField
from fronts.rules.limits import LONGEST_ITEM, LONGEST_NOTE, LONGEST_SITE, LONGEST_SUPPLIER
from fronts.rules.money import MINOR_DIGITS, Price
from fronts.rules.offers import BUY_UNITS, LONGEST_CODE, BuyUnit, OfferFacts

CURRENCIES = [(code, code) for code in MINOR_DIGITS]


class Supplier(models.Model):
    """Who sells to a shop. `lead_days` are working days, where an offer says none of its own."""

    shop = models.ForeignKey("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")
    name = WordsField(max_length=LONGEST_SUPPLIER)
    email = models.EmailField("e-mail", blank=True)
    phone = WordsField(max_length=40, blank=True)
    address = WordsField(max_length=LONGEST_SITE, blank=True)
    account = WordsField("account number", max_length=LONGEST_CODE, blank=True)
    lead_days = models.PositiveSmallIntegerField("lead days", null=True, blank=True)
    note = WordsField(max_length=LONGEST_NOTE, blank=True)

    class Meta:
        constraints = [models.UniqueConstraint("shop", Lower("name"), name="one_supplier_a_name")]

    def __str__(self) -> str:
        return self.name


class Goods(models.Model):
    """A thing that the shop buys, by its buying name; kept once somebody offers it."""

    shop = models.ForeignKey("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")
    name = WordsField(max_length=LONGEST_ITEM)

    class Meta:
        verbose_name = "item that is bought"
        constraints = [models.UniqueConstraint(fields=["shop", "name"], name="one_goods_a_name")]

    def __str__(self) -> str:
        return self.name


class Offer(models.Model):
    """What a supplier asks for something; of several offers the one with the first place is taken.

    So exactly one is preferred wherever there are any. Places are any whole numbers.
    """

    goods = models.ForeignKey(Goods, on_delete=models.CASCADE, related_name="offers")
    supplier = models.ForeignKey(Supplier, on_delete=models.CASCADE, related_name="offers")
    place = models.IntegerField("place among the offers", default=0)
    code = WordsField("supplier's code", max_length=LONGEST_CODE, blank=True)
    pack = models.DecimalField(max_digits=12, decimal_places=3, default=1)
    unit = models.CharField(max_length=5, choices=list(BUY_UNITS.items()), default="piece")
    price = models.DecimalField(max_digits=12, decimal_places=3)
    currency = models.CharField(max_length=3, choices=CURRENCIES)
    lead_days = models.PositiveSmallIntegerField("lead days", null=True, blank=True)
    least = models.PositiveIntegerField("least order, packs", default=1)
    note = WordsField(max_length=LONGEST_NOTE, blank=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["goods", "supplier", "code"], name="one_offer_a_code_of_a_supplier"
            ),
            models.UniqueConstraint(fields=["goods", "place"], name="one_offer_a_place"),
            models.CheckConstraint(
                condition=Q(pack__gt=0) & Q(price__gte=0) & Q(least__gte=1),
                name="offer_of_something",
            ),
        ]

    def __str__(self) -> str:
        return f"{self.goods} from {self.supplier}"

    @property
    def facts(self) -> OfferFacts:
        """What it says, apart from who says it of what."""
        return OfferFacts(
            price=Price(self.price, self.currency), code=self.code, pack=self.pack,
            unit=cast(BuyUnit, self.unit), lead_days=self.lead_days, least=self.least,
            note=self.note,
        )  # fmt: skip

    @property
    def days(self) -> int | None:
        """Working days until it comes: its own, else its supplier's."""
        return self.supplier.lead_days if self.lead_days is None else self.lead_days


class UsualCurrency(models.Model):
    """The currency in which a shop is asked for most things."""

    shop = models.OneToOneField("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")
    code = models.CharField("usual currency", max_length=3, choices=CURRENCIES)

    def __str__(self) -> str:
        return "Prices"
