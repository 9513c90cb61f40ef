"""The hardware list as the office goes through it."""

from django.db import models

from fronts.facts import columns
from fronts.models.checks import Check
from fronts.rules.records import CheckFacts as Facts


class OrderCheck(Check):
    """A line of the hardware list, checked by name and time, with the need as it was then.

    `against` is all that it was checked against (`LineFacts.as_json`), None for a check from
    before that was kept. A line that is `open` holds a note and is not checked.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    item = columns.words(Facts, "item")
    need = columns.count(Facts, "need")
    note = columns.words(Facts, "note")
    open = columns.flag(Facts, "open")
    against = models.JSONField(null=True, blank=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["job", "item"], name="one_check_an_item")]

    def __str__(self) -> str:
        return f"{self.item}: {self.need}"
