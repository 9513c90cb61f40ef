"""Which hinge, plate and B a door takes.

overlay = fixed distance + B - plate is the makers' published relation; figures are worked by
hand from it. The steps and limits are common practice, no source.
"""

from dataclasses import replace
from fractions import Fraction
from itertools import count, takewhile

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.hinge_choice import (
    GRID,
    DoorToHang,
    HingeSetting,
    OldBore,
    best_setting,
    choose_hinge,
)
from fronts.rules.items import HingeItem, Span
from fronts.rules.kinds import CabinetBuild
from fronts.rules.lengths import Mm
from tests.rules.hinge_items import adjusting, inset, listed, mm, on_plate, ranging, settled
from tests.rules.laws import LAW
from tests.rules.small_kitchens import inch

THICK = inch("3/4")


def _on(
    overlay: str, *items: HingeItem, build: CabinetBuild = "face-frame", thickness: Mm = THICK
) -> HingeSetting | None:
    return choose_hinge(DoorToHang(inch(overlay), build, thickness), settled(*items))


def _told(found: HingeSetting | None) -> tuple[str, Mm | None, Mm, Mm] | None:
    if found is None:
        return None
    return found.hinge.item.code, found.plate, found.bore, found.shift


# What is wanted; the plate, B and shift that come of it.
PLATES = [
    ("full overlay: 11 + 5 - 0", "16 mm", "0", "5", "0"),
    ("3/8 in: 11 + 4.5 - 6 makes 9.5", "3/8", "6", "4.5", "0.025"),
    ("off the grid, half a step either way: B nearer its usual", "16.25 mm", "0", "5", "0.25"),
    ("off the grid below the usual B", "15.75 mm", "0", "5", "-0.25"),
    ("B as near on plates 0 and 2: the lower", "15 mm", "0", "4", "0"),
    ("B as near its usual on plate 3 only", "13 mm", "3", "5", "0"),
    ("at the greatest B", "19 mm", "0", "8", "0"),
    ("at the least B on the highest plate", "8 mm", "6", "3", "0"),
    ("past the greatest B, nearly", "19.5 mm", "0", "8", "0.5"),
    ("past the greatest B: half the side screw's 3 mm", "20.5 mm", "0", "8", "1.5"),
    ("before the least B", "6.5 mm", "6", "3", "-1.5"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("overlay", "plate", "bore", "shift"), [row[1:] for row in PLATES],
    ids=[row[0] for row in PLATES],
)  # fmt: skip
def test_plate_and_bore(overlay: str, plate: str, bore: str, shift: str) -> None:
    """The least shift, then B nearest its usual 5 mm, then the lower plate."""
    found = _told(_on(overlay, on_plate()))

    assert found == ("PLATE", mm(plate), mm(bore), mm(shift))


@pytest.mark.parametrize("overlay", ["20.51 mm", "6.49 mm"])
def test_past_what_it_makes_and_its_screw_takes_up(overlay: str) -> None:
    """A hundredth of a millimetre more than half of 3 mm."""
    assert _on(overlay, on_plate()) is None


STATED = [
    ("one that it lists", "3/8", listed(), "0"),
    ("nearest below", "10.4 mm", listed(), "0.875"),
    ("midway, the smaller", "5/16", listed(overlays=(inch("3/8"), inch("1/4")),
                                           adjust=adjusting("4")), "1.5875"),
    ("within its span", "3/8", ranging(), "0"),
    ("under its span", "3 mm", ranging(), "-0.175"),
    ("a gap within its span", "-3/32", inset(), "0"),
    ("a gap past its span", "-9/64", inset(), "-0.396875"),
    ("a gap under its span", "-1/32", inset(), "0.79375"),
    ("gaps in a list, midway, the smaller", "-3/32",
     inset(gap_span=None, gaps=(inch("1/8"), inch("1/16"))), "-0.79375"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("overlay", "item", "shift"), [row[1:] for row in STATED], ids=[row[0] for row in STATED]
)
def test_overlays_and_gaps_that_are_stated(overlay: str, item: HingeItem, shift: str) -> None:
    """The nearest one, at the usual B and without a plate."""
    assert _told(_on(overlay, item)) == (item.code, None, item.usual_bore, mm(shift))


ORDER: list[tuple[str, str, tuple[HingeItem, ...], str | None]] = [
    ("the first of two", "3/8", (ranging(), listed()), "RANGE"),
    ("the other first", "3/8", (listed(), ranging()), "LIST"),
    ("the first that makes it, over one to adjust before it", "10.4 mm", (listed(), ranging()),
     "RANGE"),
    ("half a millimetre off is made, though the next makes it exactly", "10.025 mm",
     (listed(), ranging()), "LIST"),
    ("the first to adjust, where none makes it", "26.3 mm",
     (listed(), ranging("A"), ranging("B", overlay_span=Span(mm("1"), mm("25.5")))), "A"),
    ("only for a frame", "3/8", (listed(frame="frameless"), ranging()), "RANGE"),
    ("an overlay hinge makes no gap", "-3/32", (ranging(), listed()), None),
    ("an inset one no overlay", "1/8", (inset(),), None),
    ("flush is an overlay", "0", (inset(), listed(overlays=(Fraction(0),))), "LIST"),
    ("a door too thick for it", "3/8", (listed(most_door_thickness=inch("5/8")), ranging()),
     "RANGE"),
    ("a door just as thick as it takes", "3/8", (listed(most_door_thickness=THICK), ranging()),
     "LIST"),
    ("1/16 in, which none makes", "1/16", (on_plate(), listed()), None),
]  # fmt: skip


@pytest.mark.parametrize(
    ("overlay", "items", "code"), [row[1:] for row in ORDER], ids=[row[0] for row in ORDER]
)
def test_the_shops_order(overlay: str, items: tuple[HingeItem, ...], code: str | None) -> None:
    """The first that suits and makes it to 0.5 mm, else the first that adjusts to it."""
    found = _on(overlay, *items)

    assert (found and found.hinge.item.code) == code


def test_a_frameless_cabinet_takes_no_frame_hinge() -> None:
    """What is for any cabinet goes on it."""
    found = _on("3/8", listed(), ranging(), build="frameless")

    assert found is not None
    assert found.hinge.item.code == "RANGE"


OLD: list[tuple[str, str, HingeItem, str, tuple[str | None, str] | None]] = [
    ("its plate is chosen for the B that is there", "12.6 mm", on_plate(), "4.7", ("3", "-0.1")),
    ("a B that the hinge does not take", "12.6 mm", on_plate(), "8.1", None),
    ("a shift of over half the screw", "15.6 mm", on_plate(adjust=adjusting("1")), "4",
     None),
    ("half a millimetre off the one B of a list", "3/8", listed(), "3.5", (None, "0")),
    ("more than that", "3/8", listed(), "3.6", None),
]  # fmt: skip


@pytest.mark.parametrize(
    ("overlay", "item", "bore", "made"), [row[1:] for row in OLD], ids=[row[0] for row in OLD]
)
def test_for_bores_that_a_door_has(
    overlay: str, item: HingeItem, bore: str, made: tuple[str | None, str] | None
) -> None:
    """B is given; 35 mm bores for cups of 35 mm."""
    door = DoorToHang(inch(overlay), "face-frame", THICK)
    found = choose_hinge(door, settled(item), OldBore(mm("35"), mm(bore)))

    if made is None:
        assert found is None
        return
    plate, shift = made
    assert _told(found) == (item.code, plate and mm(plate), mm(bore), mm(shift))


def test_bores_of_another_cup() -> None:
    """26 mm bores take no cups of 35 mm."""
    door = DoorToHang(inch("3/8"), "face-frame", THICK)

    assert choose_hinge(door, settled(listed()), OldBore(mm("26"), mm("3"))) is None


tenths = st.integers(-200, 450).map(lambda n: Mm(n) / 10)
bores = st.tuples(st.integers(10, 60), st.integers(0, 60)).map(
    lambda pair: Span(Mm(pair[0]) / 10, Mm(sum(pair)) / 10)
)


@LAW
@given(
    tenths,
    bores,
    st.lists(st.integers(0, 12).map(Mm), min_size=1, max_size=4, unique=True).map(tuple),
    st.integers(0, 60).map(lambda n: Mm(n) / 10),
)
def test_no_other_plate_and_bore_is_better(
    overlay: Mm, bore: Span, plates: tuple[Mm, ...], usual: Mm
) -> None:
    """Against every plate and every step of the machine within the hinge's limits."""
    within = min(max(usual, bore.least), bore.most)
    (hinge,) = settled(on_plate(plates=plates, bore=bore, usual_bore=within))
    steps = takewhile(lambda at: at <= bore.most, (GRID * step for step in count()))
    ways = [
        (abs(overlay - (Mm(11) + at - plate)), abs(at - within), plate, at)
        for at in steps if at >= bore.least
        for plate in plates
    ]  # fmt: skip
    found = best_setting(hinge, overlay)

    if not ways:
        assert found is None
        return
    assert found is not None
    assert (abs(found.shift), abs(found.bore - within), found.plate, found.bore) == min(ways)
    assert found.shift == overlay - (Mm(11) + found.bore - (found.plate or 0))


def test_a_hinge_on_plates_that_states_no_limits_is_bored_at_its_usual() -> None:
    """Which need not be a step of the machine."""
    (hinge,) = settled(replace(on_plate(), bore=None, usual_bore=mm("4.7")))

    found = best_setting(hinge, mm("15"))

    assert _told(found) == ("PLATE", mm("0"), mm("4.7"), mm("-0.7"))
