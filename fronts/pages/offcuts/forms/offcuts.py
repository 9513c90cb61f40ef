"""The form of an offcut, and the one that says why it was thrown away."""

from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.facts.size_form_fields import Size
from fronts.models import Offcut
from fronts.pages.shared.words_field import Words
from fronts.rules.limits import LONGEST_MATERIAL, LONGEST_NOTE
from fronts.rules.offcuts import OffcutFacts
from shopjobs.forms.house import HouseForm
from shopjobs.forms.seen import SeenForm
from shopjobs.models import Job, Shop

_KINDS = (("board", "a sheet or board"), ("stick", "a stick, ripped to its width"))
LONGEST_NUMBER = 40


def job_numbered(shop: Shop, number: str) -> Job:
    """The shop's job of this number."""
    job = Job.objects.filter(shop=shop, number=number).first()
    if job is None:
        raise ValidationError(f"There is no job {number}.")
    return job


class OffcutForm(SeenForm):
    """A piece, and the job that it is laid by for."""

    material = Words(
        label="Material",
        max_length=LONGEST_MATERIAL,
        error_messages={"required": "Enter the material, as in the cut list."},
        widget=forms.TextInput({"list": "materials"}),
    )
    thickness = Size(label="Thickness", small=True)
    kind = forms.ChoiceField(label="It is", choices=_KINDS, initial="board")
    length = Size(label="Length", help_text="Along the grain, where it has any.")
    width = Size(label="Width")
    grain = forms.BooleanField(label="Grain along its length", required=False, initial=True)
    job = Words(
        label="Laid by for job",
        max_length=LONGEST_NUMBER,
        required=False,
        help_text="Its number; empty where any job may have it.",
    )

    def __init__(self, *args: Any, shop: Shop, row: Offcut | None = None, **kwargs: Any) -> None:
        if row is not None:
            kwargs["initial"] = _initial(row)
        super().__init__(*args, **kwargs)
        self.shop, self.is_merged = shop, row is not None
        for field in self.fields.values():
            if isinstance(field, Size):
                field.speak(shop.unit)

    def clean_job(self) -> Job | None:
        """The job of this number."""
        number = self.cleaned_data["job"]
        return job_numbered(self.shop, number) if number else None

    @property
    def facts(self) -> OffcutFacts:
        """What the piece is."""
        given = self.cleaned_data
        return OffcutFacts(
            given["material"], given["thickness"], given["length"], given["width"],
            is_stick=given["kind"] == "stick", is_grained=given["grain"],
        )  # fmt: skip


def _initial(row: Offcut) -> dict[str, object]:
    is_free = row.job is None or row.job.deleted_at is not None
    return {
        "material": row.material,
        "thickness": row.thickness,
        "kind": "stick" if row.is_stick else "board",
        "length": row.length,
        "width": row.width,
        "grain": row.is_grained,
        "job": "" if is_free or row.job is None else row.job.number,
    }


class AwayForm(HouseForm):
    """Why a piece went."""

    why = Words(
        label="Why it goes",
        max_length=LONGEST_NOTE,
        error_messages={"required": "Say why: split, used for a jig, burnt …"},
    )
