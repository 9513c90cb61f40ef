"""A shop: everything else belongs to one."""

from decimal import Decimal

from django.db import models

SIXTEENTH = Decimal("1.5875")
"""1/16 in in millimetres: the cutting step of a shop that has not chosen its own."""


class Unit(models.TextChoices):
    """What a bare number means."""

    INCH = "in", "inches"
    MILLIMETRE = "mm", "millimetres"


class Paper(models.TextChoices):
    """What sheets are printed on."""

    LETTER = "letter", "Letter"
    A4 = "a4", "A4"


class Shop(models.Model):
    """A cabinet shop and its habits. `step` is in millimetres."""

    name = models.CharField(max_length=120, unique=True)
    unit = models.CharField(max_length=2, choices=Unit, default=Unit.INCH)
    step = models.DecimalField(max_digits=14, decimal_places=8, default=SIXTEENTH)
    paper = models.CharField(max_length=6, choices=Paper, default=Paper.LETTER)
    created_at = models.DateTimeField(auto_now_add=True)

    class Meta:
        constraints = [
            models.CheckConstraint(condition=models.Q(step__gt=0), name="shop_step_above_zero"),
            models.CheckConstraint(condition=models.Q(unit__in=Unit.values), name="shop_unit"),
            models.CheckConstraint(condition=models.Q(paper__in=Paper.values), name="shop_paper"),
        ]

    def __str__(self) -> str:
        return self.name
