"""The holes of a cabinet's boxes and fronts, under the face that each lies on, by number."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.figures.boxes import HolePlace

ON_BOX = "On the box's front, from its lower left corner, seen from the front"
ON_BACK = "On the back of the front, from its lower left corner, seen from the back"
_BOX, _BACK = "Box's front, from before", "Front's back, from behind"


@dataclass(frozen=True, slots=True)
class Place:
    """Where a hole is on a face, from the left and up."""

    x: str
    y: str


@dataclass(frozen=True, slots=True)
class FrontHoles:
    """The holes of fronts that have them at the same places, in the order of their numbers."""

    labels: tuple[str, ...]
    places: tuple[Place, ...]


@dataclass(frozen=True, slots=True)
class Face:
    """All holes on one kind of face; its `name` is enough where that has one row."""

    heading: str
    name: str
    rows: tuple[FrontHoles, ...]


@dataclass(frozen=True, slots=True)
class HoleTable:
    """The holes' numbers with the corners that they are at, and their places on both faces."""

    numbers: tuple[str, ...]
    faces: tuple[Face, ...]

    @property
    def columns(self) -> str:
        """The labels', and one a hole."""
        return str(1 + len(self.numbers))

    @property
    def one_row_each(self) -> bool:
        """Whether one row says it all, so that the face stands where labels would."""
        return all(len(face.rows) == 1 for face in self.faces)

    @property
    def line_count(self) -> int:
        """All lines under the numbers."""
        rows = sum(len(face.rows) for face in self.faces)
        return rows if self.one_row_each else rows + len(self.faces)


def hole_table(holes: Mapping[str, Sequence[HolePlace]]) -> HoleTable | None:
    """The holes of the fronts on boxes by the fronts' labels, where there are any."""
    places = {label: several for label, several in holes.items() if several}
    if not places:
        return None
    on_box = {label: tuple(Place(each.box_x, each.box_y) for each in holes)
              for label, holes in places.items()}  # fmt: skip
    on_back = {label: tuple(Place(each.back_x, each.back_y) for each in holes)
               for label, holes in places.items()}  # fmt: skip
    box = Face(ON_BOX, _BOX, _same_together(on_box))
    back = Face(ON_BACK, _BACK, _same_together(on_back))
    return HoleTable(_numbers(list(places.values())), (box, back))


def _same_together(places: Mapping[str, tuple[Place, ...]]) -> tuple[FrontHoles, ...]:
    whose: dict[tuple[Place, ...], list[str]] = {}
    for label, holes in places.items():
        whose.setdefault(holes, []).append(label)
    return tuple(FrontHoles(tuple(labels), holes) for holes, labels in whose.items())


def _numbers(holes_of_fronts: Sequence[Sequence[HolePlace]]) -> tuple[str, ...]:
    """`1 lower left`; the number alone where the fronts' holes are at different corners."""
    most = max(holes_of_fronts, key=len)
    corners = [{holes[index].corner for holes in holes_of_fronts if index < len(holes)}
               for index in range(len(most))]  # fmt: skip
    return tuple(
        f"{hole.number} {hole.corner}" if len(named) == 1 else hole.number
        for hole, named in zip(most, corners, strict=True)
    )
