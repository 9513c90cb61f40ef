"""What fronts are made of and hang on, said once for many: which level's word holds."""

from dataclasses import replace
from fractions import Fraction
from typing import Any

import pytest

from fronts.rules.items import BY_RULE, HandleItem, Hardware, HingeItem
from fronts.rules.kitchen import FrontFacts, KindStandard, Kitchen, Point
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Front
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import BY_BUILD, Standard
from fronts.rules.validity import faults_of
from tests.rules.finding_cases import lapping
from tests.rules.hinge_items import listed, on_plate
from tests.rules.small_kitchens import (
    HALF_LAP,
    beside,
    cabinet,
    codes_of,
    door,
    findings_of,
    inch,
    kitchen,
    only_front,
    opening,
)

BORES = tuple(Point(Fraction(45, 2), Fraction(up)) for up in (90, 600))
HANDLES = (HandleItem("K-1"), HandleItem("P-1"), HandleItem("P-2"))
LEVELS = ("job", "kind", "cabinet", "opening", "front")
"""From the farthest."""


def said_at(*levels: str) -> Kitchen:
    """A door of whose material each of these levels says that it is its own oak."""

    def says(level: str, **more: Any) -> Standard:
        return Standard(front_material=f"oak of {level}" if level in levels else None, **more)

    own = FrontFacts(material="oak of front" if "front" in levels else None)
    hole = opening(front=own, standard=says("opening"))
    of = kitchen(
        cabinet(hole, standard=says("cabinet")), standard=says("job", overlay=HALF_LAP.overlay)
    )
    of_walls = KindStandard("wall", Standard(front_material="not this one"))
    return replace(of, kind_standards=(of_walls, KindStandard("base", says("kind"))))


@pytest.mark.parametrize("nearest", range(1, len(LEVELS) + 1))
def test_the_nearest_level_holds(nearest: int) -> None:
    """Job, cabinet kind, cabinet, opening, front: each goes before all that are farther."""
    levels = LEVELS[:nearest]
    assert only_front(said_at(*levels)).material == f"oak of {levels[-1]}"


def test_nobody_says_it() -> None:
    """By the shop's numbers, by how the front is built."""
    of = said_at()
    assert only_front(of).material == PRACTICE.material
    built = replace(of, standard=replace(of.standard, front_build="five-piece"))
    assert only_front(built).build == "five-piece"
    assert only_front(built).material == PRACTICE.frame_material


def test_a_door_on_hand_is_what_it_is() -> None:
    """Its own build and material go before a standard's; what a front says goes before both."""
    old = door("D1", "16 1/2", "29", build="slab", material="cherry")
    said = replace(HALF_LAP, front_build="five-piece", front_material="oak")

    def made(**wish: str) -> Front:
        of = opening(front=FrontFacts(door_on_hand="D1", **wish))  # type: ignore[arg-type]
        return only_front(kitchen(cabinet(of), doors=[old], standard=said))

    assert (made().build, made().material) == ("slab", "cherry")
    assert made(material="pine").material == "pine"
    assert only_front(kitchen(cabinet(opening()), standard=said)).material == "oak"


def test_glass_goes_before_the_standards_build() -> None:
    """A pane wants a frame, unless the front itself says otherwise."""
    said = replace(HALF_LAP, front_build="slab")
    of = opening(front=FrontFacts(glass=True))
    assert only_front(kitchen(cabinet(of), standard=said)).build == "five-piece"


def equipped(said: Standard, front: FrontFacts) -> Kitchen:
    """Two doors, of which the first says something itself, in a shop with handles and hinges."""
    first = cabinet(opening(front=front))
    hinges = (listed("H-1"), listed("H-2"))
    return kitchen(
        first,
        beside(first, openings=(opening(),)),
        standard=said,
        hardware=Hardware(handles=HANDLES, hinges=hinges),
    )


def test_a_handle_and_a_hinge_are_named_once_for_all() -> None:
    """Where a front names none."""
    said = replace(HALF_LAP, front_handle="P-1", front_hinge="H-2")
    of = equipped(said, FrontFacts(handle="P-2", hinge="H-1"))

    fronts = schedule(of).fronts

    assert [front.handles[0].code for front in fronts] == ["P-2", "P-1"]
    assert [front.hinge and front.hinge.code for front in fronts] == ["H-1", "H-2"]
    assert not {"handle-unknown", "hinge-does-not-suit"} & set(codes_of(of))


def test_what_a_standard_names_and_no_list_has_is_told_once() -> None:
    """With all fronts that would have it; they have what they would have without it."""
    said = replace(HALF_LAP, front_handle="P-9", front_hinge="H-9")
    of = equipped(said, FrontFacts())

    assert [one.where for one in findings_of(of, "handle-unknown")] == [("B1.a", "B2.a")]
    assert [one.where for one in findings_of(of, "hinge-does-not-suit")] == [("B1.a", "B2.a")]
    assert [front.handles[0].code for front in schedule(of).fronts] == ["K-1", "K-1"]
    own = equipped(said, FrontFacts(handle="K-1", hinge="H-1"))
    assert [one.where for one in findings_of(own, "handle-unknown")] == [("B2.a",)]


def test_a_standards_handle_makes_no_fixed_front_open() -> None:
    """Only who names one for the front itself means it."""
    said = replace(HALF_LAP, front_handle="P-1")
    of = kitchen(cabinet(opening("fixed")), standard=said, hardware=Hardware(handles=HANDLES))
    assert only_front(of).handles == ()


def test_a_kind_of_cabinet_laps_its_own_way() -> None:
    """Laps of a kind replace the job's, as any level's do."""
    of, quarter = kitchen(cabinet(opening())), lapping(*["1/4"] * 4)
    base = replace(of, kind_standards=(KindStandard("base", quarter),))
    tall = replace(of, kind_standards=(KindStandard("tall", quarter),))

    assert only_front(base).width == opening().width + 2 * inch("1/4")
    assert only_front(tall).width == opening().width + 2 * inch("1/2")


def test_a_nearer_level_goes_back_to_the_rule() -> None:
    """Words of their own take back what a farther level names."""
    said = replace(HALF_LAP, front_handle="P-1", front_hinge="H-2", front_material="oak")
    of = equipped(said, FrontFacts())
    back = Standard(front_handle=BY_RULE, front_hinge=BY_RULE, front_material=BY_BUILD)
    first = replace(of.cabinets[0], standard=back)

    front, other = schedule(replace(of, cabinets=(first, of.cabinets[1]))).fronts

    assert (front.handles[0].code, other.handles[0].code) == ("K-1", "P-1")
    assert (front.hinge and front.hinge.code, other.hinge and other.hinge.code) == ("H-1", "H-2")
    assert (front.material, other.material) == (PRACTICE.material, "oak")


@pytest.mark.parametrize(
    "item", [HandleItem("By Rule"), listed("by rule")], ids=["handle", "hinge"]
)
def test_no_item_is_called_by_the_word_for_the_rule(item: HandleItem | HingeItem) -> None:
    """It would never be found."""
    assert "meaning of its own" in faults_of(item)["code"]


def test_old_bores_go_before_a_standards_hinge() -> None:
    """What somebody names for the door itself goes before both."""
    old = door("D1", "16", "28 1/2", hinge_bores=BORES)
    said = replace(HALF_LAP, front_hinge="H-2")
    hinges = (on_plate("H-1"), on_plate("H-2", cup_diameter=inch("1 1/4")))

    def hung(**own: str) -> Front:
        of = opening(front=FrontFacts(door_on_hand="D1", **own))  # type: ignore[arg-type]
        return only_front(
            kitchen(cabinet(of), doors=[old], standard=said, hardware=Hardware(hinges=hinges))
        )

    assert (hung().hinge and hung().hinge.code) == "H-1"  # type: ignore[union-attr]
    new = hung(hinge="H-2").hinge
    assert new is not None
    assert (new.code, new.in_old_bores) == ("H-2", False)
