"""A cabinet entered together with its face."""

from dataclasses import replace
from typing import Any

import pytest
from django.core.exceptions import ValidationError

from fronts.models import Cabinet, Front, Opening
from fronts.rules.kinds import ClosedBy
from fronts.rules.kitchen import Cabinet as CabinetFacts
from fronts.rules.plain_face import PlainFace, face_openings
from fronts.rules.practice import inches
from fronts.services.cabinets import cabinet_create
from shopjobs.models import Job
from tests.factories import NOW

BODY = CabinetFacts(
    label="B1", kind="base", build="face-frame", wall="North", x=inches(0), y=inches(4),
    width=inches(18), height=inches(61, 2), depth=inches(24),
)  # fmt: skip


def faced(*closed_by: ClosedBy, label: str = "B1", **face: Any) -> CabinetFacts:
    """The cabinet with a face whose members are an inch and a half wide."""
    members = dict.fromkeys(("sides", "above", "below", "between"), inches(3, 2))
    plain = PlainFace(closed_by=closed_by, **(members | face))
    return replace(BODY, label=label, openings=face_openings(plain, BODY.width, BODY.height))


def test_its_openings_are_entered_with_it(job: Job) -> None:
    """From the top, each with its place, size, hinge side and number of drawers."""
    above = faced("drawer", "door", drawer_height=inches(5), hinged="right")
    cabinet_create(job=job, facts=above, at=NOW)
    cabinet_create(job=job, facts=faced("drawers", label="B2", count=4), at=NOW)

    drawer, door, stack = Opening.objects.order_by("cabinet", "position")
    assert [str(opening) for opening in (drawer, door, stack)] == ["B1.a", "B1.b", "B2.a"]
    assert (drawer.x, drawer.y, drawer.width, drawer.height) == (
        inches(3, 2), inches(24), inches(15), inches(5),
    )  # fmt: skip
    fronts = Front.objects.order_by("opening", "position").values_list(
        "opening__closed_by", "position", "hinged"
    )
    stacked = [("drawers", position, "") for position in range(4)]
    assert [*fronts] == [("drawer", 0, ""), ("door", 0, "right"), *stacked]


def test_a_cabinet_without_a_plain_face_has_no_openings_yet(job: Job) -> None:
    """They are entered afterwards."""
    cabinet_create(job=job, facts=BODY, at=NOW)

    assert Cabinet.objects.exists()
    assert not Opening.objects.exists()


def test_a_face_that_cannot_be_kept_leaves_nothing_behind(job: Job) -> None:
    """An opening's fault is told with the opening's name, and no cabinet is entered."""
    odd = replace(faced("door"), openings=faced("door", sides=inches(1, 3)).openings)
    with pytest.raises(ValidationError) as refused:
        cabinet_create(job=job, facts=odd, at=NOW)

    assert refused.value.messages[0].startswith("opening B1.a, x: this length can't be kept")
    assert not Cabinet.objects.exists()
