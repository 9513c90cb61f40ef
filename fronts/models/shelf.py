"""What is in stock of what the shop buys: a ledger of what came, was laid by and used."""

from django.db import models

from fronts.facts import WordsField
from fronts.rules.limits import LONGEST_NOTE

COUNTED, RECEIVED, LAID_BY, GIVEN_BACK, USED = (
    "counted", "received", "laid by", "given back", "used",
)  # fmt: skip
KINDS = (COUNTED, RECEIVED, LAID_BY, GIVEN_BACK, USED)
FROM_STOCK = (LAID_BY, GIVEN_BACK)
"""What moves between the free stock and what is laid by for a job: two entries each."""


class StockEntry(models.Model):
    """So much of a thing came to a place, or left it: it is free, or laid by for a `job`.

    What there is at a place is the sum of its entries, never below zero. `amount` is as
    `rules/shelf.py` keeps it. Once a job or an arrival is gone for good, its entries are of the
    free stock: what was laid by is free again.
    """

    shop = models.ForeignKey("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")
    goods = models.ForeignKey("fronts.Goods", on_delete=models.RESTRICT, related_name="entries")
    job = models.ForeignKey(
        "shopjobs.Job", null=True, blank=True, on_delete=models.SET_NULL, related_name="+"
    )
    amount = models.BigIntegerField()
    kind = models.CharField(max_length=10, choices=[(kind, kind) for kind in KINDS])
    reason = WordsField(max_length=LONGEST_NOTE, blank=True)
    arrival = models.ForeignKey(
        "fronts.OrderArrival", null=True, blank=True, on_delete=models.SET_NULL, related_name="+"
    )
    entered_by = models.ForeignKey("shopjobs.Person", on_delete=models.RESTRICT, related_name="+")
    entered_at = models.DateTimeField()

    class Meta:
        verbose_name = "entry of the stock"

    def __str__(self) -> str:
        return f"{self.goods}: {self.amount} {self.kind}"
