"""A cabinet entered together with its face."""

from typing import Any

import pytest
from django.core.exceptions import ValidationError

from fronts.models import Cabinet, Opening
from fronts.rules.kitchen import ClosedBy
from fronts.rules.plain_face import PlainFace
from fronts.rules.practice import inches
from fronts.services.plain_face import cabinet_enter
from fronts.services.values import CabinetValues
from shopjobs.models import Job
from tests.factories import NOW

BODY: CabinetValues = {
    "label": "B1", "kind": "base", "build": "face-frame", "wall": "North", "x": inches(0),
    "y": inches(4), "width": inches(18), "height": inches(61, 2), "depth": inches(24),
}  # fmt: skip


def face(*closed_by: ClosedBy, **changes: Any) -> PlainFace:
    """A face with members an inch and a half wide."""
    members = dict.fromkeys(("sides", "above", "below", "between"), inches(3, 2))
    return PlainFace(closed_by=closed_by, **(members | changes))


def test_its_openings_are_entered_with_it(job: Job) -> None:
    """From the top, each with its place, size, hinge side and number of drawers."""
    above = face("drawer", "door", drawer_height=inches(5), hinged="right")
    cabinet_enter(job=job, values=BODY, face=above, at=NOW)
    cabinet_enter(job=job, values={**BODY, "label": "B2"}, face=face("drawers", count=4), at=NOW)

    drawer, door, stack = Opening.objects.order_by("cabinet", "position")
    assert [str(each) for each in (drawer, door, stack)] == ["B1.a", "B1.b", "B2.a"]
    assert (drawer.x, drawer.y, drawer.width, drawer.height) == (
        inches(3, 2), inches(24), inches(15), inches(5),
    )  # fmt: skip
    assert (drawer.closed_by, drawer.hinged, drawer.count) == ("drawer", "", 1)
    assert (door.closed_by, door.hinged, door.count) == ("door", "right", 1)
    assert (stack.closed_by, stack.hinged, stack.count) == ("drawers", "", 4)


def test_a_cabinet_without_a_plain_face_has_no_openings_yet(job: Job) -> None:
    """They are entered afterwards."""
    cabinet_enter(job=job, values=BODY, face=None, at=NOW)

    assert Cabinet.objects.exists()
    assert not Opening.objects.exists()


def test_members_that_leave_nothing_are_refused(job: Job) -> None:
    """The fault stands at the member that is too wide, and nothing is entered."""
    with pytest.raises(ValidationError) as refused:
        cabinet_enter(job=job, values=BODY, face=face("door", sides=inches(9)), at=NOW)

    assert list(refused.value.message_dict) == ["sides"]
    assert not Cabinet.objects.exists()
