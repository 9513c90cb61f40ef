"""What of the list of jobs is asked for, as it stands in the address."""

from typing import Any

from django import forms
from django.conf import settings
from django.utils.module_loading import import_string

from shopjobs.forms.house import HouseForm
from shopjobs.job_list import AS_FITTED, NOBODY, ORDERS, WHEN, Asked
from shopjobs.models import Role
from shopjobs.selectors import people_at_work

LONGEST = 100


class JobListForm(HouseForm):
    """Words to look for, what the jobs are at, whose they are, when they are fitted; their order.

    Where nothing is said of the order, an installer has them by fitting day, others by their
    last change.
    """

    q = forms.CharField(
        label="Search",
        required=False,
        max_length=LONGEST,
        widget=forms.TextInput(
            attrs={"type": "search", "placeholder": "Number, client, site or cabinet"}
        ),
    )
    stage = forms.ChoiceField(label="Stage", required=False)
    when = forms.ChoiceField(
        label="To fit", required=False, choices=[("", "Any day"), *WHEN.items()]
    )
    whose = forms.ChoiceField(label="Who sees to it", required=False)
    order = forms.ChoiceField(label="Order", required=False)
    archived = forms.BooleanField(label="Archived", required=False)

    def __init__(self, *args: Any, person: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.usual = AS_FITTED if person.role == Role.INSTALLER else next(iter(ORDERS))
        stages = import_string(settings.JOB_STAGES)
        self._offer("stage", [("", "Any stage"), *stages.items()])
        people = {**people_at_work(person.shop)}
        mine = people.pop(person.pk, "")
        named = [(str(key), name) for key, name in people.items()]
        me = [(str(person.pk), f"{mine} (you)")]
        self._offer("whose", [("", "Anyone"), *me, *named, (NOBODY, "Nobody yet")])
        others = {key: words for key, words in ORDERS.items() if key != self.usual}
        self._offer("order", [("", ORDERS[self.usual]), *others.items()])

    def asked(self) -> Asked:
        """What is asked for, as far as it is understood."""
        self.is_valid()
        given = self.cleaned_data
        return Asked(
            words=given.get("q", ""),
            stage=given.get("stage", ""),
            when=given.get("when", ""),
            whose=given.get("whose", ""),
            order=given.get("order", "") or self.usual,
            archived=given.get("archived", False),
        )

    def _offer(self, name: str, choices: list[tuple[str, str]]) -> None:
        field = self.fields[name]
        if isinstance(field, forms.ChoiceField):
            field.choices = choices
