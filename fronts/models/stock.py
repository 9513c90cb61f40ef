"""What the shop keeps on its shelves, and its own numbers."""

from django.core.exceptions import ValidationError
from django.db import models
from django.db.models import Q

from fronts.facts import columns
from fronts.models.owned import OfShopOrJob
from fronts.rules.job_facts import Stock as Facts
from fronts.rules.practice import NUMBER_NAMES


class Stock(OfShopOrJob):
    """Lengths on the shelf and the knobs' thread; a job's own replaces the shop's whole."""

    screw_lengths = columns.sizes(Facts, "screw_lengths")
    knob_screw_lengths = columns.sizes(Facts, "knob_screw_lengths")
    slide_lengths = columns.sizes(Facts, "slide_lengths")
    knob_thread = columns.words(Facts, "knob_thread")
    knob_thread_depth = columns.size(Facts, "knob_thread_depth")

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["shop"], condition=Q(job=None), name="one_stock_for_the_shop"
            ),
        ]

    def __str__(self) -> str:
        return f"Stock of {self.job or self.shop}"


class ShopNumber(models.Model):
    """One of the shop's own numbers, in mm or as it reads; with `job`, for that job alone.

    Without a value it is the usual one, which may have no end as a decimal.
    """

    shop = models.ForeignKey("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")
    job = models.ForeignKey(
        "shopjobs.Job", null=True, blank=True, on_delete=models.CASCADE, related_name="+"
    )
    name = models.CharField(max_length=40)
    value = models.DecimalField(max_digits=15, decimal_places=10, null=True, blank=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["shop", "name"], condition=Q(job=None), name="one_number_a_shop"
            ),
            models.UniqueConstraint(fields=["job", "name"], name="one_number_a_job"),
        ]

    def __str__(self) -> str:
        return f"{self.name} {'as usual' if self.value is None else self.value}"

    def clean(self) -> None:
        super().clean()
        if self.name not in NUMBER_NAMES:
            raise ValidationError({"name": f"“{self.name}” is none of the shop's numbers"})
