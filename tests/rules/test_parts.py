"""The pieces of a front, worked by hand from the rule."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.kinds import ClosedBy
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import INCH
from fronts.rules.materials import Wood, material_of
from fronts.rules.movement import change, resting_moisture
from fronts.rules.parts import frame_of, has_panel, panel_clearance
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Part
from fronts.rules.schedule import schedule
from tests.rules.laws import LAW
from tests.rules.small_kitchens import SIXTEENTH, cabinet, inch, kitchen, opening

# Stile and rail 2 1/4 in, tongue and groove 3/8 in, clearance 1/16 in: common practice, no source.


def _parts(of: Kitchen) -> list[Part]:
    return list(schedule(of).parts)


def test_five_piece_door() -> None:
    """16 × 28 1/2: rails 16 - 4 1/2 + 3/4; panel 11 1/2 + 5/8 by 24 + 5/8."""
    wish = FrontFacts(build="five-piece", material="hard maple")
    found = _parts(kitchen(cabinet(opening(front=wish))))

    assert [p.label for p in found] == ["B1.a stile", "B1.a rail", "B1.a panel"]
    assert [(p.part, p.length, p.width, p.thickness, p.material, p.count) for p in found] == [
        ("stile", inch("28 1/2"), inch("2 1/4"), inch("3/4"), "hard maple", 2),
        ("rail", inch("12 1/4"), inch("2 1/4"), inch("3/4"), "hard maple", 2),
        ("panel", inch("24 5/8"), inch("12 1/8"), inch("1/4"), "hard maple plywood", 1),
    ]


HEIGHTS = [("60", 2, 1), ("60 1/16", 3, 2), ("84", 3, 2)]


@pytest.mark.parametrize(("height", "rails", "panels"), HEIGHTS, ids=[h for h, _, _ in HEIGHTS])
def test_middle_rail(height: str, rails: int, panels: int) -> None:
    """Source: Architectural Woodwork Standards, 1st ed. 2009, stile-and-rail doors: a door over
    60 in high has an intermediate rail; stiles run the full height.
    """
    found = frame_of(inch("18"), inch(height), inch("2 1/4"), inch("2 1/4"), PRACTICE, inch("1/16"))

    assert (found.rails, found.panels) == (rails, panels)
    assert found.stile_length == inch(height)


PANELS = [
    ("between the stiles", "4 9/16", "40", "2 1/4", True),
    ("none between the stiles", "4 1/2", "40", "2 1/4", False),
    ("between the rails", "40", "4 9/16", "2 1/4", True),
    ("none between the rails", "40", "4 1/2", "2 1/4", False),
    ("between three rails", "40", "61 1/2", "20", True),
    ("none between three rails", "41", "61 1/2", "20 1/2", False),
]


@pytest.mark.parametrize(
    ("width", "height", "member", "seen"), [row[1:] for row in PANELS], ids=[r[0] for r in PANELS]
)
def test_a_frame_has_a_panel_where_something_of_it_shows(
    width: str, height: str, member: str, seen: bool
) -> None:
    """Over 60 in high three rails stand in its way."""
    rail = inch(member)
    stile = min(rail, inch("2 1/4"))

    assert has_panel(inch(width), inch(height), stile, rail, PRACTICE) is seen


sizes = st.integers(10, 1500).map(lambda n: n * INCH / 16)


@LAW
@given(sizes, sizes, st.integers(8, 64), st.integers(8, 64), st.integers(0, 4))
def test_a_frame_closes(
    width: Fraction, height: Fraction, stile: int, rail: int, clearance: int
) -> None:
    """Stiles, rails between and panels in their grooves add up to the front, both ways."""
    across, up, short = stile * INCH / 16, rail * INCH / 16, clearance * INCH / 32
    found = frame_of(width, height, across, up, PRACTICE, short)
    groove = PRACTICE.tongue

    assert 2 * (across - groove) + found.rail_length == width
    assert 2 * (across - groove + short) + found.panel_width == width
    seen = found.panel_height - 2 * (groove - short)
    assert found.rails * up + found.panels * seen == height


def test_a_solid_panel_is_left_room_to_grow() -> None:
    """More clearance than a plywood panel, by half its growth a side, up to whole steps."""
    oak = material_of("red oak")
    assert isinstance(oak, Wood)
    damp = resting_moisture(PRACTICE.site_celsius, PRACTICE.humidity_high)
    grows = change(inch("12"), oak, PRACTICE.made_at, damp) / 2

    found = panel_clearance(inch("12"), "red oak", SIXTEENTH, PRACTICE)

    assert grows > 0
    assert 0 <= found - PRACTICE.panel_clearance - grows < SIXTEENTH
    assert panel_clearance(inch("12"), "oak plywood", SIXTEENTH, PRACTICE) == inch("1/16")


GRAIN: list[tuple[ClosedBy, bool]] = [
    ("door", True), ("pull-out", True), ("drawer", False), ("fixed", False),
]  # fmt: skip


@pytest.mark.parametrize(("closed_by", "upright"), GRAIN, ids=[each for each, _ in GRAIN])
def test_grain_of_a_slab(closed_by: ClosedBy, upright: bool) -> None:
    """Upright on doors and pull-outs, level on drawers: common practice, no source."""
    (slab,) = _parts(kitchen(cabinet(opening(closed_by))))
    size = (inch("28 1/2"), inch("16"))

    assert (slab.length, slab.width) == (size if upright else size[::-1])
    assert (slab.part, slab.count, slab.material) == ("slab", 1, "MDF")
    assert slab.label == "B1.a"


def test_fronts_of_one_stack_stay_together() -> None:
    """A stack names itself on its parts, so that its grain can run through; others don't."""
    stacked = _parts(kitchen(cabinet(opening("drawers", count=3))))
    two = _parts(kitchen(cabinet(opening("drawers", count=2))))
    single = _parts(kitchen(cabinet(opening("drawer"))))
    alone = _parts(kitchen(cabinet(opening("drawers", count=1))))

    assert [each.stack for each in stacked] == ["B1.a"] * 3
    assert [each.stack for each in two] == ["B1.a"] * 2
    assert [each.stack for each in (*single, *alone)] == [None, None]


def test_an_existing_front_is_not_cut() -> None:
    """A front that exists has no parts."""
    wish = FrontFacts(width=inch("16"), height=inch("28 1/2"))

    assert _parts(kitchen(cabinet(opening(front=wish)))) == []


def test_default_thickness_suits_a_frame() -> None:
    """Source: Architectural Woodwork Standards, 1st ed. 2009: stile-and-rail doors >= 3/4 in,
    face frames >= 3/4 in.
    """
    wish = FrontFacts(build="five-piece")
    (stile, *_) = _parts(kitchen(cabinet(opening(front=wish))))

    assert stile.thickness >= inch("3/4")


def test_solid_panels_where_the_shop_makes_them() -> None:
    """The panel is then of the frame's wood."""
    wish = FrontFacts(build="five-piece", material="cherry")
    solid = replace(PRACTICE, solid_panels=Fraction(1))
    step = inch("1/128")
    panel = _parts(kitchen(cabinet(opening(front=wish)), practice=solid, step=step))[-1]
    clearance = panel_clearance(inch("11 1/2"), "cherry", step, solid)

    assert panel.material == "cherry"
    assert clearance > inch("1/16")
    assert panel.width == inch("11 1/2") + 2 * (inch("3/8") - clearance)
