"""The form of a drawer box, and its rows of shelf-pin holes."""

from collections.abc import Mapping
from typing import Any

from django import forms

from fronts.jobfile.boxes import MOST_PINS
from fronts.models import Box, Opening
from fronts.pages.measure.forms.row_forms import RowForm
from fronts.pages.shared.choice_words import SLIDES
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.pages.shared.length_fields import Size
from fronts.rules.kitchen import ShelfPins
from fronts.rules.lengths import Mm
from fronts.rules.likely_box import likely_rise, likely_width

BOX_FIELDS = (
    "width", "height", "depth", "front_thickness", "rise", "side_clearance", "slide",
    "slide_width", "slide_height",
)  # fmt: skip


class BoxForm(KitchenForm):
    """A drawer box as it stands in its opening."""

    groups = (
        Group("", ("width", "height", "depth", "front_thickness"), kind="cells"),
        Group("In its opening", ("rise", "side_clearance"), kind="cells"),
        Group("Its slide", ("slide", "slide_width", "slide_height"), kind="cells"),
    )

    width = Size(label="Width")
    height = Size(label="Height")
    depth = Size(label="Depth", required=False)
    front_thickness = Size(label="Thickness of the box front", small=True)
    rise = Size(
        label="Bottom above the opening's bottom",
        small=True,
        zero=True,
        asks="how far the box's bottom is above the opening's bottom",
        help_text="For an upper drawer too: from the bottom of the whole opening.",
    )
    side_clearance = Size(label="From the opening's left", small=True, zero=True, required=False)
    slide = forms.ChoiceField(
        label="Slide", choices=(("", "Not known yet"), *SLIDES), required=False
    )
    slide_width = Size(label="Width of the slide", small=True, required=False)
    slide_height = Size(label="Height of the slide", small=True, required=False)

    def __init__(self, *args: Any, box: Box | None, **kwargs: Any) -> None:
        if box is not None:
            kwargs.setdefault("initial", {name: getattr(box, name) for name in BOX_FIELDS})
        super().__init__(*args, **kwargs)
        self.offer("side_clearance", "centred")
        self.offer("depth", "not known")


class PinsForm(RowForm):
    """A row of shelf-pin holes, upwards from its lowest."""

    x = Size(
        label="From the left", small=True, zero=True, asks="how far the holes are from the left"
    )
    y = Size(
        label="Lowest above the bottom", small=True, zero=True, asks="how far up the lowest hole is"
    )
    pitch = Size(label="Hole to hole", small=True, asks="the distance from hole to hole")
    count = forms.IntegerField(
        label="Holes",
        min_value=1,
        max_value=MOST_PINS,
        widget=forms.TextInput(attrs={"inputmode": "numeric"}),
        error_messages={"required": "Enter how many holes, like 5."},
    )
    diameter = Size(label="Diameter", small=True)

    @property
    def row(self) -> ShelfPins:
        return ShelfPins(**self.cleaned_data)


def pin_rows(box: Box | None) -> list[dict[str, Any]]:
    """The box's rows of holes, as the form's rows start."""
    if box is None or box.pk is None:
        return []
    names = ("x", "y", "pitch", "count", "diameter")
    rows = box.shelf_pins.order_by("position", "pk")
    return [{name: getattr(row, name) for name in names} for row in rows]


def next_box(opening: Opening, index: int, last: Box | None) -> dict[str, Any]:
    """What a new box starts with: built and hung like the last one that was entered."""
    if last is None:
        return {}
    names = ["height", "depth", "front_thickness", "slide", "slide_width", "slide_height"]
    if _is_lowest(opening, index) and _is_lowest(last.opening, last.index):
        names.append("rise")
    width = likely_width(opening.width, last.opening.width, last.width)
    initial = {name: getattr(last, name) for name in names}
    return initial if width is None else {**initial, "width": width}


def rise_offered(opening: Opening, index: int, boxes: Mapping[int, Box], step: Mm) -> Mm | None:
    """How high the box is likely to hang; None where the fronts are not even, or none is known."""
    if any(opening.heights):
        return None
    rises = {place: box.rise for place, box in boxes.items()}
    return likely_rise(opening.height, opening.count, index, rises, step)


def _is_lowest(opening: Opening, index: int) -> bool:
    return index == opening.count - 1
