"""Glass in a five-piece front: the pane, its weight, and who orders it.

Rabbet, play and thickness are the shop's numbers: common practice, no source.
"""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.figures.cautions import GLASS, at_bench
from fronts.figures.fronts import made_from
from fronts.rules.glass import pane_weight
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from tests.rules.small_kitchens import cabinet, inch, kitchen, only_front, opening

GLAZED = FrontFacts(build="five-piece", material="cherry", glass=True)


def _glazed(height: str = "27 1/2", wish: FrontFacts = GLAZED) -> Kitchen:
    """A door 16 in wide, an inch higher than its opening."""
    of = opening(height=inch(height), front=wish)
    return kitchen(cabinet(of, height=inch("110"), kind="tall"))


@pytest.mark.parametrize(("thickness", "kilograms"), [(3, "7.5"), (4, "10"), (6, "15")])
def test_a_square_metre_weighs_as_the_standard_says(thickness: int, kilograms: str) -> None:
    """Source: EN 572-1, soda-lime silicate glass, 2500 kg/m³: 2.5 kg/m² a millimetre."""
    assert pane_weight(Mm(1000), Mm(1000), Mm(thickness)) == Fraction(kilograms)


def test_the_pane_fills_the_rabbets_less_its_play() -> None:
    """Opening 11 1/2 × 24 in; 3/8 in rabbets, 1/16 in play: 5/8 in more each way."""
    (line,) = [need for need in schedule(_glazed()).hardware if need.kind == "glass"]

    assert (line.item, line.need) == ("glass 12 1/8 in × 24 5/8 in, 1/8 in", 1)
    assert line.fronts == ("B1.a",)


def test_a_middle_rail_parts_two_panes() -> None:
    """70 in high: three rails of 2 1/4 in leave two openings of 31 5/8 in."""
    (line,) = [need for need in schedule(_glazed("69")).hardware if need.kind == "glass"]

    assert (line.item, line.need) == ("glass 12 1/8 in × 32 1/4 in, 1/8 in", 2)


def test_a_pane_is_not_cut_from_wood() -> None:
    """The frame is, and with a panel the panel too."""
    panelled = replace(GLAZED, glass=False)

    assert [part.part for part in schedule(_glazed()).parts] == ["stile", "rail"]
    assert "panel" in [part.part for part in schedule(_glazed(wish=panelled)).parts]


def test_the_pane_is_weighed_in_place_of_the_panel() -> None:
    """12 1/8 × 24 5/8 × 1/8 in of glass, where 1/4 in plywood 1/16 in short a side would be."""
    glazed = only_front(_glazed())
    bare = replace(GLAZED, glass=False)
    frame = sum(
        (part.length * part.width * part.thickness * part.count
         for part in schedule(_glazed(wish=bare)).parts if part.part != "panel"),
        Fraction(0),
    )  # fmt: skip
    cherry = only_front(_glazed(wish=FrontFacts(material="cherry")))
    density = cherry.weight_kg / (cherry.width * cherry.height * cherry.thickness)
    pane = inch("12 1/8") * inch("24 5/8") * inch("1/8") * Fraction(2500) / 10**9

    assert glazed.weight_kg == frame * density + pane


def test_glass_asks_for_a_frame() -> None:
    """Where nobody says how the front is built; a slab has no panel that glass could replace."""
    assert only_front(_glazed(wish=FrontFacts(glass=True))).build == "five-piece"
    slab = only_front(_glazed(wish=FrontFacts(build="slab", glass=True)))
    assert (slab.build, slab.glass) == ("slab", False)


def test_a_front_that_exists_has_its_pane() -> None:
    """Nothing is ordered for it."""
    wish = replace(GLAZED, width=inch("16"), height=inch("28 1/2"))

    assert not [need for need in schedule(_glazed(wish=wish)).hardware if need.kind == "glass"]


def test_who_makes_it_is_told_and_warned() -> None:
    """Safety glazing is for the local code to say."""
    glazed, panelled = (only_front(_glazed(wish=replace(GLAZED, glass=so))) for so in (True, False))

    assert made_from(glazed, "in") == "five-piece, cherry, glass"
    assert made_from(panelled, "in") == "five-piece, cherry"
    assert GLASS in at_bench((), (), [glazed])
    assert GLASS not in at_bench((), (), [panelled])
