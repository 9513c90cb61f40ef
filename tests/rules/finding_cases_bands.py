"""Cases of findings about edge bands."""

from dataclasses import replace

from fronts.rules.items import BandItem, Hardware
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Sides
from tests.rules.finding_cases import Case, one
from tests.rules.small_kitchens import HALF_LAP, inch, opening

MILLIMETRE = Mm(1)


def _banded(material: str = "MDF", thickness: Mm = MILLIMETRE, width: Mm | None = None) -> Kitchen:
    """A slab 16 × 28 1/2 in, 3/4 in thick, with one kind of band on all its edges."""
    item = BandItem("E-1", thickness, width=width)
    standard = replace(HALF_LAP, band=Sides(*["E-1"] * 4))
    front = FrontFacts(material=material)
    return one(opening(front=front), standard, hardware=Hardware(bands=(item,)))


def _in_no_list(material: str) -> Kitchen:
    return replace(_banded(material), hardware=Hardware(bands=(BandItem("E-2", MILLIMETRE),)))


CASES = [
    Case("a band that is in no list", "band-unknown", "stop", ("B1.a",),
         _in_no_list("MDF"), _in_no_list("hard maple")),
    Case("bands as thick as half the front is wide", "no-room-for-bands", "stop", ("B1.a",),
         _banded(thickness=inch("8")), _banded(thickness=inch("7 15/16"))),
    Case("a sixteenth narrower than the edge", "band-too-narrow", "check", ("B1.a",),
         _banded(width=inch("11/16")), _banded(width=inch("3/4"))),
]  # fmt: skip
