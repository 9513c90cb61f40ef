"""The form to sign in with."""

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from django import forms
from django.conf import settings
from django.contrib.auth.forms import AuthenticationForm
from django.core.exceptions import ValidationError
from django.http import HttpRequest
from django.utils import timezone

from shopjobs.client_address import client_address
from shopjobs.services.refused import Refused
from shopjobs.services.sign_in import Limits, password_attempt


class SignInForm(AuthenticationForm):
    """Name and password; a name or an address that failed too often waits a while."""

    use_required_attribute = False
    error_messages = {
        "invalid_login": "The sign-in name and password don't belong together. Both tell capital "
        "letters from small ones.",
        "inactive": "This account is closed. Ask the shop's owner.",
    }

    def __init__(self, request: HttpRequest | None = None, *args: Any, **kwargs: Any) -> None:
        kwargs.setdefault("label_suffix", "")
        super().__init__(request, *args, **kwargs)
        self.fields["username"].label = "Sign-in name"
        self.fields["username"].error_messages["required"] = "Enter your sign-in name."
        self.fields["password"].error_messages["required"] = "Enter your password."
        self.fields["username"].widget = forms.TextInput(
            attrs={"autocomplete": "username", "autocapitalize": "none", "maxlength": 150}
        )

    def clean(self) -> dict[str, Any]:
        """Check the two, unless the name or the address is locked."""
        username = self.cleaned_data.get("username")
        if not username or not self.cleaned_data.get("password"):
            return self.cleaned_data
        with checked_password(username, client_address(self.request) if self.request else ""):
            return super().clean()


@contextmanager
def checked_password(username: str, address: str) -> Iterator[None]:
    """Check a password inside; a name or an address that failed too often waits."""
    limits = Limits(
        failures=settings.SIGN_IN_FAILURES,
        of_an_address=settings.SIGN_IN_FAILURES_OF_AN_ADDRESS,
        minutes=settings.SIGN_IN_LOCK_MINUTES,
    )
    try:
        with password_attempt(username=username, address=address, at=timezone.now(), limits=limits):
            yield
    except Refused as refused:
        raise ValidationError(refused.message) from refused
