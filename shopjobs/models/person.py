"""Who signs in, and as what."""

from django.contrib.auth.models import AbstractUser
from django.db import models

from shopjobs.models.shop import Shop


class Role(models.TextChoices):
    """What a person does in the shop; `access` says what each may do."""

    OWNER = "owner", "Owner"
    OFFICE = "office", "Office"
    INSTALLER = "installer", "Installer"


class Person(AbstractUser):
    """A person of one shop. Only a superuser may be without a shop."""

    shop = models.ForeignKey(
        Shop, on_delete=models.CASCADE, null=True, blank=True, related_name="people"
    )
    role = models.CharField(max_length=10, choices=Role, default=Role.INSTALLER)

    class Meta:
        verbose_name_plural = "people"
        constraints = [
            models.CheckConstraint(
                condition=models.Q(shop__isnull=False) | models.Q(is_superuser=True),
                name="person_has_shop",
            ),
            models.CheckConstraint(condition=models.Q(role__in=Role.values), name="person_role"),
        ]

    def __str__(self) -> str:
        return self.username

    @property
    def shown_name(self) -> str:
        """The name as others read it: the full name where there is one."""
        return self.get_full_name() or self.username
