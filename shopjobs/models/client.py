"""Whose kitchens a shop makes, and where they are."""

from django.db import models
from django.db.models import Q

from shopjobs.models.shop import Shop
from shopjobs.words import one_line


class Client(models.Model):
    """Somebody for whom the shop works: `contact` is whom one asks for there."""

    shop = models.ForeignKey(Shop, on_delete=models.CASCADE, related_name="clients")
    name = models.CharField(max_length=120, validators=[one_line])
    contact = models.CharField(max_length=120, blank=True, validators=[one_line])
    phone = models.CharField(max_length=40, blank=True, validators=[one_line])
    email = models.EmailField(blank=True)
    note = models.CharField(max_length=400, blank=True, validators=[one_line])

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["shop", "name"], name="client_name_once_a_shop"),
        ]

    def __str__(self) -> str:
        return self.name


class Site(models.Model):
    """Where a kitchen is: an address of a client, or of nobody who is named."""

    shop = models.ForeignKey(Shop, on_delete=models.CASCADE, related_name="+")
    client = models.ForeignKey(
        Client, on_delete=models.CASCADE, null=True, blank=True, related_name="sites"
    )
    address = models.CharField(max_length=240, validators=[one_line])

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["client", "address"], name="site_once_a_client"),
            models.UniqueConstraint(
                fields=["shop", "address"], condition=Q(client=None), name="site_of_nobody_once"
            ),
        ]

    def __str__(self) -> str:
        return self.address
