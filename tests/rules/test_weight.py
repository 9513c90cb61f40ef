"""What fronts weigh, against published figures."""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.rules.kitchen import FrontFacts
from fronts.rules.materials import density_of
from fronts.rules.practice import POUND, PRACTICE
from fronts.rules.weight import panel_material, slab_weight, weight_kg
from tests.rules.small_kitchens import cabinet, inch, kitchen, only_front, opening

SLABS = [("hard maple", 8.259), ("cherry", 6.555), ("yellow-poplar", 5.506)]


@pytest.mark.parametrize(("material", "pounds"), SLABS, ids=[each for each, _ in SLABS])
def test_slab_of_18_by_24(material: str, pounds: float) -> None:
    """Source: Wood Handbook ch. 4 and Table 5-3 at 12 %, 3/4 × 18 × 24 in, arithmetic."""
    found = slab_weight(inch("18"), inch("24"), inch("3/4"), material, PRACTICE)

    assert float(found / POUND) == pytest.approx(pounds, abs=0.0006)


PER_FOOT = [("hard maple", 2.753), ("cherry", 2.185), ("yellow-poplar", 1.835),
            ("white oak", 2.972), ("MDF", 2.926)]  # fmt: skip


@pytest.mark.parametrize(("material", "pounds"), PER_FOOT, ids=[each for each, _ in PER_FOOT])
def test_a_square_foot_at_three_quarters(material: str, pounds: float) -> None:
    """Source: Wood Handbook ch. 4, arithmetic; MDF at 750 kg/m³."""
    found = slab_weight(inch("12"), inch("12"), inch("3/4"), material, PRACTICE)

    assert float(found / POUND) == pytest.approx(pounds, abs=0.001)


def test_a_cubic_metre_weighs_its_density() -> None:
    """Millimetres in, kilograms out."""
    assert weight_kg(Fraction(1000), Fraction(1000), Fraction(1000), Fraction(750)) == 750


def test_plywood_panels_beside_solid_frames() -> None:
    """Plywood unless the shop makes solid panels; board frames hold the same board: practice."""
    assert panel_material("hard maple", PRACTICE) == "hard maple plywood"
    assert panel_material("MDF", PRACTICE) == "MDF"
    solid = replace(PRACTICE, solid_panels=Fraction(1))
    assert panel_material("hard maple", solid) == "hard maple"


def test_five_piece_front_is_weighed_part_by_part() -> None:
    """16 × 28 1/2 in, 2 1/4 in members, 3/8 in tongues, a 1/4 in panel 1/16 in short a side."""
    wish = FrontFacts(build="five-piece", material="cherry")
    front = only_front(kitchen(cabinet(opening(front=wish))))
    cherry, plywood = density_of("cherry", "MDF"), density_of("cherry plywood", "MDF")

    frame = 2 * inch("28 1/2") * inch("2 1/4") + 2 * inch("12 1/4") * inch("2 1/4")
    panel = inch("12 1/8") * inch("24 5/8") * inch("1/4")
    cubic = Fraction(1000) ** 3
    assert front.weight_kg == (frame * inch("3/4") * cherry + panel * plywood) / cubic


def test_glass_weighs_more_than_plywood() -> None:
    """Soda-lime glass at 2500 kg/m³: from memory."""
    assert density_of("clear glass", "MDF") == 2500
