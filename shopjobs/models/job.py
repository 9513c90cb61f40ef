"""A job: one client's kitchen."""

from typing import ClassVar

from django.conf import settings
from django.db import models

from shopjobs.models.client import Client, Site
from shopjobs.models.shop import SIXTEENTH, Shop, Unit
from shopjobs.words import one_line, trimmed


class Living(models.Manager["Job"]):
    """The jobs that nobody deleted, with their clients; those that were are asked for by name."""

    def get_queryset(self) -> models.QuerySet["Job"]:
        return super().get_queryset().filter(deleted_at=None).select_related("client", "site")


class Job(models.Model):
    """A kitchen that the shop works on. `step` is in millimetres.

    One that was deleted is kept for some time, and can be brought back until then. One that was
    archived stands on no list of what there is to do, and is read as ever. `responsible` is who
    sees to it.
    """

    DAYS_KEPT = 30

    objects: ClassVar[Living] = Living()
    with_deleted: ClassVar["models.Manager[Job]"] = models.Manager()

    shop = models.ForeignKey(Shop, on_delete=models.CASCADE, related_name="jobs")
    number = models.CharField(max_length=40, validators=[one_line, trimmed])
    client = models.ForeignKey(
        Client, on_delete=models.RESTRICT, null=True, blank=True, related_name="jobs"
    )
    site = models.ForeignKey(
        Site, on_delete=models.RESTRICT, null=True, blank=True, related_name="jobs"
    )
    unit = models.CharField(max_length=2, choices=Unit, default=Unit.INCH)
    step = models.DecimalField(max_digits=14, decimal_places=8, default=SIXTEENTH)
    fit_on = models.DateField(null=True, blank=True)
    responsible = models.ForeignKey(
        settings.AUTH_USER_MODEL, on_delete=models.SET_NULL, null=True, blank=True, related_name="+"
    )
    created_at = models.DateTimeField(auto_now_add=True)
    updated_at = models.DateTimeField(auto_now=True)
    revision = models.PositiveIntegerField(default=1)
    deleted_at = models.DateTimeField(null=True, blank=True)
    archived_at = models.DateTimeField(null=True, blank=True)

    class Meta:
        indexes = [
            models.Index(fields=["shop", "-updated_at", "-id"], name="jobs_by_last_change"),
            models.Index(fields=["shop", "fit_on"], name="jobs_by_fitting_day"),
        ]
        constraints = [
            models.UniqueConstraint(
                fields=["shop", "number"],
                condition=models.Q(deleted_at=None),
                name="job_number_once_a_shop",
            ),
            models.CheckConstraint(condition=models.Q(step__gt=0), name="job_step_above_zero"),
            models.CheckConstraint(condition=models.Q(unit__in=Unit.values), name="job_unit"),
        ]

    def __str__(self) -> str:
        return self.number

    @property
    def client_name(self) -> str:
        """The client's name, "" where nobody is named."""
        return self.client.name if self.client else ""

    @property
    def site_address(self) -> str:
        """Where the kitchen is, "" where that is not said."""
        return self.site.address if self.site else ""
