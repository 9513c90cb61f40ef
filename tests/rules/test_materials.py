"""What fronts are made of, against the handbook's tables and published densities."""

import json
from fractions import Fraction
from pathlib import Path

import pytest

from fronts.rules.materials import Board, Wood, density_of, has_grain, material_of, wood_density
from fronts.rules.practice import POUND

WOODS = json.loads((Path(__file__).parent / "data" / "woods.json").read_text(encoding="utf-8"))
COLUMNS = ("gravity", "tangential", "shrinkage")
CELLS = [
    pytest.param(name, column, Fraction(cell), id=f"{name}, {column}{' (from memory)' * known}")
    for name, wood in WOODS["woods"].items()
    for index, (column, cell) in enumerate(zip(COLUMNS, wood["row"], strict=True))
    for known in [index in wood["from_memory"]]
]
GROUPS = {"red oak", "white oak"}
"""Rows of Table 13-5 that average several species; the identity holds for single ones."""
CUBIC_FOOT = Fraction("0.3048") ** 3


def _wood(name: str) -> Wood:
    found = material_of(name)
    assert isinstance(found, Wood)
    return found


@pytest.mark.parametrize(("name", "column", "value"), CELLS)
def test_woods_agree_with_the_handbook(name: str, column: str, value: Fraction) -> None:
    """Source: Wood Handbook, FPL-GTR-190 (2010), Tables 4-3, 5-3 and 13-5."""
    assert getattr(_wood(name), column) == value


@pytest.mark.parametrize("name", sorted(set(WOODS["woods"]) - GROUPS))
def test_coefficient_and_shrinkage_tell_the_same(name: str) -> None:
    """C = (S/3000) / (1 - 20·S/3000), from linear shrinkage below 30 % referred to 10 %.

    Source: derived from the Wood Handbook's definitions of the two (ch. 4 and 13).
    """
    share = _wood(name).shrinkage / 3000

    assert float(share / (1 - 20 * share)) == pytest.approx(
        float(_wood(name).tangential), abs=0.00001
    )


SAID = [
    ("hard maple", "hard maple"),
    ("Maple", "hard maple"),
    ("Sugar maple", "hard maple"),
    ("soft maple", "red maple"),
    ("White Oak, rift", "white oak"),
    ("oak", "red oak"),
    ("European beech", "beech"),
    ("birch", "yellow birch"),
    ("Paper birch", "paper birch"),
    ("black cherry", "cherry"),
    ("poplar", "yellow-poplar"),
    ("Douglas fir", "Douglas-fir"),
    ("pine", "eastern white pine"),
    ("birch plywood", "plywood"),
    ("maple veneered MDF", "MDF"),
    ("white melamine", "particleboard"),
    ("Particle board", "particleboard"),
    ("clear glass", "glass"),
    ("whitewashed oak", "red oak"),
    ("Simply White maple", "hard maple"),
    ("birch-ply", "plywood"),
    ("something else", None),
    ("", None),
]


@pytest.mark.parametrize(("said", "meant"), SAID, ids=[said or "nothing" for said, _ in SAID])
def test_a_shops_words(said: str, meant: str | None) -> None:
    """Longer names first, sheet goods before the wood on them: common practice, no source."""
    found = material_of(said)

    assert (found.name if found else None) == meant


DENSITIES = [
    # 1000·G12·1.12 kg/m³ and its lb/ft³: Wood Handbook ch. 4, arithmetic
    ("hard maple", "705.6", "44.0"),
    ("red oak", "705.6", "44.0"),
    ("cherry", "560", "35.0"),
    ("yellow-poplar", "470.4", "29.4"),
    ("white oak", "761.6", "47.5"),
    ("MDF", "750", "46.8"),
]


@pytest.mark.parametrize(("name", "metric", "pounds"), DENSITIES, ids=[d[0] for d in DENSITIES])
def test_densities(name: str, metric: str, pounds: str) -> None:
    """Source: Wood Handbook, FPL-GTR-190 (2010), ch. 4, at 12 % moisture."""
    density = density_of(name, "MDF")

    assert density == Fraction(metric)
    assert float(density * CUBIC_FOOT / POUND) == pytest.approx(float(pounds), abs=0.06)


def test_douglas_fir_agrees_with_a_weighed_figure() -> None:
    """Source: Oregon Wood Innovation Center, Douglas-fir, air-dry: 34 lb/ft³ (545 kg/m³)."""
    assert float(density_of("Douglas-fir", "MDF")) == pytest.approx(545, rel=0.02)


BOARDS = [
    ("MDF", 500, 1000, "MDF: 500 to 1000 kg/m³ (general reference)"),
    ("particleboard", 640, 800, "ANSI A208.1, grade M"),
]


@pytest.mark.parametrize(("name", "least", "most", "source"), BOARDS, ids=[b[3] for b in BOARDS])
def test_boards_lie_in_their_published_range(name: str, least: int, most: int, source: str) -> None:
    """Board goods lie within the range of their standard, and don't move."""
    assert source
    assert isinstance(material_of(name), Board)
    assert least <= density_of(name, "MDF") <= most


def test_dry_wood_is_lighter() -> None:
    """At 0 % the density is the oven-dry mass over the volume at 12 %."""
    assert wood_density(Fraction("0.5"), Fraction(0)) == 500
    assert wood_density(Fraction("0.5"), Fraction(12)) == 560


def test_what_nobody_knows_is_weighed_as_the_shops_own() -> None:
    """An unknown material takes the density of what the shop names instead."""
    assert density_of("unobtainium", "cherry") == density_of("cherry", "MDF")
    assert density_of("unobtainium", "nothing") == density_of("MDF", "cherry")


GRAIN = [
    ("hard maple", True),
    ("birch plywood", True),
    ("MDF", False),
    ("white melamine", False),
    ("glass", False),
    ("moonstone", True),
]


@pytest.mark.parametrize(("material", "grained"), GRAIN, ids=[name for name, _ in GRAIN])
def test_what_has_a_grain(material: str, grained: bool) -> None:
    """Wood and plywood; what nobody knows is kept the way of its length (common practice)."""
    assert has_grain(material) is grained
