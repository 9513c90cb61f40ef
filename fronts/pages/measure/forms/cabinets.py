"""The forms of a cabinet."""

from collections.abc import Sequence
from dataclasses import asdict, replace
from typing import Any, cast

from django import forms

from fronts import models
from fronts.models.openings import MOST_FRONTS
from fronts.pages.shared.choice_words import BUILDS, HINGED, KINDS
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.pages.shared.length_fields import Size
from fronts.rules.kitchen import Cabinet, ClosedBy, Kind
from fronts.rules.lengths import Mm, show
from fronts.rules.member_width import member_width
from fronts.rules.next_cabinet import NextCabinet, floor_of, next_cabinet, next_label, run_end
from fronts.rules.plain_face import PLAIN_FACES, FaceError, PlainFace, face_openings

CABINET_FIELDS = ("label", "kind", "build", "wall", "x", "y", "width", "height", "depth")
_BODY = Group("", ("label", "width", "height", "depth"), kind="cells")
_PLACE = Group("Its kind, and where it stands", ("kind", "build", "wall", "x", "y"), kind="cells")
_FACES: dict[str, tuple[ClosedBy, ...]] = {"+".join(face): face for face in PLAIN_FACES}


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

    def __init__(self, *args: Any, cabinet: models.Cabinet | None = None, **kwargs: Any) -> None:
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
        choices=[
            ("", "Enter its openings afterwards"),
            *((name, PLAIN_FACES[face]) for name, face in _FACES.items()),
        ],
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

    def __init__(self, *args: Any, cabinets: Sequence[Cabinet], kind: Kind, **kwargs: Any) -> None:
        self.cabinets = cabinets
        upcoming = next_cabinet(cabinets, kind)
        kwargs.setdefault("initial", _initial(upcoming))
        super().__init__(*args, **kwargs)
        self.fields["count"].widget = forms.TextInput(attrs={"inputmode": "numeric"})
        end = show(run_end(cabinets, upcoming.wall, kind), self.unit)
        self.offer("x", f"next: {end}")
        floor = floor_of(cabinets, kind)
        if floor is not None:
            self.offer("y", show(floor, self.unit))
        framed, plain = (show(member_width(build, self.unit), self.unit) for build, _ in BUILDS)
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
                given["x"] = run_end(self.cabinets, wall, kind)
            if given["y"] is None:
                given["y"] = floor_of(self.cabinets, kind)
            if given["y"] is None:
                self.add_error("y", "Enter how far above the floor it hangs.")
            self._check_face(given)
        return given

    @property
    def values(self) -> dict[str, Any]:
        return {name: self.cleaned_data[name] for name in CABINET_FIELDS}

    def face_values(self) -> PlainFace | None:
        """The face that was asked for, None where the openings come afterwards."""
        given = self.cleaned_data
        if not given["face"]:
            return None
        member = member_width(given["build"], self.unit)
        return PlainFace(
            closed_by=_FACES[given["face"]],
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
        elif face.closed_by == ("drawers",) and given["count"] is None:
            self.add_error("count", "Enter how many drawers, like 3.")
        else:
            try:
                face_openings(face, given["width"], given["height"])
            except FaceError as refused:
                for name, fault in refused.faults.items():
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
        self, *args: Any, cabinet: models.Cabinet, cabinets: Sequence[Cabinet], **kwargs: Any
    ) -> None:
        kind = cast(Kind, cabinet.kind)
        label = next_label(cabinets, kind, after=cabinet.label)
        place = run_end(cabinets, cabinet.wall, kind)
        kwargs.setdefault("initial", {"label": label, "x": place})
        super().__init__(*args, **kwargs)


def _initial(upcoming: NextCabinet) -> dict[str, Any]:
    """What is known of the next cabinet, by the names of the fields."""
    members = asdict(upcoming.members) if upcoming.members else {}
    initial = {
        "kind": upcoming.kind,
        "label": upcoming.label,
        "wall": upcoming.wall,
        "build": upcoming.build,
        "height": upcoming.height,
        "depth": upcoming.depth,
        "face": "+".join(upcoming.closed_by),
        "hinged": upcoming.hinged,
        "count": upcoming.count,
        **members,
    }
    return {name: value for name, value in initial.items() if value is not None}


def _or(given: Mm | None, otherwise: Mm) -> Mm:
    return otherwise if given is None else given
