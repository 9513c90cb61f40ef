"""What a shop has one of for all its jobs, and a job may have one of for itself."""

from django.db import models


class OfShopOrJob(models.Model):
    """One row for a shop; with `job`, that job's own."""

    shop = models.ForeignKey("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")
    job = models.OneToOneField(
        "shopjobs.Job", null=True, blank=True, on_delete=models.CASCADE, related_name="+"
    )

    class Meta:
        abstract = True
