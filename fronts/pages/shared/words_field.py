"""A field for a short text on one line."""

from typing import Any

from django import forms


class Words(forms.CharField):
    """Words on one line, with one space between two."""

    def clean(self, value: Any) -> str:
        return " ".join(super().clean(value).split())
