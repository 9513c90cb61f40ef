"""The empty row at the end of a wall's table: what is typed into it stands behind all the rest."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any, cast

from django import forms
from django.forms.boundfield import BoundField

from fronts.facts.size_form_fields import Size
from fronts.figures.faces import words_of_face
from fronts.notebook import (
    NO_FACES,
    Added,
    Faces,
    NotUnderstood,
    read_face,
    stand_lines,
    standing_behind,
)
from fronts.notebook.lines import CabinetLine, KindLine, Line, WallLine
from fronts.notebook.sizes import AT, DEEP, HIGH, UP
from fronts.notebook.thing_lines import ThingLine
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.pages.shared.wall_addresses import walls_in
from fronts.rules import limits
from fronts.rules.kinds import CABINET_KINDS, CabinetKind
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, write
from fronts.rules.next_cabinet import FIRST_WALL, NewLabels, next_label
from fronts.rules.runs import standing_in
from fronts.rules.thing_kinds import THING_KINDS, ThingKind

ABOVE = "-above"
"""Ends what stands for a thing that hangs in the upper run, whatever it follows."""
NEW_WALL = "new-wall"
WHAT = (
    *((kind, f"{traits.says} cabinet") for kind, traits in CABINET_KINDS.items()),
    *((kind, traits.says) for kind, traits in THING_KINDS.items()),
    *((f"{kind}{ABOVE}", f"{traits.says} above") for kind, traits in THING_KINDS.items()),
    (NEW_WALL, "New wall"),
)
_CELLS = ("label", "width", "face", "height", "depth", "x", "y")
_MARKS: Mapping[str, str] = {"height": HIGH, "depth": DEEP, "y": UP, "x": AT}
"""The word that a notebook has for the size of each cell."""
_FIRST: CabinetKind = "base"


class NewRowForm(KitchenForm):
    """A cabinet with its face, a thing, or another wall by its name and its length.

    What is left empty is as in the last of its kind.

    `asked` is what an address says of it. `entered` is what it adds to the kitchen.
    """

    kind = forms.ChoiceField(label="What", choices=WHAT)
    label = forms.CharField(label="Label", max_length=limits.LONGEST_LABEL, required=False)
    width = Size(label="Width", required=False)
    face = forms.CharField(label="What closes it", max_length=limits.LONGEST_FACE, required=False)
    height = Size(label="Height", required=False)
    depth = Size(label="Depth", required=False)
    x = Size(label="From the left", signed=True, zero=True, required=False)
    y = Size(label="Up", signed=True, zero=True, required=False)

    def __init__(
        self,
        data: Any,
        *,
        kitchen: Kitchen,
        wall: str,
        asked: Mapping[str, str],
        faces: Faces = NO_FACES,
    ) -> None:
        self.kitchen, self.wall, self.faces = kitchen, wall or FIRST_WALL, faces
        self.standing = standing_behind(kitchen, self.wall)
        kind = asked.get("kind", "")
        kind = kind if kind in dict(WHAT) else self.standing.kind_now or _FIRST
        typed = {name: asked[name] for name in self.base_fields if asked.get(name)}
        super().__init__(
            data,
            unit=kitchen.job.unit,
            initial={**typed, "kind": kind},
            auto_id=f"row-{len(standing_in(kitchen))}-%s",
        )
        self.added: Added | None = None
        chosen = str(self["kind"].value())
        self._offer(chosen if chosen in dict(WHAT) else kind)
        for name in _CELLS:
            says = f"{self.fields[name].label} of the new row"
            self.fields[name].widget.attrs |= {
                "data-new-cell": "", "autocomplete": "off", "aria-label": says
            }  # fmt: skip
        if asked or self.is_first:
            self.fields["width"].widget.attrs["autofocus"] = True

    @property
    def is_first(self) -> bool:
        """Whether nothing stands on the wall yet: then no heads of columns are above it."""
        return all(what.wall != self.wall for what in standing_in(self.kitchen))

    @property
    def cells(self) -> list[BoundField]:
        """Its fields in the order of the table's columns."""
        return [self[name] for name in _CELLS]

    @property
    def entered(self) -> Added:
        """What was entered, once it is sound."""
        if self.added is None:
            raise TypeError("the row is not read yet")
        return self.added

    def clean(self) -> dict[str, Any]:
        """Let it stand behind the others, as a line of a notebook does."""
        given = super().clean() or {}
        if self.errors:
            return given
        is_cabinet, is_wall = given["kind"] in CABINET_KINDS, given["kind"] == NEW_WALL
        lines = (self._wall if is_wall else self._cabinet if is_cabinet else self._thing)(given)
        if given["width"] is None and not is_wall:
            self.add_error("width", self.fields["width"].error_messages["required"])
        if self.errors:
            return given
        try:
            added = stand_lines(lines, self.kitchen, self.wall)
        except NotUnderstood as fault:
            self.add_error("label" if is_wall else "face", _said(fault))
            return given
        if added.others:
            thing = replace(added.others[0], y=given["y"])
            added = replace(added, others=(replace(thing, label=given["label"] or thing.label),))
        if any(cabinet.y < 0 and given["y"] is None for cabinet in added.cabinets):
            self.add_error("y", "So high it would stand below the floor; enter how far up it is.")
            return given
        self.added = added
        return given

    def _wall(self, given: Mapping[str, Any]) -> list[Line]:
        label = given["label"]
        if not label or len(label.split()) > 1:
            self.add_error("label", "Name the wall in one word, like North.")
        if label.casefold() in {wall.casefold() for wall in walls_in(self.kitchen)}:
            self.add_error("label", f"There is already a wall {label}.")
        return [WallLine(label, given["width"])]

    def _cabinet(self, given: Mapping[str, Any]) -> list[Line]:
        kind = cast(CabinetKind, given["kind"])
        usual, own = self.standing.usual(kind), _sizes(given)
        for name in ("height", "depth", "y"):
            if _MARKS[name] not in {*usual, *own}:
                self.add_error(name, f"Enter {_ASKS[name]}: it is the first of its kind.")
        label = given["label"] or self._next_label(kind)
        if any(what.label.casefold() == label.casefold() for what in standing_in(self.kitchen)):
            self.add_error("label", f"There is already a {label} in this job.")
        said = given["face"] or self._face_before(kind)
        if not said:
            self.add_error("face", "Say what closes it, like door left or drawer 6 over pair.")
            return []
        try:
            face = read_face(said, self.kitchen.job.unit, self.faces)
        except NotUnderstood as fault:
            self.add_error("face", _said(fault))
            return []
        missing = {
            mark: own[mark] for mark in (HIGH, DEEP, UP) if mark not in usual and mark in own
        }
        return [KindLine(kind, missing), CabinetLine(label, given["width"], own, face)]

    def _thing(self, given: Mapping[str, Any]) -> list[Line]:
        kind, above = str(given["kind"]).removesuffix(ABOVE), given["kind"].endswith(ABOVE)
        name = given["face"]
        if len(name) > limits.LONGEST_ITEM_NAME:
            self.add_error("face", f"Keep its name to {limits.LONGEST_ITEM_NAME} characters.")
        return [ThingLine(cast(ThingKind, kind), above, given["width"], _sizes(given), name)]

    def _offer(self, kind: str) -> None:
        """Show, greyed, what holds where a cell is left empty."""
        if kind == NEW_WALL:
            self.offer("label", "its name")
            self.offer("width", "length")
            return
        if kind not in CABINET_KINDS:
            thing = THING_KINDS[cast(ThingKind, kind.removesuffix(ABOVE))]
            self.fields["face"].label = "Its name"
            self.offer("label", thing.letter)
            return
        chosen = cast(CabinetKind, kind)
        self.offer("label", self._next_label(chosen))
        self.offer("face", self._face_before(chosen) or "door left, drawer 6 over pair …")
        for name in ("height", "depth", "y"):
            held = self.standing.usual(chosen).get(_MARKS[name])
            if held is not None:
                self.offer(name, write(held, self.unit))

    def _face_before(self, kind: CabinetKind) -> str:
        """What closes the last of this kind, on this wall if there is one; "" without words."""
        alike = [one for one in self.kitchen.cabinets if one.kind == kind]
        last = max(alike, key=lambda one: one.wall == self.wall, default=None)
        last = next((one for one in reversed(alike) if last and one.wall == last.wall), None)
        return words_of_face(last, self.kitchen.job) if last else ""

    def _next_label(self, kind: CabinetKind) -> str:
        taken = NewLabels(what.label for what in standing_in(self.kitchen))
        return taken.new(next_label(self.kitchen.cabinets, kind))


_ASKS = {"height": "the height", "depth": "the depth", "y": "how far above the floor it begins"}


def _sizes(given: Mapping[str, Any]) -> dict[str, Mm]:
    """The sizes that were typed, each under its word."""
    return {mark: given[name] for name, mark in _MARKS.items() if given[name] is not None}


def _said(fault: NotUnderstood) -> str:
    return f"Found {fault.found}; {fault.wanted} may stand there."
