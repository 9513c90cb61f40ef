"""What differs between two schedules: which findings come, go, and stay with other figures."""

from dataclasses import replace

from fronts.rules.differences import finding_differences
from fronts.rules.results import Finding, Schedule
from fronts.rules.schedule import schedule
from tests.rules.small_kitchens import all_round, beside, cabinet, kitchen, opening

STOP = Finding("stop", "too-close", ("B1.a", "B2.a"), "B1.a and B2.a: 1/32")
NEARER = replace(STOP, message="B1.a and B2.a: 1/64")
NOTE = Finding("note", "lines-miss", ("B1.a", "B2.a"), "B1.a and B2.a miss each other's line")
OTHER = Finding("check", "no-door-serves", ("B3.a",), "B3.a: no door on hand makes 15 × 20")
EMPTY = schedule(kitchen())


def holding(*findings: Finding) -> Schedule:
    """A schedule with these findings."""
    return replace(EMPTY, findings=findings)


def test_one_comes_and_one_goes() -> None:
    """By what each is about."""
    found = finding_differences(holding(STOP, OTHER), holding(STOP, NOTE))

    assert (found.came, found.went, found.other) == ((NOTE,), (OTHER,), ())


def test_the_same_with_other_figures_stays() -> None:
    """It neither comes nor goes; it says something else."""
    found = finding_differences(holding(STOP), holding(NEARER))

    assert (found.came, found.went, found.other) == ((), (), (NEARER,))


def test_what_is_told_twice_comes_once_more() -> None:
    """Of several alike as many come as there are more of."""
    found = finding_differences(holding(STOP), holding(STOP, NEARER))
    back = finding_differences(holding(STOP, NEARER), holding(STOP))

    assert (found.came, found.went) == ((NEARER,), ())
    assert (back.came, back.went) == ((), (NEARER,))


def test_of_two_kitchens() -> None:
    """Laps of 1 1/2 in on stiles as wide leave no gap between two cabinets: a stop comes."""
    first = cabinet(opening())
    of = kitchen(first, beside(first))
    wide = replace(of, standard=replace(of.standard, overlay=all_round("1 1/2")))

    found = finding_differences(schedule(of), schedule(wide))

    assert ("stop", ("B1.a", "B2.a")) in [(each.level, each.where) for each in found.came]
    assert found.went == ()
    assert finding_differences(schedule(wide), schedule(of)).went == found.came
