"""What is taken back, and which part of history is shown."""

from typing import Any

from django import forms
from django.db.models import QuerySet
from django.utils.text import Truncator

from shopjobs.forms.house import HouseForm
from shopjobs.models import Person, Revision, Shop
from shopjobs.words import moment_in_words


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


class CompareForm(HouseForm):
    """Which state a kitchen of the past is compared with: today's, or after another revision."""

    after = forms.ModelChoiceField(
        Revision.objects.none(), label="Compare with", required=False, empty_label="today"
    )

    def __init__(self, *args: Any, revisions: QuerySet[Revision], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        after: Any = self.fields["after"]
        after.queryset = revisions.defer("changes").order_by("-pk")
        after.label_from_instance = _said

    @property
    def other(self) -> Revision | None:
        """The revision that was chosen; what can't be read is today."""
        return self.cleaned_data["after"] if self.is_bound and self.is_valid() else None


def _said(revision: Revision) -> str:
    """`26 Nov 10:54, B5.a: width 27 → 26 7/8`, cut where it is long."""
    text = Truncator(revision.text).chars(60)
    return f"{moment_in_words(revision.at)}, {text}"
