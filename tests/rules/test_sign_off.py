"""When a job may be handed over (common practice, no source)."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from fronts.rules.fits import FitFacts, RecordedFit, hung_as
from fronts.rules.records import NO_RECORDS, Records
from fronts.rules.results import Schedule
from fronts.rules.schedule import schedule
from fronts.rules.sign_off import sign_off
from fronts.rules.snags import RecordedSnag, SnagDone, SnagFacts
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import cabinet, inch, kitchen, opening

WHEN = datetime(2027, 3, 12, 10, tzinfo=UTC)
OPEN = RecordedSnag(SnagFacts("job", "paint on the floor"), WHEN, WHEN)


KITCHEN = kitchen(cabinet(opening("pair")))


@pytest.fixture
def pair() -> Schedule:
    """Two doors that close one opening."""
    return schedule(KITCHEN)


def done(found: Schedule) -> tuple[RecordedFit, ...]:
    """A record for each front that says it is done."""
    return tuple(
        RecordedFit(front.label, WHEN, "Ines", FitFacts(front.label), hung=hung_as(front))
        for front in found.fronts
    )


def test_ready_once_all_is_done_and_settled(pair: Schedule) -> None:
    """A snag that is done stands in nobody's way."""
    settled = replace(OPEN, done=SnagDone(WHEN))
    found = sign_off(KITCHEN, pair, Records(fits=done(pair), snags=(settled,)))
    assert found.is_ready
    assert [front.label for front, _ in found.done] == [front.label for front in pair.fronts]


@pytest.mark.parametrize(
    "change",
    [
        {"facts": FitFacts("B1.a.1", state="to-adjust")},
        {"hung": "another front"},
        {"gone": True},
        {"front": "Z9"},
    ],
    ids=["to adjust", "changed since", "gone", "another's"],
)
def test_a_front_that_is_not_done_stands_in_the_way(
    change: dict[str, object], pair: Schedule
) -> None:
    """Whatever else was recorded of it."""
    first, second = done(pair)
    found = sign_off(KITCHEN, pair, Records(fits=(replace(first, **change), second)))  # type: ignore[arg-type]
    assert not found.is_ready
    assert [front.label for front, _ in found.not_done] == [first.front]


def test_the_latest_record_counts(pair: Schedule) -> None:
    """In whatever order they come; earlier ones are history."""
    first, second = done(pair)
    before = replace(
        first, at=WHEN - timedelta(days=1), facts=FitFacts(first.front, state="to-adjust")
    )
    for fits in ((before, first, second), (first, second, before)):
        assert sign_off(KITCHEN, pair, Records(fits=fits)).is_ready
    after = replace(before, at=WHEN + timedelta(days=1))
    assert not sign_off(KITCHEN, pair, Records(fits=(first, second, after))).is_ready


def test_an_open_snag_stands_in_the_way(pair: Schedule) -> None:
    """Though every front is done."""
    found = sign_off(KITCHEN, pair, Records(fits=done(pair), snags=(OPEN,)))
    assert not found.is_ready
    assert found.snags == (OPEN,)


def test_nothing_is_nothing_to_sign() -> None:
    """A kitchen without fronts."""
    assert not sign_off(kitchen(), schedule(kitchen()), NO_RECORDS).is_ready


def test_an_opening_whose_fronts_cannot_be_worked_out_stands_in_the_way() -> None:
    """It has no front that could be undone, and still is not done."""
    none = cabinet(opening("door", hinged="left", width=inch("1/16")), label="B2", x=inch("18"))
    inset = Standard(mount="inset")
    of = kitchen(cabinet(opening("pair")), none, standard=inset)
    worked_out = schedule(of)
    assert {front.cabinet for front in worked_out.fronts} == {"B1"}

    found = sign_off(of, worked_out, Records(fits=done(worked_out)))

    assert found.unmade == ("B2.a",)
    assert not found.is_ready
