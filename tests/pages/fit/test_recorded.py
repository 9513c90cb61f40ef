"""A record of fit as its page shows it: as it was measured, and against what was planned then."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Cabinet, FitRecord
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW, door_and_drawer
from tests.pages.fit.test_page import address, record
from tests.saying import standard_set

SignIn = Callable[[Person], Client]


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """A cabinet with an inset door (gaps of 3/32 in) and a drawer."""
    standard_set(owner=job, at=NOW, mount="inset")
    return door_and_drawer(job)


def test_what_was_planned_then_stays_beside_what_was_measured(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """Another gap of the house standard since changes nothing of what was found."""
    client = signed_in(installer)
    record(client, cabinet, gap_left="1/8")
    quarter = inches(1, 4)
    standard_set(
        owner=cabinet, at=NOW, mount="inset", inset_left=quarter, inset_right=quarter,
        inset_top=quarter, inset_bottom=quarter,
    )  # fmt: skip

    page = dom(client.get(address(cabinet)))

    assert page.all("table.gaps tbody tr")[0].words == "left 3/32 1/8 +1/32"
    said = page.one("[id='record-B1.a']").words
    assert "planned 1/4" in said
    assert "This is another front now" in said
    assert "the left gap planned 1/4, was 3/32" in said


def test_a_side_at_both_its_ends_and_how_the_front_stands_are_shown(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """As they come with a file; a front that is not done does not count as fitted."""
    client = signed_in(installer)
    record(client, cabinet)
    FitRecord.objects.update(
        gap_left=None, gap_left_top=inches(1, 8), gap_left_bottom=inches(3, 32),
        state="to adjust", fitted_by=None, fitted_by_name="Kim Ford",
    )  # fmt: skip

    said = dom(client.get(address(cabinet))).one("[id='record-B1.a']")
    gaps = said.one("table.gaps")

    assert "Kim Ford" in said.words
    assert said.one(".state").words == "? to adjust"
    assert gaps.all("tbody tr")[0].words == "left 3/32 top 1/8, bottom 3/32 top +1/32, bottom 0"
    assert "0 of 2 fronts done" in dom(client.get(f"/jobs/{cabinet.job_id}/fit/")).words
