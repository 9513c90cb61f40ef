"""Failed attempts to sign in, kept as long as they count."""

from django.db import models

from shopjobs.client_address import LONGEST


class SignInFailure(models.Model):
    """One failed attempt at a sign-in name from an address."""

    username = models.CharField(max_length=150)
    address = models.CharField(max_length=LONGEST)
    at = models.DateTimeField()

    class Meta:
        indexes = [models.Index(fields=["username", "address", "at"], name="sign_in_failures")]

    def __str__(self) -> str:
        return f"{self.username} from {self.address}"
