"""What a front meets along its wall, and in which words it is told."""

from dataclasses import replace

import pytest

from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.finding_cases import lapping
from tests.rules.small_kitchens import beside, cabinet, findings_of, inch, kitchen, opening

# Limits (3 in of depth, 3 in of filler, lines by 1/4 in): common practice, no source.
WIDE_LAP = lapping("1 1/2", "1 1/2", "1/2", "1/2")


def _pair_of(first: Cabinet, **changes: object) -> Kitchen:
    return kitchen(first, beside(first, **changes))


def test_neighbours_touch_across_two_cabinets() -> None:
    """Each door laps its whole stile: no gap, and both are named."""
    of = _pair_of(cabinet(opening(standard=WIDE_LAP)))

    (found,) = findings_of(of, "fronts-too-close")

    assert found.message == "B1.a and B2.a are 0 in apart; the least gap is 1/16 in."


def test_overlapping_neighbours_say_by_how_much() -> None:
    """Two doors that would lie on each other."""
    of = _pair_of(cabinet(opening(standard=lapping("1 5/8", "1 5/8", "1/2", "1/2"))))

    (found,) = findings_of(of, "fronts-too-close")

    assert found.message == "B1.a and B2.a overlap by 1/4 in."


@pytest.mark.parametrize(("depth", "told"), [("24", True), ("21", True), ("20 15/16", False)])
def test_faces_that_stand_far_behind_don_t_meet(depth: str, told: bool) -> None:
    """A shallow cabinet's fronts lie in another plane from 3 in on."""
    of = _pair_of(cabinet(opening(standard=WIDE_LAP)), depth=inch(depth))

    assert bool(findings_of(of, "fronts-too-close")) is told


def test_each_two_are_told_once() -> None:
    """Three doors in a row that touch: two findings, not four."""
    first = cabinet(opening(standard=WIDE_LAP))
    third = beside(first, label="B3", x=2 * first.width)
    of = kitchen(first, beside(first), third)

    assert [each.where for each in findings_of(of, "fronts-too-close")] == [
        ("B1.a", "B2.a"),
        ("B2.a", "B3.a"),
    ]


def test_lines_that_miss_are_told_together() -> None:
    """A door that is 1/8 in higher at its top and 3/16 in at its bottom."""
    other = opening(y=inch("1 11/16"), height=inch("27 7/16"))

    (found,) = findings_of(_pair_of(cabinet(opening()), openings=(other,)), "lines-miss")

    assert found.message == (
        "B1.a and B2.a miss each other's line: tops by 1/8 in and bottoms by 3/16 in."
    )


def test_lines_are_looked_at_sideways_only() -> None:
    """A narrow drawer over a wide door misses nobody's line."""
    drawer = opening("drawer", label="b", x=inch("1 5/8"), y=inch("30"), height=inch("6"))
    of = kitchen(cabinet(opening(), drawer, height=inch("40")))

    assert findings_of(of, "lines-miss") == []


def test_a_run_goes_on_over_a_cabinet_without_fronts() -> None:
    """A front may lap past its cabinet where another stands, open or not."""
    first = cabinet(opening("fixed", standard=lapping("1/2", "1 9/16", "1/2", "1/2")))
    alone = kitchen(first)
    followed = kitchen(first, beside(first, openings=()))

    assert len(findings_of(alone, "past-cabinet-edge")) == 1
    assert findings_of(followed, "past-cabinet-edge") == []


def test_a_cabinet_higher_up_does_not_carry_a_run_on() -> None:
    """A wall cabinet to the right of a base cabinet stands beside nothing of it."""
    first = cabinet(opening("fixed", standard=lapping("1/2", "1 9/16", "1/2", "1/2")))
    high = beside(first, openings=(), kind="wall", y=inch("54"))

    assert len(findings_of(kitchen(first, high), "past-cabinet-edge")) == 1


def test_fronts_of_two_cabinets_over_each_other() -> None:
    """A wall cabinet close above a tall one: the gap is told upwards too."""
    first = cabinet(opening(standard=lapping("1/2", "1/2", "1 1/2", "1 1/2")))
    upper = replace(first, label="B2", y=first.y + first.height)

    (found,) = findings_of(kitchen(first, upper), "fronts-too-close")

    assert found.where == ("B1.a", "B2.a")


def test_corner_walls_are_walls_of_their_own() -> None:
    """What stands at the same x on another wall faces nothing here."""
    first = cabinet(opening(standard=WIDE_LAP))
    front = schedule(_pair_of(first, wall="East")).fronts[0]

    assert front.edges.right.faces is None


def test_an_inset_front_is_held_to_its_own_opening() -> None:
    """Inset neighbours are a stile and two gaps apart."""
    front = schedule(
        kitchen(
            cabinet(opening()),
            beside(cabinet(opening())),
            standard=Standard(mount="inset"),
            step=inch("1/32"),
        )
    ).fronts[0]

    assert front.edges.right.gap == inch("3 3/16")


ABOVE = [("on it", "0", 0), ("3 in above", "3", 0), ("3 1/16 in above", "3 1/16", 1)]


@pytest.mark.parametrize(("space", "told"), [row[1:] for row in ABOVE], ids=[r[0] for r in ABOVE])
def test_a_run_goes_on_upwards_too(space: str, told: int) -> None:
    """A front past its cabinet's top, with another cabinet above: 3 in is still one run."""
    first = cabinet(opening("fixed", standard=lapping("1/2", "1/2", "1 9/16", "1/2")))
    above = replace(first, label="B2", openings=(), y=first.y + first.height + inch(space))

    assert len(findings_of(kitchen(first, above), "past-cabinet-edge")) == told
