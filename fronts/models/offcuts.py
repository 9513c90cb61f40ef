"""Offcuts that a shop keeps, each with a number that is written on it."""

from django.db import models
from django.db.models import Q

from fronts.facts import MmField, WordsField
from fronts.models.cutting import CutPlan
from fronts.rules.limits import LONGEST_MATERIAL, LONGEST_NOTE
from fronts.rules.offcuts import OffcutAt, OffcutFacts, offcut_label


class OffcutGone(models.TextChoices):
    """How an offcut has gone."""

    SAWN = "sawn", "sawn up"
    AWAY = "away", "thrown away"
    UNMADE = "unmade", "never came to be"


class Offcut(models.Model):
    """A piece on the rack; rows are never deleted, so that no number is given twice.

    It came out of `plan`, whose `place` says which piece it is, for `from_job`; until that plan is
    sawn it is not there yet. `job` is the one that it is laid by for, `by_plan` where that job's
    cutting plan takes it.
    """

    shop = models.ForeignKey("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")
    number = models.PositiveIntegerField()
    material = WordsField(max_length=LONGEST_MATERIAL)
    thickness = MmField(zero=False)
    length = MmField(zero=False)
    width = MmField(zero=False)
    is_stick = models.BooleanField("a stick", default=False)
    is_grained = models.BooleanField("grain along its length", default=True)
    from_job = models.ForeignKey(
        "shopjobs.Job", on_delete=models.SET_NULL, null=True, blank=True, related_name="+"
    )
    plan = models.ForeignKey(
        CutPlan, on_delete=models.SET_NULL, null=True, blank=True, related_name="+"
    )
    place = models.CharField(max_length=40, blank=True)
    is_there = models.BooleanField("on the rack", default=True)
    job = models.ForeignKey(
        "shopjobs.Job", on_delete=models.SET_NULL, null=True, blank=True, related_name="+",
        verbose_name="laid by for",
    )  # fmt: skip
    by_plan = models.BooleanField(default=False)
    made_at = models.DateTimeField()
    made_by = models.ForeignKey(
        "shopjobs.Person", on_delete=models.RESTRICT, null=True, blank=True, related_name="+"
    )
    gone_at = models.DateTimeField(null=True, blank=True)
    gone_how = models.CharField(max_length=6, choices=OffcutGone, blank=True)
    gone_why = WordsField(max_length=LONGEST_NOTE, blank=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["shop", "number"], name="one_offcut_a_number"),
            models.UniqueConstraint(
                fields=["plan", "place"],
                condition=Q(plan__isnull=False),
                name="one_offcut_a_place_in_a_plan",
            ),
        ]
        indexes = [models.Index(fields=["shop", "gone_at"])]

    def __str__(self) -> str:
        return self.label

    @property
    def label(self) -> str:
        """What is written on it."""
        return offcut_label(self.number)

    @property
    def facts(self) -> OffcutFacts:
        """What the piece is."""
        return OffcutFacts(
            self.material, self.thickness, self.length, self.width,
            is_stick=self.is_stick, is_grained=self.is_grained,
        )  # fmt: skip

    def at(self, job_id: int) -> OffcutAt:
        """As a plan of this job is offered it."""
        return OffcutAt(self.number, self.facts, is_ours=self.job_id == job_id)
