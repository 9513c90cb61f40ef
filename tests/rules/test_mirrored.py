"""A cabinet as in a mirror: twice is as it was, and its fronts are the same but turned round."""

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Cabinet, FrontFacts, HandlePlace, Kitchen, Measured, Opening
from fronts.rules.lengths import Mm
from fronts.rules.mirrored import mirrored
from fronts.rules.practice import inches
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides
from fronts.rules.standards import EMPTY
from tests.strategies import cabinets_of
from tests.strategies_of_shops import jobs, standards

WIDE = inches(20)


def twenty(label: str, place: int) -> Mm:
    """Every front is 20 in wide."""
    return WIDE


UNITS: tuple[Unit, ...] = ("in", "mm")


@given(st.sampled_from(UNITS).flatmap(lambda unit: cabinets_of(unit, ("D1",))))
def test_twice_is_as_it_was(cabinet: Cabinet) -> None:
    """But that a door's hand is said."""
    said = replace(
        cabinet,
        openings=tuple(
            replace(one, fronts=tuple(_handed(front, one) for front in one.fronts))
            for one in cabinet.openings
        ),
    )
    assert mirrored(mirrored(said, twenty), twenty) == said


@given(st.data(), st.sampled_from(UNITS))
def test_its_fronts_are_turned_round(data: st.DataObject, unit: Unit) -> None:
    """As large, and to a step as far from the other side, by a standard alike at both."""
    cabinet = data.draw(cabinets_of(unit, ()))
    standard = data.draw(standards(unit, laps=True))
    alike = replace(standard, overlay=_even(standard.overlay))
    alike = replace(alike, inset_gap=_even(alike.inset_gap))
    reveal = alike.reveal
    if reveal is not None:
        ends = replace(reveal.end, right=reveal.end.left)
        alike = replace(alike, reveal=replace(reveal, end=ends))
    job = data.draw(jobs(unit))
    cabinet = replace(cabinet, label="B1", wall="North", x=inches(0), standard=EMPTY)
    cabinet = replace(
        cabinet,
        openings=tuple(
            replace(one, standard=EMPTY, measured=Measured()) for one in cabinet.openings
        ),
    )

    def fronts(shown: Cabinet, *, turned: bool) -> list[tuple[str, Mm, Mm, Mm, Mm]]:
        kitchen = Kitchen(job=job, standard=alike, cabinets=(shown,))
        return sorted(
            (
                front.opening,
                front.y,
                shown.width - front.right if turned else front.x,
                front.width,
                front.height,
            )
            for front in schedule(kitchen).fronts
        )

    was, now = fronts(cabinet, turned=False), fronts(mirrored(cabinet, twenty), turned=True)
    assert [(*one[:2], *one[3:]) for one in now] == [(*one[:2], *one[3:]) for one in was]
    # What is left of a step stands at one side, here and there.
    assert all(abs(one[2] - other[2]) <= job.step for one, other in zip(was, now, strict=True))


def test_what_is_at_the_left_stands_at_the_right() -> None:
    """An opening, a door's hand, what was measured, a handle, a box off the middle."""
    fronts = (FrontFacts(hinged="left", shift_x=inches(1, 8), handles=(
        HandlePlace(inches(2), inches(3)),)),)  # fmt: skip
    opening = Opening(
        "a", inches(2), inches(1), inches(10), inches(20), "door", fronts,
        Measured(height_left=inches(20), diagonal_1=inches(22)),
    )  # fmt: skip
    cabinet = Cabinet("B1", "base", "face-frame", "N", None, inches(4), inches(18), inches(30),
                      inches(24), (opening,))  # fmt: skip

    turned = mirrored(cabinet, twenty).openings[0]
    assert (turned.x, turned.y, turned.width) == (inches(6), inches(1), inches(10))
    front = turned.fronts[0]
    assert (front.hinged, front.shift_x) == ("right", -inches(1, 8))
    assert front.handles == (HandlePlace(inches(18), inches(3)),)
    assert (turned.measured.height_right, turned.measured.diagonal_2) == (inches(20), inches(22))
    assert mirrored(cabinet, lambda *_: None).openings[0].fronts[0].handles == ()


def _handed(front: FrontFacts, opening: Opening) -> FrontFacts:
    return replace(front, hinged=front.hinged or "left") if opening.closing.hinged else front


def _even(sides: Sides[Mm] | None) -> Sides[Mm] | None:
    return None if sides is None else replace(sides, right=sides.left)
