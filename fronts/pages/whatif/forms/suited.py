"""The form that says which laps or gaps a shop allows, and which fronts may take a door."""

from typing import Any, cast

from django import forms

from fronts.facts.size_form_fields import Size
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.rules.kinds import MOUNTS, Mount, words_of
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show
from fronts.rules.suited_standard import (
    Laps,
    Range,
    choices,
    most_choices,
    open_to_doors,
    takes_doors,
    usual_range,
)

ASKED, EVERY = "asked", "every"
WHICH = {
    ASKED: "Fronts that take one",
    EVERY: "Every door of open size",
}
"""Which fronts a door on hand may become."""


class SuitedForm(KitchenForm):
    """Which choices are tried; what is left empty is as usual."""

    mount = forms.ChoiceField(label="Fronts are", choices=words_of(MOUNTS))
    least = Size(label="From", asks="the least that you allow", small=True, zero=True)
    most = Size(label="To", asks="the most that you allow", small=True, zero=True)
    by = Size(label="In steps of", asks="how far apart the choices are", small=True)
    fronts = forms.ChoiceField(label="Doors may become", choices=WHICH)
    apart = forms.BooleanField(
        label="Left and right one size, top and bottom another", required=False
    )
    groups = (Group("", ("mount", "least", "most", "by", "fronts", "apart"), kind="cells"),)

    def __init__(self, *args: Any, kitchen: Kitchen, **kwargs: Any) -> None:
        super().__init__(*args, unit=kitchen.job.unit, **kwargs)
        self.kitchen = kitchen
        self.initial.setdefault("mount", kitchen.standard.mount or next(iter(MOUNTS)))
        which = WHICH if takes_doors(kitchen) else {EVERY: WHICH[EVERY]}
        self.initial.setdefault("fronts", next(iter(which)))
        self.fields["fronts"].choices = [*which.items()]  # type: ignore[attr-defined]
        mount = self["mount"].value()
        usual = usual_range(mount if mount in MOUNTS else self.initial["mount"], kitchen.job)
        for name in ("least", "most", "by"):
            self.fields[name].required = False
            self.offer(name, f"{show(getattr(usual, name), self.unit)}, as usual")

    def clean(self) -> dict[str, Any]:
        """No more choices than are worked out while somebody waits."""
        given = super().clean()
        if self.errors:
            return given
        allowed = self.allowed
        if allowed.most < allowed.least:
            self.add_error("most", "This is less than the smallest; swap them.")
            return given
        count, most = allowed.count ** (2 if given["apart"] else 1), most_choices(self.kitchen)
        if count > most:
            self.add_error("by", (
                f"That is {count} choices, and {most} are tried at once in a kitchen of this "
                "size. Give a coarser step, or a narrower range."
            ))  # fmt: skip
        return given

    @property
    def allowed(self) -> Range:
        """The range as it was typed, and as usual where it was not."""
        given = self.cleaned_data
        usual = usual_range(cast(Mount, given["mount"]), self.kitchen.job)
        named = (given.get(name) for name in ("least", "most", "by"))
        least, most, by = named
        return Range(
            usual.least if least is None else least,
            usual.most if most is None else most,
            usual.by if by is None else by,
        )

    @property
    def entered(self) -> list[Laps]:
        """The choices to try, in their order."""
        given = self.cleaned_data
        return choices(cast(Mount, given["mount"]), self.allowed.lengths, apart=given["apart"])

    @property
    def is_open(self) -> bool:
        """Whether doors on hand may become fronts too of which nobody has said so yet."""
        return bool(self.cleaned_data["fronts"] == EVERY)

    @property
    def tried_in(self) -> Kitchen:
        """The kitchen, in which the fronts that may take a door on hand wait for one."""
        return open_to_doors(self.kitchen) if self.is_open else self.kitchen
