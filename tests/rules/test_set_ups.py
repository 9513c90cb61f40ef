"""What is set up for a cabinet, by how each of its fronts is hung."""

from dataclasses import replace
from fractions import Fraction

from fronts.rules.items import Hardware
from fronts.rules.kitchen import FrontFacts, Kitchen, KnobHole
from fronts.rules.lengths import Mm
from fronts.rules.merged_jigs import merged_jigs
from fronts.rules.schedule import schedule
from fronts.rules.set_ups import Tool, set_ups, tools_used
from fronts.rules.standard_keys import Sides, Standard
from tests.rules.hinge_items import listed
from tests.rules.small_kitchens import (
    BOX,
    all_round,
    cabinet,
    door,
    inch,
    inches,
    kitchen,
    opening,
)  # fmt: skip

PULL_OUT = opening("pull-out", boxes=(BOX,))
PILOT = inch("0.164") * 2 / 3 * 9 / 10
"""90 % of a #8 screw's root, which is 2/3 of its shank, in MDF."""
ON_A_JIG = {
    Tool("jig", inches("1", "14")),
    Tool("bit", inches("1/4")),
    Tool("stop", inches("1/4", "13/16")),
    Tool("bit", (PILOT,)),
    Tool("stop", (PILOT, inch("3/8"))),
    Tool("mounting screw", inches("1 1/4")),
    Tool("bit", inches("3/16")),
    Tool("knob screw", inches("1 3/4"), "8-32"),
}
"""Check values of the trade rules: 3/4 + 3/4 in takes a screw of 1 1/4 in, stop at 3/4 + 1/16."""


def tools(of: Kitchen, label: str = "B1") -> frozenset[Tool]:
    """What is set up for one cabinet."""
    worked = schedule(of)
    return set_ups(worked, tools_used(worked, of, merged_jigs(worked, of)))[label]


def kinds(of: Kitchen) -> set[str]:
    """The kinds of what is set up for B1."""
    return {tool.kind for tool in tools(of)}


def test_a_front_on_a_jig() -> None:
    """Its jig, the bits for the box, the pilots and the knob, and screws of both lengths."""
    assert tools(kitchen(cabinet(PULL_OUT))) == ON_A_JIG


def test_packers_stand_in_place_of_a_jig() -> None:
    """As thick as the front wants, of no length."""
    low = opening("pull-out", boxes=(replace(BOX, rise=inch("1/16")),))
    found = tools(kitchen(cabinet(low), standard=Standard(overlay=all_round("1/8"))))
    assert Tool("packers", inches("3/16")) in found
    assert "jig" not in {tool.kind for tool in found}


def test_an_inset_front_has_shims_at_its_sides_and_below_only_without_a_jig() -> None:
    """One of another thickness at the right."""
    gaps = Sides(*inches("3/32", "1/8", "3/32", "1/16"))
    inset = Standard(mount="inset", inset_gap=gaps)
    sides = {Tool("side shims", inches("3/32")), Tool("side shims", inches("1/8"))}
    fine = inch("1/32")

    on_jig = tools(kitchen(cabinet(PULL_OUT), standard=inset, step=fine))
    assert {tool for tool in on_jig if "shims" in tool.kind} == sides
    low = opening("pull-out", boxes=(replace(BOX, rise=inch("1/16")),))
    on_shims = tools(kitchen(cabinet(low), standard=inset, step=fine))
    assert {tool for tool in on_shims if "shims" in tool.kind} == {
        *sides, Tool("bottom shims", inches("1/16")),
    }  # fmt: skip
    assert {"jig", "packers"}.isdisjoint(tool.kind for tool in on_shims)


def test_a_side_that_touches_wants_no_shim() -> None:
    """Nothing is as thick as no gap."""
    gaps = Sides(*inches("0", "1/8", "3/32", "3/32"))
    of = kitchen(cabinet(PULL_OUT), standard=Standard(mount="inset", inset_gap=gaps))
    shims = [tool.sizes for tool in tools(of) if tool.kind == "side shims"]
    assert shims == [inches("1/8")]


def test_a_recess_is_bored_flat_and_its_screw_goes_through_the_front_alone() -> None:
    """No stocked screw is right through both, one of 1 in through the front."""
    of = kitchen(cabinet(PULL_OUT))
    of = replace(of, stock=replace(of.stock, knob_screw_lengths=inches("1")))
    assert tools(of) >= {
        Tool("flat bit", inches("1/2")),
        Tool("flat stop", inches("1/2", "1/4")),
        Tool("knob screw", inches("1"), "8-32"),
    }


def test_a_hinged_door_wants_its_cups_bored() -> None:
    """As wide and as deep as its hinge says, with the hole and the screw for its knob."""
    hinge = listed(cup_diameter=Mm(26), cup_depth=Mm(11))
    of = kitchen(cabinet(opening()), hardware=Hardware(hinges=(hinge,)))
    assert tools(of) == {
        Tool("flat bit", (Mm(26),)),
        Tool("flat stop", (Mm(26), Mm(11))),
        Tool("bit", inches("3/16")),
        Tool("knob screw", inches("1"), "8-32"),
    }


def test_cups_in_old_bores_are_there_already() -> None:
    """Nothing is bored for a door that keeps its old ones."""
    of = kitchen(cabinet(opening()), hardware=Hardware(hinges=(listed(),)))
    worked = schedule(of)
    (front,) = worked.fronts
    assert front.hinge is not None
    kept = replace(front, hinge=replace(front.hinge, in_old_bores=True))
    worked = replace(worked, fronts=(kept,))
    used = tools_used(worked, of, merged_jigs(worked, of))
    assert {each.use for each in used} == {"knob", ""}


def test_a_door_maker_bores_what_is_bought() -> None:
    """Its cups are only checked; its knob's hole is drilled on site."""
    of = kitchen(cabinet(opening(front=FrontFacts(made_by="bought"))))
    assert schedule(of).fronts[0].hinges
    assert kinds(of) == {"bit", "knob screw"}


def test_a_door_s_own_knob_hole_is_used() -> None:
    """No bit for it."""
    hole = KnobHole(inch("1 1/2"), inch("25"), inch("3/16"))
    of = kitchen(
        cabinet(opening("pull-out", front=FrontFacts(door_on_hand="D1"), boxes=(BOX,))),
        doors=(door(knob_hole=hole),),
    )
    assert Tool("bit", inches("3/16")) not in tools(of)
    assert "knob screw" in kinds(of)


def test_a_fixed_front_wants_its_screws() -> None:
    """From behind, and nothing else."""
    of = kitchen(cabinet(opening("fixed")))
    (front,) = schedule(of).fronts
    assert front.fixed_by is not None
    assert front.fixed_by.length is not None
    assert tools(of) == {Tool("mounting screw", (front.fixed_by.length,))}
    without = replace(of, practice=replace(of.practice, fixed_screws=Fraction(0)))
    assert tools(without) == frozenset()


def test_a_cabinet_without_fronts_is_not_asked_about() -> None:
    """An open one has nothing to fit."""
    of = kitchen(cabinet(opening("open")))
    worked = schedule(of)
    assert set_ups(worked, tools_used(worked, of, merged_jigs(worked, of))) == {}


def test_a_merged_jig_is_the_one_that_is_set_up() -> None:
    """Not the one that the front wants by itself."""
    near = opening("pull-out", boxes=(replace(BOX, rise=inch("33/64")),))
    of = kitchen(cabinet(PULL_OUT), cabinet(near, label="B2", wall="East"))
    assert tools(of) == tools(of, "B2") == ON_A_JIG


def test_tools_stand_in_the_order_in_which_they_are_used() -> None:
    """Jigs first, then bits and their stops, screws last."""
    order = sorted(tools(kitchen(cabinet(PULL_OUT))), key=lambda tool: tool.rank)
    assert [tool.kind for tool in order] == [
        "jig", "bit", "bit", "bit", "stop", "stop", "mounting screw", "knob screw",
    ]  # fmt: skip
    assert order[1].sizes < order[2].sizes
    assert all(isinstance(length, Mm) for tool in order for length in tool.sizes)
