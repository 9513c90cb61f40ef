"""Which items the hardware list held when somebody began to go through it."""

from django.db import models


class OrderList(models.Model):
    """The items that were on the list, or have been checked since; what is not here is new."""

    job = models.OneToOneField("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    items = models.JSONField(default=list)

    def __str__(self) -> str:
        return f"{len(self.items)} items"
