"""What a front weighs, a five-piece one part by part.

Hinges are counted by it, and slides classed, so what is not known is weighed as something
that the shop is told of.
"""

from fractions import Fraction

from fronts.rules.lengths import Mm
from fronts.rules.materials import Board, density_of, material_of
from fronts.rules.practice import Practice

CUBIC_METRE = Fraction(1000) ** 3


def weight_kg(width: Mm, height: Mm, thickness: Mm, density: Fraction) -> Fraction:
    """Kilograms of one piece; sizes in mm, density in kg/m³."""
    return mass_kg(width * height * thickness, density)


def mass_kg(volume: Fraction, density: Fraction) -> Fraction:
    """Kilograms of so many mm³; density in kg/m³."""
    return volume * density / CUBIC_METRE


def panel_material(material: str, practice: Practice) -> str:
    """What a five-piece front's panel is made of: plywood beside solid wood, unless the shop
    makes solid panels; else the same as its frame."""
    if practice.solid_panels or isinstance(material_of(material), Board):
        return material
    return f"{material} plywood"


def slab_weight(
    width: Mm, height: Mm, thickness: Mm, material: str, practice: Practice
) -> Fraction:
    """Kilograms of a front in one piece."""
    return weight_kg(width, height, thickness, density_of(material, practice.material))
