"""The form to sign in with."""

from typing import Any

from django import forms
from django.conf import settings
from django.contrib.auth.forms import AuthenticationForm
from django.core.exceptions import ValidationError
from django.http import HttpRequest
from django.utils import timezone

from shopjobs.services.refused import Refused
from shopjobs.services.sign_in import Limits, attempt_begin, failures_forget


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
        who = {"username": username, "address": client_address(self.request)}
        limits = Limits(
            failures=settings.SIGN_IN_FAILURES,
            of_an_address=settings.SIGN_IN_FAILURES_OF_AN_ADDRESS,
            minutes=settings.SIGN_IN_LOCK_MINUTES,
        )
        try:
            attempt_begin(**who, at=timezone.now(), limits=limits)
        except Refused as refused:
            raise ValidationError(refused.message) from refused
        given = super().clean()
        failures_forget(**who)
        return given


def client_address(request: HttpRequest | None) -> str:
    """Return the address that a request came from; behind a proxy, the one that it names."""
    if request is None:
        return ""
    if settings.BEHIND_PROXY:
        forwarded = request.headers.get("X-Forwarded-For", "").split(",")[-1].strip()
        if forwarded:
            return forwarded[:45]
    return str(request.META.get("REMOTE_ADDR", ""))[:45]
