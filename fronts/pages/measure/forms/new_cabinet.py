"""The form of a new cabinet: with its face, and what can be known of it offered."""

from collections.abc import Callable, Sequence
from dataclasses import asdict, replace
from typing import Any

from django import forms

from fronts.facts.size_form_fields import Size
from fronts.pages.measure.forms.cabinets import BODY, PLACE, CabinetForm
from fronts.pages.shared.kitchen_form import Group, When
from fronts.rules.kinds import (
    CABINET_BUILDS,
    CLOSINGS,
    HINGE_SIDES,
    MOST_FRONTS,
    CabinetKind,
    ClosedBy,
)
from fronts.rules.kitchen import Cabinet
from fronts.rules.lengths import Mm, show
from fronts.rules.member_width import member_width
from fronts.rules.next_cabinet import NextCabinet, floor_of, next_cabinet, run_end
from fronts.rules.plain_face import PLAIN_FACES, FaceError, PlainFace, face_openings

_FACES: dict[str, tuple[ClosedBy, ...]] = {"+".join(face): face for face in PLAIN_FACES}


def _faces(use: Callable[[tuple[ClosedBy, ...]], bool]) -> When:
    """Where the face is one of those that have a use for a field."""
    return When("face", tuple(name for name, face in _FACES.items() if use(face)))


class NewCabinetForm(CabinetForm):
    """A cabinet with its face, where the face is a plain one; what can be known is offered."""

    groups: tuple[Group, ...] = (
        BODY,
        Group("Its face", ("face", "hinged", "count", "drawer_height"), kind="cells"),
        Group(
            "Width of the members round the opening",
            ("sides", "above", "below", "between"),
            kind="cells",
            hint="A toe space counts as part of the member below.",
        ),
        PLACE,
    )

    used_when = {
        "hinged": _faces(lambda face: any(CLOSINGS[closed].hinged for closed in face)),
        "count": _faces(lambda face: any(CLOSINGS[closed].stack for closed in face)),
        **dict.fromkeys(("drawer_height", "between"), _faces(lambda face: len(face) > 1)),
        **dict.fromkeys(("sides", "above", "below"), _faces(bool)),
    }

    face = forms.ChoiceField(
        label="Closed by",
        choices=[
            ("", "Enter its openings afterwards"),
            *((name, PLAIN_FACES[face]) for name, face in _FACES.items()),
        ],
        required=False,
    )
    hinged = forms.ChoiceField(label="Hinged", choices=[*HINGE_SIDES.items()], required=False)
    count = forms.IntegerField(
        label="How many drawers", min_value=1, max_value=MOST_FRONTS, required=False
    )
    drawer_height = Size(label="Height of the drawer's opening", required=False)
    sides = Size(label="At the sides", small=True, zero=True, required=False)
    above = Size(label="Above", small=True, zero=True, required=False)
    below = Size(label="Below", small=True, zero=True, required=False)
    between = Size(label="Between openings", small=True, zero=True, required=False)

    def __init__(
        self,
        *args: Any,
        cabinets: Sequence[Cabinet],
        kind: CabinetKind,
        wall: str = "",
        **kwargs: Any,
    ) -> None:
        self.cabinets = cabinets
        upcoming = next_cabinet(cabinets, kind, wall)
        kwargs.setdefault("initial", _initial(upcoming))
        super().__init__(*args, **kwargs)
        self.fields["count"].widget = forms.TextInput(attrs={"inputmode": "numeric"})
        self.fields["y"].required = False
        end = show(run_end(cabinets, upcoming.wall, kind), self.unit)
        self.offer("x", f"next: {end}")
        floor = floor_of(cabinets, kind)
        if floor is not None:
            self.offer("y", show(floor, self.unit))
        members = (member_width(build, self.unit) for build in CABINET_BUILDS)
        framed, plain = (show(member, self.unit) for member in members)
        usual = f"Left empty: {framed} in a face frame, {plain} frameless. "
        self.groups = tuple(
            replace(each, hint=usual + each.hint) if "sides" in each.fields else each
            for each in self.groups
        )

    def clean(self) -> dict[str, Any]:
        """Settle the place that was left open, and see that the face has room."""
        given = super().clean() or {}
        if not self.errors:
            kind = given["kind"]
            if given["y"] is None:
                given["y"] = floor_of(self.cabinets, kind)
            if given["y"] is None:
                self.add_error("y", "Enter how far above the floor it hangs.")
            self._check_face(given)
        return given

    @property
    def entered(self) -> Cabinet:
        """The cabinet as it was entered, with the openings of its face."""
        face, bare = self.face_values(), super().entered
        openings = face_openings(face, bare.width, bare.height) if face else ()
        return replace(bare, openings=openings)

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
        elif CLOSINGS[face.closed_by[-1]].stack and given["count"] is None:
            self.add_error("count", "Enter how many drawers, like 3.")
        else:
            try:
                face_openings(face, given["width"], given["height"])
            except FaceError as refused:
                for name, fault in refused.faults.items():
                    self.add_error(name, fault)


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
