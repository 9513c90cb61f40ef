"""What of a job's order was sent to whom, and what came of it."""

from django.core.validators import MaxValueValidator, MinValueValidator
from django.db import models

from fronts.facts import WordsField
from fronts.rules.limits import (
    LONGEST_ITEM,
    LONGEST_NOTE,
    LONGEST_REFERENCE,
    LONGEST_SUPPLIER,
    LONGEST_WORD,
    MOST_NEEDED,
)

SOME = [MinValueValidator(1), MaxValueValidator(2 * MOST_NEEDED)]


class OrderSending(models.Model):
    """An order that went to one supplier on a day, under a reference."""

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    supplier = WordsField(max_length=LONGEST_SUPPLIER)
    reference = WordsField(max_length=LONGEST_REFERENCE, blank=True)
    sent_on = models.DateField()
    sent_by = models.ForeignKey("shopjobs.Person", on_delete=models.RESTRICT, related_name="+")
    sent_at = models.DateTimeField()

    def __str__(self) -> str:
        return f"{self.supplier}, {self.sent_on}"


class SentLine(models.Model):
    """So many of an item, as they were ordered there."""

    sending = models.ForeignKey(OrderSending, on_delete=models.CASCADE, related_name="lines")
    item = WordsField(max_length=LONGEST_ITEM)
    unit = WordsField(max_length=LONGEST_WORD, blank=True)
    amount = models.PositiveIntegerField(validators=SOME)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["sending", "item"], name="sent_once")]

    def __str__(self) -> str:
        return f"{self.item}: {self.amount}"


class OrderArrival(models.Model):
    """So many of a line came on a day."""

    line = models.ForeignKey(SentLine, on_delete=models.CASCADE, related_name="arrivals")
    amount = models.PositiveIntegerField(validators=SOME)
    came_on = models.DateField()
    note = WordsField(max_length=LONGEST_NOTE, blank=True)
    received_by = models.ForeignKey("shopjobs.Person", on_delete=models.RESTRICT, related_name="+")
    received_at = models.DateTimeField()

    def __str__(self) -> str:
        return f"{self.line.item}: {self.amount} came"
