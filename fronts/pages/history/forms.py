"""What is taken back, and which part of history is shown."""

from typing import Any

from django import forms

from shopjobs.forms.house import HouseForm
from shopjobs.models import Person, Shop


class UndoForm(HouseForm):
    """One revision to take back; `back` is the page to return to."""

    revision = forms.IntegerField(widget=forms.HiddenInput)
    back = forms.CharField(required=False, max_length=400, widget=forms.HiddenInput)
    confirmed = forms.BooleanField(required=False, widget=forms.HiddenInput)


class FilterForm(HouseForm):
    """History by person, cabinet and day; what is left empty shows all."""

    person = forms.ModelChoiceField(Person.objects.none(), required=False, empty_label="everybody")
    about = forms.ChoiceField(label="Cabinet", required=False)
    day = forms.DateField(required=False, widget=forms.DateInput(attrs={"type": "date"}))

    def __init__(
        self, *args: Any, shop: Shop, cabinets: list[tuple[str, str]], **kwargs: Any
    ) -> None:
        super().__init__(*args, **kwargs)
        people: Any = self.fields["person"]
        people.queryset = Person.objects.filter(shop=shop).order_by("username")
        people.label_from_instance = lambda person: person.shown_name
        about: Any = self.fields["about"]
        about.choices = [("", "all"), *cabinets]
        if not cabinets:
            del self.fields["about"]
