"""Forms of clients: what is known of one, which to look for, which two are one."""

from typing import Any

from django import forms

from shopjobs.forms.house import HouseForm
from shopjobs.forms.seen import SeenForm
from shopjobs.models import Client
from shopjobs.services.clients import CONTACT
from shopjobs.words import one_line

LONGEST_SEARCH = 100


class ClientForm(SeenForm):
    """A client's name, and how one reaches them."""

    name = forms.CharField(label="Name", max_length=120, validators=[one_line])
    contact = forms.CharField(
        label="Ask for", max_length=120, required=False, validators=[one_line]
    )
    phone = forms.CharField(
        label="Phone",
        max_length=40,
        required=False,
        validators=[one_line],
        widget=forms.TextInput(attrs={"type": "tel"}),
    )
    email = forms.EmailField(
        label="Email",
        max_length=254,
        required=False,
        error_messages={"invalid": "Enter an email address, like name@example.org."},
    )
    note = forms.CharField(label="Note", max_length=400, required=False, validators=[one_line])

    def __init__(self, *args: Any, client: Client, **kwargs: Any) -> None:
        known = {name: getattr(client, name) for name in ("name", *CONTACT)}
        kwargs.setdefault("initial", known)
        super().__init__(*args, **kwargs)


class ClientSearchForm(HouseForm):
    """Words to look for among clients."""

    q = forms.CharField(
        label="Search",
        required=False,
        max_length=LONGEST_SEARCH,
        widget=forms.TextInput(
            attrs={"type": "search", "placeholder": "Name, person, phone, email or site"}
        ),
    )


class MergeForm(HouseForm):
    """The client with whom another is one and the same."""

    into = forms.CharField(
        label="The same as",
        max_length=120,
        help_text="The name of the client that stays, just as it stands on the list.",
        widget=forms.TextInput(attrs={"list": "clients"}),
    )
