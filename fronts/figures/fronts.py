"""A front as a line of a table, on the page and on paper: its size, what it is, its material."""

from dataclasses import dataclass

from fronts.figures.sizes import size
from fronts.rules.kinds import Side, name_of
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front
from fronts.rules.standard_keys import Sides

AS_IT_IS = "as it is"


@dataclass(frozen=True, slots=True)
class FrontLine:
    """What every table of fronts says of each."""

    label: str
    what: str
    width: str
    height: str
    size: str
    thickness: str
    made_from: str


def front_line(front: Front, unit: str) -> FrontLine:
    """The front in the job's unit."""
    return FrontLine(
        label=front.label,
        what=what(front),
        width=show(front.width, unit),
        height=show(front.height, unit),
        size=size(unit, front.width, front.height),
        thickness=show(front.thickness, unit),
        made_from=made_from(front, unit),
    )


def what(front: Front) -> str:
    """`door, hinged left`."""
    name = name_of(front.kind)
    return f"{name}, hinged {front.hinged}" if front.hinged else name


def made_from(front: Front, unit: str) -> str:
    """`slab, maple`, or the door on hand that it is made from and what is sawn off it."""
    if front.door_on_hand is None:
        glazed = ", glass" if front.glass else ""
        whence = ", bought" if front.bought else "" if front.is_new else ", on hand"
        return f"{front.build}, {front.material}{glazed}{whence}"
    trims = trims_of(front.trim, unit)
    return f"door {front.door_on_hand}, {f'trim {trims}' if trims else AS_IT_IS}"


def trims_of(trim: Sides[Mm], unit: str) -> str:
    """`1/4 off the left and the right, 1 off the top`; "" where nothing is sawn off."""
    return ", ".join([*_off(trim, "left", "right", unit), *_off(trim, "top", "bottom", unit)])


def _off(trim: Sides[Mm], one: Side, other: Side, unit: str) -> list[str]:
    if trim[one] == trim[other]:
        both = f"{show(trim[one], unit)} off the {one} and the {other}"
        return [both] if trim[one] else []
    return [f"{show(trim[side], unit)} off the {side}" for side in (one, other) if trim[side]]
