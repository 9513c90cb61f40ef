"""Forms of people: who they are, and their passwords."""

from typing import Any

from django import forms
from django.contrib.auth.password_validation import validate_password
from django.contrib.auth.validators import UnicodeUsernameValidator
from django.core.exceptions import ValidationError

from shopjobs.forms.house import HouseForm
from shopjobs.forms.sign_in import checked_password
from shopjobs.models import Person, Role


class PasswordField(forms.CharField):
    """A password as it was typed, blanks included; its widget never shows it again."""

    def __init__(self, *, autocomplete: str, **kwargs: Any) -> None:
        widget = forms.PasswordInput(attrs={"autocomplete": autocomplete})
        super().__init__(strip=False, widget=widget, max_length=256, **kwargs)


class PersonForm(HouseForm):
    """A person's name and role."""

    first_name = forms.CharField(label="First name", max_length=150, required=False)
    last_name = forms.CharField(label="Last name", max_length=150, required=False)
    role = forms.ChoiceField(label="Role", choices=Role, initial=Role.INSTALLER)

    def __init__(self, *args: Any, person: Person | None = None, **kwargs: Any) -> None:
        if person is not None:
            names = ("first_name", "last_name", "role")
            kwargs.setdefault("initial", {name: getattr(person, name) for name in names})
        super().__init__(*args, **kwargs)


class NewPasswordForm(HouseForm):
    """A new password, checked by the site's rules for the person that it is for."""

    password = PasswordField(
        label="Password",
        autocomplete="new-password",
        help_text="At least 8 characters: no common password, not digits alone, unlike the name.",
        error_messages={"required": "Enter a password."},
    )

    def __init__(self, *args: Any, person: Person | None = None, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.person = person

    def clean(self) -> dict[str, Any]:
        """Check the password against the rules and the person's own names."""
        given = super().clean() or {}
        if "password" in given:
            try:
                validate_password(given["password"], self._owner(given))
            except ValidationError as fault:
                self.add_error("password", fault)
        return given

    def _owner(self, given: dict[str, Any]) -> Person:
        return self.person or Person()


class NewPersonForm(PersonForm, NewPasswordForm):
    """A person who joins the shop."""

    username = forms.CharField(
        label="Sign-in name",
        max_length=150,
        validators=[UnicodeUsernameValidator()],
        error_messages={"required": "Enter a sign-in name, like maria."},
        widget=forms.TextInput(attrs={"autocomplete": "off", "autocapitalize": "none"}),
    )
    field_order = ("username", "first_name", "last_name", "role", "password")

    def _owner(self, given: dict[str, Any]) -> Person:
        names = ("username", "first_name", "last_name")
        return Person(**{name: given.get(name, "") for name in names})


class OwnPasswordForm(NewPasswordForm):
    """A person's own new password, after the old one."""

    old_password = PasswordField(
        label="Password now",
        autocomplete="current-password",
        error_messages={"required": "Enter the password that you sign in with now."},
    )
    field_order = ("old_password", "password")

    def __init__(self, *args: Any, person: Person, address: str, **kwargs: Any) -> None:
        super().__init__(*args, person=person, **kwargs)
        self._signed_in, self._address = person, address

    def clean_old_password(self) -> str:
        """Check that the old password is the person's; wrong ones count as at the sign-in."""
        old: str = self.cleaned_data["old_password"]
        with checked_password(self._signed_in.username, self._address):
            if not self._signed_in.check_password(old):
                raise ValidationError("That is not the password that you sign in with now.")
        return old
