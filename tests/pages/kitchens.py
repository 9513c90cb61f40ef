"""What the tests of a job's measuring pages share: forms as people post them, and a kitchen."""

from typing import Any

from fronts.rules.practice import inches
from shopjobs.models import Job
from tests.dom import Part
from tests.factories import (
    BoxFactory,
    CabinetFactory,
    DoorOnHandFactory,
    OpeningFactory,
    overlaid,
)

HTMX = {"HX-Request": "true"}
HALF = inches(1, 2)

NEW_CABINET = {
    "label": "B1", "width": "18", "height": "30 1/2", "depth": "24", "face": "door",
    "hinged": "left", "count": "", "drawer_height": "", "sides": "", "above": "", "below": "",
    "between": "", "kind": "base", "build": "face-frame", "wall": "A", "x": "", "y": "",
}  # fmt: skip
NEW_OPENING = {
    "label": "a", "x": "1 1/2", "y": "1 1/2", "width": "15", "height": "27 1/2",
    "closed_by": "door", "front_hinged": "left", "count": "", "heights": "",
}  # fmt: skip
STOCK = {
    "screw_lengths": "1, 1 1/4", "slide_lengths": "18, 20", "knob_screw_lengths": "1",
    "knob_thread": "8-32", "knob_thread_depth": "1/2",
}  # fmt: skip


def furnish(job: Job) -> None:
    """Two cabinets: a door, and a drawer with its box; a door on hand."""
    overlaid(job)
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    drawer = OpeningFactory.create(
        cabinet=CabinetFactory.create(job=job, label="B2", x=inches(18)), closed_by="drawer"
    )
    BoxFactory.create(opening=drawer)
    DoorOnHandFactory.create(job=job)


def seen_in(page: Part) -> dict[str, Any]:
    """What a form says of the row that it was made from."""
    return {"seen": page.field("seen").value}


def no_rows(table: str) -> dict[str, str]:
    """What a browser posts of a small table of a form with nothing in it."""
    return {f"{table}-TOTAL_FORMS": "0", f"{table}-INITIAL_FORMS": "0"}


def posted_by(form: Part) -> dict[str, str]:
    """What a browser would post of a form as it stands."""
    return {field.attribute("name"): field.attribute("value") for field in form.all("input")}
