"""What fronts are made of: density, and how solid wood moves.

Solid woods: specific gravity at 12 % moisture content and the tangential change
coefficient per 1 % from the Wood Handbook (USDA Forest Products Laboratory, FPL-GTR-190,
2010), Tables 5-3 and 13-5; tangential shrinkage, green to ovendry, Tables 4-3 and 4-4.
Values from memory are marked. Board goods: from makers' usual sheets, as marked.
"""

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

MC_OF_GRAVITY = Fraction(12)
"""Moisture content, in percent, at which the handbook's specific gravities are stated."""


WATER = Fraction(1000)
"""Density of water in kg/m³, to which specific gravity refers."""
PERCENT = Fraction(100)
LAST_RESORT = "MDF"
"""Weighed as this where neither a front's material nor the shop's own is known."""


@dataclass(frozen=True, slots=True)
class Wood:
    """A solid wood: gravity at 12 %, tangential coefficient per %, tangential shrinkage in %.

    `soft`: of a conifer.
    """

    name: str
    gravity: Fraction
    tangential: Fraction
    shrinkage: Fraction
    soft: bool = False


@dataclass(frozen=True, slots=True)
class Board:
    """A sheet good: density in kg/m³. It is taken not to move.

    `grained`: its face has a grain, so parts are cut one way of it. `banded`: its core shows
    at the edges of a slab, which are banded; MDF is taken to be painted (common practice, no
    source).
    """

    name: str
    density: Fraction
    grained: bool = False
    banded: bool = False


def _wood(name: str, gravity: str, tangential: str, shrinkage: str, *, soft: bool = False) -> Wood:
    return Wood(name, Fraction(gravity), Fraction(tangential), Fraction(shrinkage), soft)


_WOODS = {
    "red alder": _wood("red alder", "0.41", "0.00256", "7.3"),
    "alder": _wood("red alder", "0.41", "0.00256", "7.3"),
    "white ash": _wood("white ash", "0.60", "0.00274", "7.8"),
    "ash": _wood("white ash", "0.60", "0.00274", "7.8"),
    "basswood": _wood("basswood", "0.37", "0.00330", "9.3"),
    "beech": _wood("beech", "0.64", "0.00431", "11.9"),
    "paper birch": _wood("paper birch", "0.55", "0.00304", "8.6"),
    "birch": _wood("yellow birch", "0.62", "0.00338", "9.5"),
    "cherry": _wood("cherry", "0.50", "0.00248", "7.1"),
    "pecan": _wood("pecan", "0.66", "0.00315", "8.9"),
    "hickory": _wood("hickory", "0.72", "0.00411", "11.4"),  # shrinkage: memory
    "red maple": _wood("red maple", "0.54", "0.00289", "8.2"),  # shrinkage: memory
    "soft maple": _wood("red maple", "0.54", "0.00289", "8.2"),  # shrinkage: memory
    "silver maple": _wood("silver maple", "0.47", "0.00252", "7.2"),  # gravity, shrinkage: memory
    "maple": _wood("hard maple", "0.63", "0.00353", "9.9"),  # shrinkage: memory
    "white oak": _wood("white oak", "0.68", "0.00365", "10.5"),
    "oak": _wood("red oak", "0.63", "0.00369", "8.6"),  # gravity, shrinkage: memory
    "walnut": _wood("walnut", "0.55", "0.00274", "7.8"),
    "poplar": _wood("yellow-poplar", "0.42", "0.00289", "8.2"),  # coefficient: memory
    "douglas-fir": _wood("Douglas-fir", "0.48", "0.00267", "7.6", soft=True),
    "douglas fir": _wood("Douglas-fir", "0.48", "0.00267", "7.6", soft=True),
    "ponderosa pine": _wood(
        "ponderosa pine", "0.40", "0.00216", "6.2", soft=True
    ),  # memory but gravity
    "pine": _wood(
        "eastern white pine", "0.35", "0.00212", "6.1", soft=True
    ),  # gravity, shrinkage: memory
    "white fir": _wood(
        "white fir", "0.39", "0.00245", "7.0", soft=True
    ),  # gravity, coefficient: memory
}
"""By the name a shop says; longer names are looked for first."""

_PARTICLEBOARD = Board("particleboard", Fraction(720), banded=True)
"""ANSI A208.1 grade M: 640-800 kg/m³."""

_BOARDS = {
    "mdf": Board("MDF", Fraction(750)),  # makers' sheets: 700-800 kg/m³
    "melamine": _PARTICLEBOARD,
    "particle": _PARTICLEBOARD,
    "chipboard": _PARTICLEBOARD,
    # density of hardwood plywood: practice, memory
    "ply": Board("plywood", Fraction(600), grained=True, banded=True),
    "glass": Board("glass", Fraction(2500)),  # soda-lime glass; memory
}

_LAST_RESORT = _BOARDS[LAST_RESORT.lower()]


@lru_cache(maxsize=512)
def material_of(name: str) -> Wood | Board | None:
    """The material that a shop's word for it means, or None: not known."""
    said = name.lower()
    for word, board in _BOARDS.items():
        if _begins_a_word(word, said):
            return board
    for word in sorted(_WOODS, key=len, reverse=True):
        if _begins_a_word(word, said):
            return _WOODS[word]
    return None


def _begins_a_word(word: str, said: str) -> bool:
    """So that a whitewashed oak is no ash."""
    return re.search(rf"\b{re.escape(word)}", said) is not None


def has_grain(name: str) -> bool:
    """Whether parts of it must keep their direction; what is not known is taken to be wood."""
    material = material_of(name)
    return material.grained if isinstance(material, Board) else True


def wood_density(gravity: Fraction, moisture: Fraction) -> Fraction:
    """kg/m³ of wood at `moisture` percent: 1000·G·(1 + MC/100), Wood Handbook ch. 4."""
    return WATER * gravity * (1 + moisture / PERCENT)


@lru_cache(maxsize=512)
def density_of(name: str, otherwise: str) -> Fraction:
    """kg/m³ of the named material; of `otherwise`, or the last resort, where it is not known."""
    material = material_of(name) or material_of(otherwise) or _LAST_RESORT
    if isinstance(material, Wood):
        return wood_density(material.gravity, MC_OF_GRAVITY)
    return material.density
