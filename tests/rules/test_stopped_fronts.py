"""Which fronts must not be cut."""

from dataclasses import replace

from fronts.rules.results import Finding, Schedule
from fronts.rules.schedule import schedule
from fronts.rules.stopped_fronts import stopped_fronts
from tests.rules.small_kitchens import beside, cabinet, kitchen, opening

PAIR = cabinet(opening("pair"))
SOUND = schedule(kitchen(PAIR, beside(PAIR)))


def _with(*findings: Finding) -> Schedule:
    return replace(SOUND, findings=findings)


def test_a_stop_stops_the_fronts_that_it_names() -> None:
    """Both neighbours that come too close, and no other."""
    close = Finding("stop", "fronts-too-close", ("B1.a.2", "B2.a.1"), "They touch.")

    assert stopped_fronts(_with(close)) == {"B1.a.2", "B2.a.1"}


def test_a_stop_about_an_opening_stops_all_its_fronts() -> None:
    """Each leaf of the pair."""
    leaning = Finding("stop", "opening-out-of-square", ("B1.a",), "It leans.")

    assert stopped_fronts(_with(leaning)) == {"B1.a.1", "B1.a.2"}


def test_what_is_only_to_be_checked_stops_nothing() -> None:
    """A check or a note is not a stop."""
    told = (
        Finding("check", "measure-again", ("B1.a",), "Measure."),
        Finding("note", "lines-miss", ("B1.a.1", "B2.a.1"), "They miss."),
    )

    assert stopped_fronts(_with(*told)) == frozenset()
