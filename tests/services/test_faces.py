"""A cabinet entered together with its face."""

from fractions import Fraction

import pytest
from django.core.exceptions import ValidationError

from fronts.models import Cabinet, Opening
from fronts.rules.practice import inches
from fronts.services.faces import Face, cabinet_enter, openings_of_face
from fronts.services.values import CabinetValues
from shopjobs.models import Job
from tests.factories import NOW

BODY: CabinetValues = {
    "label": "B1", "kind": "base", "build": "face-frame", "wall": "North", "x": inches(0),
    "y": inches(4), "width": inches(18), "height": inches(61, 2), "depth": inches(24),
}  # fmt: skip


def face(closing: str, **changes: object) -> Face:
    """A face with members an inch and a half wide."""
    member = inches(3, 2)
    known: dict[str, object] = dict.fromkeys(("sides", "above", "below", "between"), member)
    return Face(closing=closing, **(known | changes))  # type: ignore[arg-type]


def test_one_opening_fills_the_face(job: Job) -> None:
    """A plain door's opening is what the members leave."""
    cabinet_enter(job=job, values=BODY, face=face("door", hinged="right"), at=NOW)

    opening = Opening.objects.get()
    assert (opening.width, opening.height) == (inches(15), inches(55, 2))
    assert (opening.x, opening.y) == (inches(3, 2), inches(3, 2))
    assert (opening.closed_by, opening.hinged) == ("door", "right")


def test_a_drawer_stands_over_a_pair(job: Job) -> None:
    """Members, drawer opening and door opening together are the cabinet's height."""
    above = face("drawer+pair", drawer_height=inches(5))

    cabinet_enter(job=job, values=BODY, face=above, at=NOW)

    drawer, pair = Opening.objects.order_by("position")
    assert (drawer.closed_by, pair.closed_by) == ("drawer", "pair")
    members = 3 * inches(3, 2)
    assert drawer.height + pair.height + members == BODY["height"]
    assert drawer.y == pair.y + pair.height + inches(3, 2)


def test_a_stack_is_one_opening_with_its_drawers(job: Job) -> None:
    """A stack of drawers closes one opening."""
    cabinet_enter(job=job, values=BODY, face=face("drawers", count=4), at=NOW)

    assert Opening.objects.get().count == 4


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"sides": Fraction(300)}, "sides"),
        ({"below": Fraction(900)}, "below"),
        ({"drawer_height": inches(28)}, "drawer_height"),
    ],
)
def test_members_that_leave_nothing_are_refused(
    changes: dict[str, object], field: str, job: Job
) -> None:
    """The fault stands at the member that is too wide, and nothing is entered."""
    wrong = face("drawer+door", **({"drawer_height": inches(5)} | changes))
    laid = openings_of_face(wrong, BODY["width"], BODY["height"])

    assert [name for name, _ in laid.faults] == [field]
    with pytest.raises(ValidationError):
        cabinet_enter(job=job, values=BODY, face=wrong, at=NOW)
    assert not Cabinet.objects.exists()
