"""Doors on hand as rows of cells: what has no cell stays, or is as in the last door."""

from collections.abc import Mapping
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.forms.boundfield import BoundField

from fronts.pages.measure.things.doors import DOORS, DoorForm
from fronts.rules import limits
from fronts.rules.kinds import FRONT_BUILDS
from fronts.rules.kitchen import DoorOnHand
from shopjobs.forms.house import HouseForm, sentence
from shopjobs.forms.seen import SEEN, shown

DOOR_CELLS: Mapping[str, str] = {
    "label": "Label", "width": "Width", "height": "Height", "thickness": "Thick",
    "build": "Built as", "material": "Material",
}  # fmt: skip
"""The facts of a door that have a column, and what each is called."""
_LONGEST_CELL = 80


class BuildField(forms.CharField):
    """How a door is built, by its word or the beginning of it: `f` is five-piece."""

    def to_python(self, value: Any) -> str:
        typed = (super().to_python(value) or "").casefold().replace(" ", "-")
        meant = [build for build in FRONT_BUILDS if typed and build.startswith(typed)]
        if len(meant) != 1:
            raise ValidationError(f"Enter {' or '.join(FRONT_BUILDS)}.", code="invalid")
        return meant[0]


class DoorCellsForm(DoorForm):
    """The whole form of a door, its build typed in words."""

    build = BuildField(label="Built as", required=False)


class NewDoorsForm(HouseForm):
    """The empty row of the table of doors, and the rows that were pasted with it (`more`).

    What is left empty is as in the door before it. `entered` are the doors, in their order.
    """

    kind = forms.CharField(
        required=False, widget=forms.HiddenInput(attrs={"data-row-kind": "", "value": DOORS.one})
    )
    more = forms.CharField(
        label="Rows of a spreadsheet: label, width, height, thick, built as, material",
        required=False,
        strip=False,
        max_length=limits.MOST_DOORS * _LONGEST_CELL,
        widget=forms.Textarea(attrs={"rows": 3, "autocomplete": "off", "spellcheck": "false"}),
    )

    def __init__(self, data: Any, *, unit: str, usual: Mapping[str, Any], taken: set[str]) -> None:
        """`usual` is what a next door starts as; `taken` are the labels of all doors."""
        super().__init__(data, auto_id=f"row-{len(taken)}-%s")
        self.unit, self.taken = unit, taken
        self.usual = shown(DoorCellsForm(unit=unit, initial=dict(usual)))
        self.entered: list[DoorOnHand] = []
        for name, says in DOOR_CELLS.items():
            told = {"data-new-cell": "", "autocomplete": "off", "placeholder": self.usual[name]}
            widget = forms.TextInput(attrs={**told, "aria-label": f"{says} of the new door"})
            self.fields[name] = forms.CharField(
                label=says, required=False, max_length=_LONGEST_CELL, widget=widget
            )

    @property
    def cells(self) -> list[BoundField]:
        """Its fields in the order of the table's columns."""
        return [self[name] for name in DOOR_CELLS]

    def clean(self) -> dict[str, Any]:
        """Every row by the whole form of a door, each beginning as the one before it."""
        given = super().clean() or {}
        own = {name: str(given.get(name, "")) for name in DOOR_CELLS}
        more = _rows(given.get("more", ""))
        rows = more if more and not any(own.values()) else [own, *more]
        if len(self.taken) + len(rows) > limits.MOST_DOORS:
            self.add_error(None, f"A job has {limits.MOST_DOORS} doors on hand at most.")
            return given
        for place, line in enumerate(given.get("more", "").splitlines(), start=1):
            if any(cell.strip() for cell in line.split("\t")[len(DOOR_CELLS) :]):
                self.add_error(None, f"Row {place} has more cells than a door has columns.")
        usual, taken = self.usual, set(self.taken)
        for place, row in enumerate(rows):
            said = {**usual, **{name: value for name, value in row.items() if value.strip()}}
            form = DoorCellsForm({**said, SEEN: ""}, unit=self.unit)
            form.is_merged = False
            if form.is_valid() and form.entered.label in taken:
                form.add_error("label", f"There is already a door {form.entered.label}.")
            self._tell(form, place, rows)
            if not form.errors:
                self.entered.append(form.entered)
                taken.add(form.entered.label)
            usual = said | {"width": "", "height": "", "label": _next(said["label"], taken)}
        return given

    def _tell(self, form: DoorCellsForm, place: int, rows: list[dict[str, str]]) -> None:
        """What is wrong with a row: at its cells, or of a pasted one by its number."""
        for name, messages in form.errors.items():
            for message in messages:
                if len(rows) == 1 and name in self.fields:
                    self.add_error(name, str(message))
                else:
                    called = DOOR_CELLS.get(name, name).lower()
                    words = f"{str(message)[0].lower()}{str(message)[1:]}"
                    self.add_error(None, sentence(f"row {place + 1}, {called}: {words}"))


def _rows(said: str) -> list[dict[str, str]]:
    """Rows as a spreadsheet copies them: a line each, tabs between the cells."""
    lines = [line.split("\t") for line in said.splitlines() if line.strip()]
    return [dict(zip(DOOR_CELLS, (*line, *[""] * len(DOOR_CELLS)), strict=False)) for line in lines]


def _next(label: str, taken: set[str]) -> str:
    """The label after this one: its number counted on past those that are taken."""
    stem = label.rstrip("0123456789")
    number = int(label[len(stem) :] or "1")
    while f"{stem}{number}" in taken:
        number += 1
    return f"{stem}{number}"
