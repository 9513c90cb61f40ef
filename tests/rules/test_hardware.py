"""Hardware needs: item by item, summed over the fronts that want them."""

from dataclasses import replace
from fractions import Fraction
from math import ceil

import pytest
from hypothesis import given

from fronts.rules.items import HandleItem, Hardware
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import FrontFacts, HandlePlace, Kitchen, Opening
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Need
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.finding_cases import lapping
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import (
    BOX,
    STOCK,
    all_round,
    beside,
    cabinet,
    findings_of,
    inch,
    inches,
    kitchen,
    opening,
)
from tests.strategies import kitchens
from tests.strategies_of_hardware import equipped_kitchens

DRAWER = opening("drawer", height=inch("6"), boxes=(replace(BOX, height=inch("4")),))
INSET = Standard(mount="inset", inset_gap=all_round("3/32"))
# Counts: common practice, no source.


def _needs(of: Kitchen) -> dict[str, int]:
    return {each.item: each.need for each in schedule(of).hardware}


def test_a_door() -> None:
    """Two hinges with four screws each, a knob with its screw, two bumpers."""
    assert _needs(kitchen(cabinet(opening()))) == {
        "hinge H-LAP, overlay": 2,
        "hinge screw": 8,
        "knob or pull": 1,
        "knob screw 8-32, 1 in": 1,
        "bumper": 2,
    }


def test_a_pull_out() -> None:
    """Mounting screws, slides of the right length and class with theirs, knob, bumpers.

    Two strips of tape as long as the box is high, 24 in, in place of jig and clamps.
    """
    assert _needs(kitchen(cabinet(opening("pull-out", boxes=(BOX,))))) == {
        "#8 washer-head screw, 1 1/4 in": 4,
        "foam tape 1 in × 1/8 in": 4,
        "slides, pair, 20 in, 75 lb": 1,
        "slide screw": 8,
        "knob or pull": 1,
        "knob screw 8-32, 1 3/4 in": 1,
        "bumper": 2,
    }


def test_a_wide_drawer_takes_two_pulls_and_their_screws() -> None:
    """24 in and wider: two."""
    wide = cabinet(replace(DRAWER, width=inch("33")), width=inch("36"))
    found = _needs(kitchen(wide))

    assert found["knob or pull"] == 2
    assert found["knob screw 8-32, 1 3/4 in"] == 2


def test_a_fixed_front_needs_its_screws() -> None:
    """Through 3/4 in of wood into 3/4 in, as those of a box; it neither opens nor closes."""
    assert _needs(kitchen(cabinet(opening("fixed")))) == {"#8 washer-head screw, 1 1/4 in": 4}


def test_a_fixed_front_that_no_stocked_screw_holds() -> None:
    """It is ordered all the same, and says so."""
    short = replace(STOCK, screw_lengths=inches("1"))

    assert _needs(kitchen(cabinet(opening("fixed")), stock=short)) == {
        "#8 washer-head screw, none in stock fits": 4
    }


def test_screws_of_one_length_are_one_line_with_both_reasons() -> None:
    """A pull-out's and a fixed front's."""
    first = cabinet(opening("pull-out", boxes=(BOX,)))
    of = kitchen(first, beside(first, openings=(opening("fixed"),)))
    (line,) = [need for need in schedule(of).hardware if need.item.startswith("#8")]

    assert (line.need, line.per_front) == (8, {"B1.a": 4, "B2.a": 4})
    assert line.why == "one in each corner of a box; 4 a fixed front, from behind through 3/4 in"


def test_a_front_that_tips_out() -> None:
    """Its own hinges and a tray an inch short of the opening's 15 in a side; no cup hinges."""
    assert _needs(kitchen(cabinet(opening("tip-out")))) == {
        "tip-out hinges, pair": 1,
        "tip-out tray, at most 13 in long": 1,
        "knob or pull": 1,
        "knob screw 8-32, 1 in": 1,
        "bumper": 2,
    }


def test_a_panel_needs_what_somebody_chose_for_it() -> None:
    """The machine brings its fixings; a pull is the shop's, with its two screws."""
    bare = cabinet(opening("appliance-panel"))
    pulled = cabinet(opening("appliance-panel", front=FrontFacts(handle="P-1")))
    pull = Hardware(handles=(HandleItem("P-1", centres=inch("3")),))

    assert _needs(kitchen(bare)) == {}
    assert _needs(kitchen(pulled, hardware=pull)) == {"P-1": 1, "knob screw 8-32, 1 in": 2}


def test_a_door_that_opens_downwards_is_held() -> None:
    """By a stay for flaps; one that is hinged at its side by none."""
    down, aside = (
        _needs(kitchen(cabinet(opening("door", hinged=side)))) for side in ("bottom", "left")
    )

    assert down["flap stay"] == 1
    assert "flap stay" not in aside


@pytest.mark.parametrize(("unit", "item", "count"), [
    ("in", "glass stop", 7), ("mm", "glass stop", 2),
])  # fmt: skip
def test_stops_hold_the_glass(unit: Unit, item: str, count: int) -> None:
    """Round a pane 12 1/8 × 24 5/8 in: 73 1/2 in, 1.87 m."""
    glazed = opening(front=FrontFacts(build="five-piece", glass=True))

    assert _needs(kitchen(cabinet(glazed), unit=unit))[item] == count


def test_each_kind_of_slide_is_its_own_item() -> None:
    """A bottom slide is one piece; the others come in pairs."""
    bottom = replace(BOX, slide="bottom", slide_width=inch("1 3/4"), slide_height=inch("1/2"))
    under = replace(BOX, slide="under", depth=inch("20"))
    side = replace(BOX, slide="side")
    first = cabinet(opening("pull-out", boxes=(bottom,)))
    run = [
        beside(first, label=f"B{n}", x=n * first.width, openings=(opening("pull-out", boxes=(b,)),))
        for n, b in enumerate((bottom, under, side, side))
    ]
    found = _needs(kitchen(*run))

    assert found["bottom slide, 20 in, 75 lb"] == 1
    assert found["under slides, pair, 20 in, 75 lb"] == 1
    assert found["side slides, pair, 20 in, 75 lb"] == 2


def test_a_shop_that_wants_no_bumpers() -> None:
    """Nothing is not an item."""
    none = replace(PRACTICE, bumpers=Fraction(0))

    assert "bumper" not in _needs(kitchen(cabinet(opening()), practice=none))


def test_metric_shops_read_metric_items() -> None:
    """M4 knob screws and slides in millimetres and kilograms."""
    of = kitchen(
        cabinet(opening("pull-out", boxes=(BOX,))),
        unit="mm",
        stock=replace(STOCK, knob_thread="M4", knob_screw_lengths=inches("45 mm")),
    )

    assert {"knob screw M4, 45 mm", "slides, pair, 508 mm, 34 kg"} <= set(_needs(of))


def test_why_so_many_hinges_tells_one_hinge_from_another() -> None:
    """By the overlay that each makes: 1/2 in twice, none, a hair; and one door lies inside."""
    first = cabinet(opening())
    laps = ["1/2", "1/2", "0", "1/128", None]
    of = [
        beside(
            first, label=f"B{place}", x=2 * place * first.width,
            openings=(opening(standard=INSET if lap is None else lapping(*[lap] * 4)),),
        )
        for place, lap in enumerate(laps, start=1)
    ]  # fmt: skip

    whys = {each.code: each.why for each in schedule(kitchen(*of, step=inch("1/128"))).hardware}

    assert whys["H-LAP"] == (
        "by each door's height and weight: 4 for 1/2 in overlay, 2 for 0 in overlay, "
        "2 for 1/128 in overlay"
    )
    assert whys["H-INSET"] == "by each door's height and weight: 2 for inset"


TO_ORDER = [
    ("a door", opening(), "8-32", True),
    ("a front on a box, of which it is told already", opening("pull-out", boxes=(BOX,)), "8-32",
     False),
    ("a thread that is none, of which it is told already", opening(), "coarse", False),
]  # fmt: skip


@pytest.mark.parametrize(
    ("of", "thread", "told"), [row[1:] for row in TO_ORDER], ids=[row[0] for row in TO_ORDER]
)
def test_knob_screws_to_order(of: Opening, thread: str, told: bool) -> None:
    """Where the stock holds none that fits, and nothing else was said."""
    none = replace(STOCK, knob_screw_lengths=(), knob_thread=thread)

    assert bool(findings_of(kitchen(cabinet(of), stock=none), "knob-screw-to-order")) is told


def test_the_knob_screw_to_order_is_for_the_thinnest_wood() -> None:
    """The first knob's stile takes a stocked screw of 1 in, the panel under the second none."""
    places = tuple(HandlePlace(*inches(x, "14")) for x in ("15", "8"))
    front = FrontFacts(build="five-piece", handles=places)

    (told,) = findings_of(kitchen(cabinet(opening(front=front))), "knob-screw-to-order")

    assert told.message == "B1.a: no stocked knob screw fits a front 1/4 in thick; order one."


def _told(need: Need) -> tuple[int, tuple[str, ...]]:
    return need.need, need.fronts


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_need_is_the_sum_over_the_fronts(of: Kitchen) -> None:
    """Every item is the sum of what its fronts want, and agrees with the schedule's own counts."""
    found = schedule(of)
    labels = {each.label for each in found.fronts}
    needs = {each.item: each for each in found.hardware}
    hinged = [each for each in found.fronts if each.hinges]
    screws = [each.screw.count for each in found.fittings if each.screw]

    for each in found.hardware:
        whole = sum(each.per_front.values())
        assert each.need == (ceil(whole) if each.unit else whole)
        assert tuple(each.per_front) == each.fronts
        assert set(each.fronts) <= labels
        assert min(each.per_front.values()) > 0
        assert each.why
    for code in {each.hinge.code if each.hinge else None for each in hinged}:
        with_it = [e for e in hinged if (e.hinge.code if e.hinge else None) == code]
        listed = [n for n in found.hardware if n.kind == "hinge" and n.code == code]
        (need,) = listed if code else [needs["hinge"]]
        assert _told(need) == (
            sum(each.hinges for each in with_it),
            tuple(each.label for each in with_it),
        )
    screwed = sum(each.hinges * each.hinge.screws for each in hinged if each.hinge)
    assert screwed == (needs["hinge screw"].need if screwed else 0)
    screws += [each.fixed_by.count for each in found.fronts if each.fixed_by]
    assert sum(screws) == sum(n.need for n in found.hardware if n.item.startswith("#8"))
    for item, fronts in (
        ("tip-out hinges, pair", [each for each in found.fronts if each.kind == "tip-out"]),
        ("flap stay", [e for e in found.fronts if (e.kind, e.hinged) == ("door", "bottom")]),
    ):
        assert (needs[item].need if fronts else 0) == len(fronts)
    taped = {each.front for each in found.fittings if each.tape.suggested}
    assert taped == {front for n in found.hardware if "tape" in n.item for front in n.fronts}
    handles = sum(len(each.handles) for each in found.fronts)
    assert handles == sum(n.need for n in found.hardware if n.kind == "knob or pull")


def test_knobs_are_ordered_one_for_one() -> None:
    """What shows is chosen piece by piece; spares are of screws and what else gets lost."""
    quarter = replace(PRACTICE, spares=Fraction(25))
    of = kitchen(cabinet(opening("pull-out", boxes=(BOX,))), practice=quarter)

    assert {need.item: (need.need, need.spares) for need in schedule(of).hardware} == {
        "#8 washer-head screw, 1 1/4 in": (4, 1),
        "foam tape 1 in × 1/8 in": (4, 1),
        "slides, pair, 20 in, 75 lb": (1, 0),
        "slide screw": (8, 2),
        "knob or pull": (1, 0),
        "knob screw 8-32, 1 3/4 in": (1, 1),
        "bumper": (2, 1),
    }
