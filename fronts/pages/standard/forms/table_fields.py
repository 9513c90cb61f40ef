"""The form of the shop's tables: hinges by height and weight, slide classes, materials."""

import re
from collections.abc import Callable, Sequence
from fractions import Fraction
from typing import Any, cast

from django import forms
from django.core.exceptions import ValidationError

from fronts.measures import MeasureError, read_weight, write_weight
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.rules.kinds import Unit
from fronts.rules.length_sums import read_sum
from fronts.rules.lengths import LengthError, write
from fronts.rules.practice import PRACTICE, TABLES, Practice
from shopjobs.words import capitalized

Row = tuple[Fraction, int]
_COUNT = re.compile(r"[0-9]{1,3}")


class TablesForm(KitchenForm):
    """What no single number says; what is empty, common practice says."""

    groups = (
        Group("Hinges on a door", ("hinges_by_height", "hinges_by_weight"), kind="cells numbers"),
        Group("Slides", ("slide_classes",)),
        Group("What fronts are made of", ("material", "frame_material"), kind="cells wide"),
    )

    hinges_by_height = forms.CharField(
        label="By its height", required=False, widget=forms.Textarea(attrs={"rows": 5}),
        help_text="A row for each: height up to, colon, hinges.",
    )  # fmt: skip
    hinges_by_weight = forms.CharField(
        label="By its weight", required=False, widget=forms.Textarea(attrs={"rows": 5}),
        help_text="A row for each: weight up to, colon, hinges.",
    )  # fmt: skip
    slide_classes = forms.CharField(
        label="Load classes", required=False, help_text="Loads with commas between them."
    )
    material = forms.CharField(label="A slab", max_length=80, required=False)
    frame_material = forms.CharField(label="The frame of a five-piece", max_length=80,
                                     required=False)  # fmt: skip

    def __init__(self, *args: Any, held: Practice, unit: str, **kwargs: Any) -> None:
        self.spoken = cast(Unit, unit)
        written = self._written
        own = {
            name: written(held)[name]
            for name in TABLES
            if getattr(held, name) != getattr(PRACTICE, name)
        }
        kwargs.setdefault("initial", own)
        super().__init__(*args, unit=unit, **kwargs)
        for name, usual in written(PRACTICE).items():
            self.offer(name, usual)

    def clean_hinges_by_height(self) -> Sequence[Row] | None:
        """Read the rows of heights."""
        return self._rows("hinges_by_height", lambda typed: read_sum(typed, self.spoken))

    def clean_hinges_by_weight(self) -> Sequence[Row] | None:
        """Read the rows of weights."""
        return self._rows("hinges_by_weight", lambda typed: read_weight(typed, self.spoken))

    def clean_slide_classes(self) -> Sequence[Fraction] | None:
        """Read the loads."""
        typed = self.cleaned_data["slide_classes"].strip()
        if not typed:
            return None
        return [_told(lambda each: read_weight(each, self.spoken), each.strip())
                for each in typed.split(",")]  # fmt: skip

    def _rows(self, name: str, read_one: Callable[[str], Fraction]) -> Sequence[Row] | None:
        lines = [line for line in self.cleaned_data[name].splitlines() if line.strip()]
        return [_row(line, read_one) for line in lines] or None

    def _written(self, practice: Practice) -> dict[str, str]:
        unit = self.spoken
        heights = (f"{write(most, unit)}: {n}" for most, n in practice.hinges_by_height)
        weights = (f"{write_weight(most, unit)}: {n}" for most, n in practice.hinges_by_weight)
        return {
            "hinges_by_height": "\n".join(heights),
            "hinges_by_weight": "\n".join(weights),
            "slide_classes": ", ".join(write_weight(each, unit) for each in practice.slide_classes),
            "material": practice.material,
            "frame_material": practice.frame_material,
        }


def _row(line: str, read_one: Callable[[str], Fraction]) -> Row:
    typed, _, count = line.replace("\t", ":").rpartition(":")
    if not typed.strip() or not _COUNT.fullmatch(count.strip()):
        raise ValidationError(f"“{line.strip()[:40]}”: enter a size, a colon and how many hinges.")
    return _told(read_one, typed.strip()), int(count)


def _told(read_one: Callable[[str], Fraction], typed: str) -> Fraction:
    try:
        return read_one(typed)
    except (LengthError, MeasureError) as error:
        raise ValidationError(f"{capitalized(str(error))}.") from error
