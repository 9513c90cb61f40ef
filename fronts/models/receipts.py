"""Bought fronts as they are checked off on receipt."""

from django.db import models

from fronts.facts import columns
from fronts.models.checks import Check
from fronts.models.fronts import Front
from fronts.rules.receipts import ReceiptFacts as Facts


class FrontReceipt(Check):
    """A bought front that came, as it was on the list then.

    The columns beside these are the declaration's. It points at nothing where the front has
    gone since; a front that is bought otherwise since is still to come.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    front = models.ForeignKey(
        Front, null=True, blank=True, on_delete=models.SET_NULL, related_name="receipts"
    )
    label = columns.words(Facts, "label")
    note = columns.words(Facts, "note")

    class Meta:
        constraints = [models.UniqueConstraint(fields=["front"], name="one_receipt_a_front")]

    def __str__(self) -> str:
        return f"{self.label}, {self.checked_at:%Y-%m-%d}"


for _name, _column in columns.of_all(Facts).items():
    if _name not in ("label", "note"):
        FrontReceipt.add_to_class(_name, _column)
