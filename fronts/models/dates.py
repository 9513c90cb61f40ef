"""Dates: how long a shop's and a job's stages take, when it is closed, what is begun and done."""

from django.db import models

from fronts.facts import columns
from fronts.rules.date_facts import ClosedDays as ClosedFacts
from fronts.rules.date_facts import JobDates as JobFacts
from fronts.rules.date_facts import ShopDates as ShopFacts
from fronts.rules.date_facts import StageMark as MarkFacts


class ShopDates(models.Model):
    """The weekdays on which a shop works, the days that stages usually take, jobs at once."""

    shop = models.OneToOneField("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")

    def __str__(self) -> str:
        return f"Dates of {self.shop}"


class JobDates(models.Model):
    """The days that one job's stages take, where they are not the shop's."""

    job = models.OneToOneField("shopjobs.Job", on_delete=models.CASCADE, related_name="dates")

    def __str__(self) -> str:
        return f"Dates of {self.job}"


for _table, _facts in ((ShopDates, ShopFacts), (JobDates, JobFacts)):
    for _name, _column in columns.of_all(_facts).items():
        _table.add_to_class(_name, _column)


class ClosedDays(models.Model):
    """Days on which a shop is closed, the first and the last among them."""

    shop = models.ForeignKey("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")
    first = models.DateField()
    last = models.DateField()
    name = columns.words(ClosedFacts, "name")

    class Meta:
        constraints = [
            models.CheckConstraint(
                condition=models.Q(last__gte=models.F("first")), name="closed_from_first_to_last"
            ),
        ]

    def __str__(self) -> str:
        return self.name


class StageMark(models.Model):
    """The day a stage of a job was begun, the day it was done; who said so last, and when."""

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="stage_marks")
    stage = columns.word(MarkFacts, "stage")
    begun_on = models.DateField(null=True, blank=True)
    done_on = models.DateField(null=True, blank=True)
    marked_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )
    marked_at = models.DateTimeField()

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["job", "stage"], name="stage_marked_once"),
        ]

    def __str__(self) -> str:
        return f"{self.stage} of {self.job}"

    @property
    def by(self) -> str:
        """The name of who said so; "" where no name is known."""
        return self.marked_by.shown_name if self.marked_by else ""


class CalendarFeed(models.Model):
    """The private address at which a person's calendar program reads the shop's dates.

    Only the digest of what makes the address private is kept: whoever reads this table can't
    read the calendar.
    """

    person = models.OneToOneField(
        "shopjobs.Person", on_delete=models.CASCADE, related_name="calendar_feed"
    )
    digest = models.CharField(max_length=64, unique=True)
    made_at = models.DateTimeField()

    def __str__(self) -> str:
        return f"Calendar of {self.person}"
