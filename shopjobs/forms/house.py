"""How every form of the site looks and behaves."""

from typing import Any

from django import forms
from django.forms.renderers import TemplatesSetting

from shopjobs.services.refused import Refused


class HouseRenderer(TemplatesSetting):
    """Draws a field with its label, hint and error as `templates/forms/field.html` says."""

    field_template_name = "forms/field.html"


class HouseForm(forms.Form):
    """A form whose messages are the server's own; the browser checks nothing first."""

    use_required_attribute = False

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        kwargs.setdefault("label_suffix", "")
        super().__init__(*args, **kwargs)

    def refuse(self, refused: Refused) -> None:
        """Show a service's refusal at the field that it is about."""
        field = refused.field if refused.field in self.fields else None
        self.add_error(field, refused.message)


class DateInput(forms.DateInput):
    """A date field that browsers offer a calendar for."""

    input_type = "date"

    def __init__(self) -> None:
        super().__init__(format="%Y-%m-%d")
