"""A job: one client's kitchen."""

from django.db import models

from shopjobs.models.shop import SIXTEENTH, Shop, Unit
from shopjobs.words import one_line, trimmed


class Job(models.Model):
    """A kitchen that the shop works on. `step` is in millimetres."""

    shop = models.ForeignKey(Shop, on_delete=models.CASCADE, related_name="jobs")
    number = models.CharField(max_length=40, validators=[one_line, trimmed])
    client = models.CharField(max_length=120, blank=True, validators=[one_line])
    site = models.CharField(max_length=240, blank=True, validators=[one_line])
    unit = models.CharField(max_length=2, choices=Unit, default=Unit.INCH)
    step = models.DecimalField(max_digits=14, decimal_places=8, default=SIXTEENTH)
    fit_on = models.DateField(null=True, blank=True)
    created_at = models.DateTimeField(auto_now_add=True)
    updated_at = models.DateTimeField(auto_now=True)
    revision = models.PositiveIntegerField(default=1)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["shop", "number"], name="job_number_once_a_shop"),
            models.CheckConstraint(condition=models.Q(step__gt=0), name="job_step_above_zero"),
            models.CheckConstraint(condition=models.Q(unit__in=Unit.values), name="job_unit"),
        ]

    def __str__(self) -> str:
        return self.number
