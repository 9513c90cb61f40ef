"""The house standard: what the shop, a job, a cabinet or an opening says about its fronts."""

from typing import Any, get_args

from django.core.exceptions import ValidationError
from django.db import models

from fronts.facts import MmField, WordsField
from fronts.rules.kitchen import Mount

GROUPS: dict[str, tuple[str, ...]] = {
    "overlay": ("overlay_left", "overlay_right", "overlay_top", "overlay_bottom"),
    "reveal": ("reveal_between", "reveal_left", "reveal_right", "reveal_top", "reveal_bottom"),
    "inset gap": ("inset_left", "inset_right", "inset_top", "inset_bottom"),
}
"""Lengths that are given together or not at all."""
SINGLE = (
    "gap_between", "least_gap", "front_thickness", "trim_limit", "least_stile", "skin", "bite",
    "hinge_end",
)  # fmt: skip
STANDARD_FIELDS = ("mount", *(name for group in GROUPS.values() for name in group), *SINGLE)


def choices_of(literal: Any) -> list[tuple[str, str]]:
    """A literal's values as a field's choices."""
    return [(each, each) for each in get_args(literal)]


class StandardFields(models.Model):
    """Every key of the house standard; None (mount: "") leaves it to the farther level."""

    mount = models.CharField(max_length=7, blank=True, choices=choices_of(Mount))
    overlay_left = MmField(null=True, blank=True)
    overlay_right = MmField(null=True, blank=True)
    overlay_top = MmField(null=True, blank=True)
    overlay_bottom = MmField(null=True, blank=True)
    reveal_between = MmField(null=True, blank=True)
    reveal_left = MmField(null=True, blank=True)
    reveal_right = MmField(null=True, blank=True)
    reveal_top = MmField(null=True, blank=True)
    reveal_bottom = MmField(null=True, blank=True)
    inset_left = MmField(null=True, blank=True)
    inset_right = MmField(null=True, blank=True)
    inset_top = MmField(null=True, blank=True)
    inset_bottom = MmField(null=True, blank=True)
    gap_between = MmField(null=True, blank=True)
    least_gap = MmField(null=True, blank=True)
    front_thickness = MmField(null=True, blank=True, zero=False)
    trim_limit = MmField(null=True, blank=True)
    least_stile = MmField(null=True, blank=True)
    skin = MmField(null=True, blank=True)
    bite = MmField(null=True, blank=True)
    hinge_end = MmField(null=True, blank=True)

    class Meta:
        abstract = True

    def clean(self) -> None:
        super().clean()
        faults: dict[str, str] = {}
        for name, group in GROUPS.items():
            given = [each for each in group if getattr(self, each) is not None]
            if given and len(given) < len(group):
                missing = [each for each in group if each not in given]
                faults |= dict.fromkeys(missing, f"give every part of the {name}, or none of it")
        if self.overlay_left is not None and self.reveal_left is not None:
            faults["reveal_between"] = "give the overlay or the reveal, not both"
        if faults:
            raise ValidationError(faults)


class SharedStandard(StandardFields):
    """A standard that holds for a whole shop or job, with the shop's tables beside it.

    The tables' rows carry exact numbers as text; None leaves them to the farther level.
    """

    hinges_by_height = models.JSONField(null=True, blank=True)
    hinges_by_weight = models.JSONField(null=True, blank=True)
    slide_classes = models.JSONField(null=True, blank=True)
    material = WordsField(max_length=80, blank=True)
    frame_material = WordsField(max_length=80, blank=True)

    class Meta:
        abstract = True


class ShopStandard(SharedStandard):
    """How this shop makes its fronts where nobody says otherwise."""

    shop = models.OneToOneField("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")

    def __str__(self) -> str:
        return f"Standard of {self.shop}"


class JobStandard(SharedStandard):
    """What one job does otherwise."""

    job = models.OneToOneField("shopjobs.Job", on_delete=models.CASCADE, related_name="+")

    def __str__(self) -> str:
        return f"Standard of {self.job}"
