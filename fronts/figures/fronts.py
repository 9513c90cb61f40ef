"""A front as a line of a table, on the page and on paper: its size, what it is, its material."""

from dataclasses import dataclass

from fronts.figures.sizes import size
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front

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
    return f"{front.kind}, hinged {front.hinged}" if front.hinged else front.kind


def made_from(front: Front, unit: str) -> str:
    """`slab, maple`, or the door on hand that it is made from and what is sawn off it."""
    if front.door_on_hand is None:
        return f"{front.build}, {front.material}" + ("" if front.is_new else ", on hand")
    trims = trims_of(front.trim_width, front.trim_height, unit)
    return f"door {front.door_on_hand}, {f'trim {trims}' if trims else AS_IT_IS}"


def trims_of(width: Mm, height: Mm, unit: str) -> str:
    """`1/2 off the width and 1 off the height`; "" where nothing is sawn off."""
    trims = ((width, "width"), (height, "height"))
    return " and ".join(f"{show(trim, unit)} off the {side}" for trim, side in trims if trim)
