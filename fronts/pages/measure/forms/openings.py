"""The forms of an opening: all of it, or only what was measured on site."""

from collections.abc import Iterable
from dataclasses import asdict
from typing import Any

from django import forms
from django.db.models import QuerySet
from django.utils.functional import cached_property

from fronts.models import DoorOnHand, Opening
from fronts.models.openings import MOST_FRONTS
from fronts.pages.shared.choice_words import CLOSED_BY, FRONT_BUILDS, HINGED
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.pages.shared.length_fields import Size, Sizes
from fronts.rules.kitchen import CHOOSE
from fronts.rules.lengths import Mm, show
from fronts.rules.next_opening import NextOpening
from shopjobs.models import Job

MEASURED_FIELDS = (
    "measured_width_top", "measured_width_bottom", "measured_height_left",
    "measured_height_right", "diagonal_1", "diagonal_2",
)  # fmt: skip
BASIC_FIELDS = (
    "label", "x", "y", "width", "height", "closed_by", "hinged", "count", "heights",
)  # fmt: skip
WISH_FIELDS = (
    "front_width", "front_height", "front_thickness_own", "front_build", "front_material",
    "shift_x", "shift_y",
)  # fmt: skip
USUAL_STACK = 3
"""How many drawers a stack is taken to have until somebody says."""
_MEASURED = "Where these are filled in, they hold instead of the width and height above."


class DoorField(forms.ChoiceField):
    """A door on hand by its key; the one that is `named` already needs no looking up."""

    named: str | None = None

    def valid_value(self, value: Any) -> bool:
        return value == self.named or super().valid_value(value)


class MeasuredForm(KitchenForm):
    """Sizes of an opening taken on site."""

    groups: tuple[Group, ...] = (Group("Measured on site", MEASURED_FIELDS, kind="cells"),)

    measured_width_top = Size(label="Width at the top", required=False)
    measured_width_bottom = Size(label="Width at the bottom", required=False)
    measured_height_left = Size(label="Height at the left", required=False)
    measured_height_right = Size(label="Height at the right", required=False)
    diagonal_1 = Size(label="Diagonal, bottom left to top right", required=False)
    diagonal_2 = Size(label="Diagonal, top left to bottom right", required=False)

    def __init__(self, *args: Any, opening: Opening | None = None, **kwargs: Any) -> None:
        if opening is not None:
            names = (*BASIC_FIELDS, *WISH_FIELDS, *MEASURED_FIELDS)
            kwargs.setdefault("initial", {name: getattr(opening, name) for name in names})
            kwargs["initial"]["front_door"] = door_key(opening)
            if opening.closed_by != "drawers":
                kwargs["initial"]["count"] = USUAL_STACK
        super().__init__(*args, **kwargs)
        self.opening = opening
        if opening is not None:
            for name in MEASURED_FIELDS[:4]:
                planned = opening.width if "width" in name else opening.height
                self.offer(name, f"planned {show(planned, self.unit)}")


class OpeningForm(MeasuredForm):
    """Everything that is known and decided of an opening and its fronts."""

    groups = (
        Group("", ("label", "width", "height", "x", "y"), kind="cells"),
        Group("", ("closed_by", "hinged", "count", "heights"), kind="cells"),
        Group("Measured on site", MEASURED_FIELDS, folded=True, hint=_MEASURED, kind="cells"),
        Group(
            "A front that exists: a door on hand, or one of this size",
            ("front_door", "front_width", "front_height"),
            folded=True,
            kind="cells",
        ),
        Group(
            "How the front is made, and moved off its place",
            ("front_thickness_own", "front_build", "front_material", "shift_x", "shift_y"),
            folded=True,
            kind="cells",
        ),
    )

    label = forms.CharField(
        label="Label", max_length=40, error_messages={"required": "Enter a label, like a."}
    )
    width = Size(label="Width")
    height = Size(label="Height")
    x = Size(
        label="From the cabinet's left", zero=True, asks="how far it is from the cabinet's left"
    )
    y = Size(label="Above the cabinet's bottom", zero=True, asks="how far it is above the bottom")
    closed_by = forms.ChoiceField(label="Closed by", choices=CLOSED_BY)
    hinged = forms.ChoiceField(label="Hinged", choices=HINGED, required=False)
    count = forms.IntegerField(
        label="How many drawers",
        min_value=1,
        max_value=MOST_FRONTS,
        required=False,
    )
    heights = Sizes(
        label="Front heights from the top",
        blanks=True,
        required=False,
        help_text="Empty: all alike. Those left out share the rest.",
    )
    front_door = DoorField(label="Door on hand", required=False)
    front_width = Size(label="Width of the front", required=False)
    front_height = Size(label="Height of the front", required=False)
    front_thickness_own = Size(label="Thickness", small=True, required=False)
    front_build = forms.ChoiceField(
        label="Built as", choices=(("", "As usual"), *FRONT_BUILDS), required=False
    )
    front_material = forms.CharField(label="Material", max_length=80, required=False)
    shift_x = Size(label="Moved to the right", small=True, signed=True, zero=True, required=False)
    shift_y = Size(label="Moved up", small=True, signed=True, zero=True, required=False)

    def __init__(self, *args: Any, doors: Iterable[DoorOnHand], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.on_hand = doors
        field = self.fields["front_door"]
        if isinstance(field, DoorField):
            field.choices = self._fronts
            field.named = door_key(self.opening) if self.opening is not None else None
        self.fields["count"].widget = forms.TextInput(attrs={"inputmode": "numeric"})
        self.offer("hinged", "left")

    @cached_property
    def doors(self) -> dict[str, DoorOnHand]:
        """The doors on hand by what the list calls them."""
        return {str(door.pk): door for door in self.on_hand}

    def _door(self, key: str) -> DoorOnHand | None:
        if self.opening is not None and key == door_key(self.opening):
            return self.opening.front_door
        return self.doors[key]

    def _fronts(self) -> list[tuple[str, str]]:
        return [
            ("", "A new front"),
            (CHOOSE, "Whichever door on hand fits best"),
            *((key, f"Door {door.label}") for key, door in self.doors.items()),
        ]

    def clean(self) -> dict[str, Any]:
        """Drop what the chosen way of closing has no use for."""
        given = super().clean() or {}
        if given.get("closed_by") == "drawers":
            self._check_stack(given)
        else:
            given["count"], given["heights"] = 1, ()
            self.errors.pop("count", None)
            self.errors.pop("heights", None)
        if given.get("closed_by") not in (None, "door"):
            given["hinged"] = ""
        return given

    def _check_stack(self, given: dict[str, Any]) -> None:
        """Every front of a stack has its place among the heights; what is left out is blank."""
        count, heights = given.get("count"), given.get("heights") or ()
        if "count" in self.errors:
            return
        if not count:
            self.add_error("count", "Enter how many drawers, like 3.")
        elif len(heights) > count:
            drawers = "1 drawer" if count == 1 else f"{count} drawers"
            self.add_error(
                "heights", f"These are {len(heights)} heights for {drawers}; leave some out."
            )
        elif any(heights):
            given["heights"] = (*heights, *[None] * (count - len(heights)))
        else:
            given["heights"] = ()

    @property
    def values(self) -> dict[str, Any]:
        values = {**super().values}
        wish = values.pop("front_door")
        values["front_choose"] = wish == CHOOSE
        values["front_door"] = self._door(wish) if wish and wish != CHOOSE else None
        for name in ("shift_x", "shift_y"):
            values[name] = values[name] or Mm(0)
        return values


def offered(known: NextOpening) -> dict[str, Any]:
    """What the form of a new opening starts with."""
    places = {name: size for name, size in asdict(known).items() if size is not None}
    return {"hinged": "left", "count": USUAL_STACK, **places}


def door_names(job: Job) -> QuerySet[DoorOnHand]:
    """The job's doors on hand, to be named in a list; asked for only where one is named."""
    doors = DoorOnHand.objects.filter(job=job).order_by("position", "pk")
    return doors.only("label", "job")


def door_key(opening: Opening) -> str:
    """How the form's list names the door that the opening asks for."""
    if opening.front_choose:
        return CHOOSE
    return str(opening.front_door_id or "")
