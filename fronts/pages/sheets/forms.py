"""The form that has a set printed, a press is all that it says; and the code of a sheet."""

from django import forms

from fronts.rules.fingerprint import read_short_name
from shopjobs.forms.house import HouseForm


class PrintForm(HouseForm):
    """Nothing to enter; what stands against printing is said on it."""


class CodeForm(HouseForm):
    """The code at a fitting sheet's foot, as it is typed."""

    code = forms.CharField(
        label="Code on the sheet",
        help_text="At the foot of a fitting sheet, as 3f9a-07c2.",
        max_length=40,
        widget=forms.TextInput(
            attrs={"autocomplete": "off", "autocapitalize": "none", "spellcheck": "false"}
        ),
    )

    def clean_code(self) -> str:
        """The code as it is printed."""
        code = read_short_name(self.cleaned_data["code"])
        if code is None:
            raise forms.ValidationError(
                "A code is eight digits and letters from a to f, as 3f9a-07c2."
            )
        return code
