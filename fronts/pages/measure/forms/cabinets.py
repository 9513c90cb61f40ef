"""The forms of a cabinet."""

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from django import forms

from fronts.models import Cabinet
from fronts.models.openings import MOST_FRONTS
from fronts.pages.measure.forms.next_cabinet import Next
from fronts.pages.shared.choice_words import BUILDS, HINGED, KINDS
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.pages.shared.length_fields import Size
from fronts.rules.lengths import Mm, show
from fronts.services.faces import FACES, Face, member_of, openings_of_face

CABINET_FIELDS = ("label", "kind", "build", "wall", "x", "y", "width", "height", "depth")
_BODY = Group("", ("label", "width", "height", "depth"), kind="cells")
_PLACE = Group("Its kind, and where it stands", ("kind", "build", "wall", "x", "y"), kind="cells")


class CabinetForm(KitchenForm):
    """A cabinet's outer sizes, and where on its wall it stands."""

    groups: tuple[Group, ...] = (_BODY, _PLACE)

    label = forms.CharField(
        label="Label", max_length=40, error_messages={"required": "Enter a label, like B1."}
    )
    width = Size(label="Width")
    height = Size(label="Height")
    depth = Size(label="Depth")
    kind = forms.ChoiceField(label="Kind", choices=KINDS)
    build = forms.ChoiceField(label="Build", choices=BUILDS)
    wall = forms.CharField(
        label="Wall", max_length=40, error_messages={"required": "Enter the wall's name, like A."}
    )
    x = Size(label="From the wall's left end", signed=True, zero=True)
    y = Size(label="Above the floor", signed=True, zero=True)

    def __init__(self, *args: Any, cabinet: Cabinet | None = None, **kwargs: Any) -> None:
        if cabinet is not None:
            kwargs.setdefault("initial", {name: getattr(cabinet, name) for name in CABINET_FIELDS})
        super().__init__(*args, **kwargs)
        self.fields["label"].widget.attrs["autocomplete"] = "off"
        self.fields["wall"].widget.attrs["autocomplete"] = "off"


class NewCabinetForm(CabinetForm):
    """A cabinet with its face, where the face is a plain one; what can be known is offered."""

    groups: tuple[Group, ...] = (
        _BODY,
        Group("Its face", ("face", "hinged", "count", "drawer_height"), kind="cells"),
        Group(
            "Width of the members round the opening",
            ("sides", "above", "below", "between"),
            kind="cells",
            hint="A toe space counts as part of the member below.",
        ),
        _PLACE,
    )

    x = Size(label="From the wall's left end", signed=True, zero=True, required=False)
    y = Size(label="Above the floor", signed=True, zero=True, required=False)
    face = forms.ChoiceField(
        label="Closed by",
        choices=[(name, says) for name, says in FACES.items()],
        required=False,
    )
    hinged = forms.ChoiceField(label="Hinged", choices=HINGED, required=False)
    count = forms.IntegerField(
        label="How many drawers", min_value=1, max_value=MOST_FRONTS, required=False
    )
    drawer_height = Size(label="Height of the drawer's opening", required=False)
    sides = Size(label="At the sides", small=True, zero=True, required=False)
    above = Size(label="Above", small=True, zero=True, required=False)
    below = Size(label="Below", small=True, zero=True, required=False)
    between = Size(label="Between openings", small=True, zero=True, required=False)

    def __init__(self, *args: Any, cabinets: Sequence[Cabinet], kind: str, **kwargs: Any) -> None:
        self.next = Next(cabinets, kind)
        kwargs.setdefault("initial", self.next.initial())
        super().__init__(*args, **kwargs)
        self.fields["count"].widget = forms.TextInput(attrs={"inputmode": "numeric"})
        end = show(self.next.run_end(self.next.wall(), kind), self.unit)
        self.offer("x", f"next: {end}")
        floor = self.next.floor_of(kind)
        if floor is not None:
            self.offer("y", show(floor, self.unit))
        framed, plain = (show(member_of(build, self.unit), self.unit) for build, _ in BUILDS)
        usual = f"Left empty: {framed} in a face frame, {plain} frameless. "
        self.groups = tuple(
            replace(each, hint=usual + each.hint) if "sides" in each.fields else each
            for each in self.groups
        )

    def clean(self) -> dict[str, Any]:
        """Settle the place that was left open, and see that the face has room."""
        given = super().clean() or {}
        if not self.errors:
            wall, kind = given["wall"], given["kind"]
            if given["x"] is None:
                given["x"] = self.next.run_end(wall, kind)
            if given["y"] is None:
                given["y"] = self.next.floor_of(kind)
            if given["y"] is None:
                self.add_error("y", "Enter how far above the floor it hangs.")
            self._check_face(given)
        return given

    @property
    def values(self) -> dict[str, Any]:
        return {name: self.cleaned_data[name] for name in CABINET_FIELDS}

    def face_values(self) -> Face | None:
        """The face that was asked for, None where the openings come afterwards."""
        given = self.cleaned_data
        if not given["face"]:
            return None
        member = member_of(given["build"], self.unit)
        return Face(
            closing=given["face"],
            hinged=given["hinged"] or "left",
            count=given["count"] or 1,
            drawer_height=given["drawer_height"],
            sides=_or(given["sides"], member),
            above=_or(given["above"], member),
            below=_or(given["below"], member),
            between=_or(given["between"], member),
        )

    def _check_face(self, given: dict[str, Any]) -> None:
        face = self.face_values()
        if face is None:
            return
        if face.drawer_over and face.drawer_height is None:
            self.add_error("drawer_height", "Enter how high the drawer's opening is.")
        elif face.closing == "drawers" and given["count"] is None:
            self.add_error("count", "Enter how many drawers, like 3.")
        else:
            for name, fault in openings_of_face(face, given["width"], given["height"]).faults:
                self.add_error(name, fault)


class CopyForm(KitchenForm):
    """Where a copy of a cabinet goes, and what it is called."""

    groups = (Group("", ("label", "x"), kind="cells"),)

    label = forms.CharField(
        label="Label of the copy",
        max_length=40,
        error_messages={"required": "Enter a label, like B2."},
    )
    x = Size(label="From the wall's left end", signed=True, zero=True)

    def __init__(
        self, *args: Any, cabinet: Cabinet, cabinets: Sequence[Cabinet], **kwargs: Any
    ) -> None:
        upcoming = Next(cabinets, cabinet.kind)
        place = upcoming.run_end(cabinet.wall, cabinet.kind)
        kwargs.setdefault("initial", {"label": upcoming.label(cabinet.label), "x": place})
        super().__init__(*args, **kwargs)


def _or(given: Mm | None, otherwise: Mm) -> Mm:
    return otherwise if given is None else given
