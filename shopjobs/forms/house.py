"""How every form of the site looks and behaves."""

from collections import defaultdict
from collections.abc import Mapping
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.forms.renderers import TemplatesSetting

from shopjobs.services.refused import Refused
from shopjobs.words import capitalized

_WORDS = {
    "required": "Enter the {label}.",
    "min_value": "Give {min_value} or more.",
    "max_value": "Give {max_value} at most.",
    "max_length": "Keep it to {max_length} characters.",
    "invalid_choice": "Choose one from the list.",
    "max_digits": "This has too many digits.",
    "max_decimal_places": "Give {decimal_places} decimals at most.",
    "max_whole_digits": "This is too much.",
    "null_characters_not_allowed": "This holds a sign that can’t be kept; type it anew.",
}
_DJANGOS = forms.Field.default_error_messages | forms.ChoiceField.default_error_messages


def in_house_words(field: forms.Field) -> None:
    """Let a field say in plain words what is wrong, where it has no words of its own."""
    own = field.error_messages
    for code, words in _WORDS.items():
        if own.get(code) in (None, _DJANGOS.get(code)):
            known = {**vars(field), "label": str(field.label or "").lower()}
            own[code] = words.format_map(defaultdict(str, known))


class HouseRenderer(TemplatesSetting):
    """Draws a field with its label, hint and error as `templates/forms/field.html` says."""

    field_template_name = "forms/field.html"


class HouseForm(forms.Form):
    """A form whose messages are the server's own; the browser checks nothing first."""

    use_required_attribute = False
    has_clashes = False
    """Whether somebody else changed since what was changed in the form."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        kwargs.setdefault("label_suffix", "")
        super().__init__(*args, **kwargs)
        for field in self.fields.values():
            in_house_words(field)

    def refuse(self, refused: Refused) -> None:
        """Show a service's refusal at the field that it is about."""
        field = refused.field if refused.field in self.fields else None
        self.add_error(field, refused.message)

    def refuse_all(self, error: ValidationError) -> None:
        """Show a service's refusal, each message at its field where there is one."""
        told: Mapping[str, list[str]] = (
            error.message_dict if hasattr(error, "error_dict") else {"": error.messages}
        )
        for name, messages in told.items():
            for message in messages:
                self.add_error(name if name in self.fields else None, sentence(message))


def unsaved(form: HouseForm) -> int:
    """What answers a form that is shown: refused where it was sent, or in conflict."""
    if not form.is_bound:
        return 200
    return 409 if form.has_clashes else 422


def sentence(message: str) -> str:
    """A message as a sentence: it begins with a capital and ends with a stop."""
    return capitalized(message if message.endswith((".", "!", "?")) else f"{message}.")


class DateInput(forms.DateInput):
    """A date field that browsers offer a calendar for."""

    input_type = "date"

    def __init__(self) -> None:
        super().__init__(format="%Y-%m-%d")
