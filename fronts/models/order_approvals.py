"""The hardware list as it was approved, and what was decided of its changes since."""

from django.core.validators import MaxValueValidator, MinValueValidator
from django.db import models

from fronts.facts import WordsField
from fronts.rules.limits import LONGEST_ITEM, LONGEST_NOTE, MOST_NEEDED

ORDER, ADDITION, ACCEPTED, DISMISSED = "order", "addition", "accepted", "dismissed"
KINDS = (ORDER, ADDITION, ACCEPTED, DISMISSED)


class OrderApproval(models.Model):
    """Lines that somebody approved: all of the list, or later changes of it.

    Of later changes an `addition` is ordered too, what is `accepted` takes off what is not sent
    yet, and what is `dismissed` leaves the order as it is, for the reason in `note`.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    kind = models.CharField(max_length=10, choices=[(kind, kind) for kind in KINDS])
    note = WordsField(max_length=LONGEST_NOTE, blank=True)
    approved_by = models.ForeignKey("shopjobs.Person", on_delete=models.RESTRICT, related_name="+")
    approved_at = models.DateTimeField()

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["job"], condition=models.Q(kind=ORDER), name="one_approval_a_job"
            )
        ]

    def __str__(self) -> str:
        return f"{self.kind}, {self.approved_at:%Y-%m-%d}"


class ApprovedLine(models.Model):
    """An item of that, as it was then: `facts` is `LineFacts.as_json`.

    `amount` is how many more are ordered by it; below zero, how many fewer. `bought_as` is its
    buying name; "" where it was approved before that was kept, or was not needed any more.
    """

    approval = models.ForeignKey(OrderApproval, on_delete=models.CASCADE, related_name="lines")
    item = WordsField(max_length=LONGEST_ITEM)
    amount = models.IntegerField(
        validators=[MinValueValidator(-2 * MOST_NEEDED), MaxValueValidator(2 * MOST_NEEDED)]
    )
    facts = models.JSONField()
    bought_as = WordsField(max_length=LONGEST_ITEM, blank=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["approval", "item"], name="approved_once")]

    def __str__(self) -> str:
        return f"{self.item}: {self.amount}"
