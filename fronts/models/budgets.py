"""What a job may cost of all that is bought for it."""

from django.db import models
from django.db.models import Q

from fronts.models.suppliers import CURRENCIES
from fronts.rules.money import Price


class JobBudget(models.Model):
    """An amount that the owner set for a job; without a row, none is set."""

    job = models.OneToOneField("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    amount = models.DecimalField(max_digits=12, decimal_places=3)
    currency = models.CharField(max_length=3, choices=CURRENCIES)

    class Meta:
        constraints = [
            models.CheckConstraint(condition=Q(amount__gte=0), name="budget_not_below_0")
        ]

    def __str__(self) -> str:
        """It has no name: history shows the values of rows that have one, to everybody."""
        return ""

    @property
    def price(self) -> Price:
        """The amount with its currency."""
        return Price(self.amount, self.currency)
