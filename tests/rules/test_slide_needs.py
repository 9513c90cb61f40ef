"""What slides ask for where their item does not say: common practice, no source."""

from fractions import Fraction

import pytest

from fronts.rules.items import SlideItem
from fronts.rules.kinds import SlideKind, Unit
from fronts.rules.lengths import Mm
from fronts.rules.slide_needs import needs_of
from tests.rules.small_kitchens import inch

LOAD = Fraction(45)
# kind, unit: clearance, tolerance, below, above
USUAL: list[tuple[SlideKind, Unit, tuple[str, str, str, str]]] = [
    ("side", "in", ("1/2", "1/16", "1/2", "1/2")),
    ("under", "in", ("42 mm", "1/32", "9/16", "1/4")),
    ("bottom", "in", ("3/16", "1/16", "1/2", "1/2")),
    ("side", "mm", ("12.7 mm", "1.6 mm", "12 mm", "12 mm")),
    ("under", "mm", ("42 mm", "0.8 mm", "14 mm", "6 mm")),
    ("bottom", "mm", ("5 mm", "1.6 mm", "12 mm", "12 mm")),
]


@pytest.mark.parametrize(("kind", "unit", "figures"), USUAL)
def test_usual_figures(kind: SlideKind, unit: Unit, figures: tuple[str, ...]) -> None:
    """By kind and by the unit that the shop works in."""
    needs = needs_of(SlideItem("S", kind, (inch("20"),), LOAD), unit)

    assert (needs.clearance, needs.tolerance, needs.below, needs.above) == tuple(map(inch, figures))


def test_the_item_says_otherwise() -> None:
    """Every figure of its own holds, nothing too."""
    item = SlideItem(
        "U", "under", (inch("20"),), LOAD, inside_clearance=Mm(40), tolerance=Mm(0), below=Mm(0),
        above=Mm(1), recess=Mm(15), most_side=Mm(16),
    )  # fmt: skip
    needs = needs_of(item, "in")

    assert (needs.clearance, needs.tolerance) == (Mm(40), Mm(0))
    assert (needs.below, needs.above) == (Mm(0), Mm(1))
    assert (needs.recess, needs.most_side, needs.notched) == (Mm(15), Mm(16), True)


@pytest.mark.parametrize(("height", "below"), [(None, "1/2"), ("3/8", "1/2"), ("5/8", "5/8")])
def test_a_bottom_slide_takes_its_own_height(height: str | None, below: str) -> None:
    """And 1/2 in at the least."""
    tall = None if height is None else inch(height)
    item = SlideItem("C", "bottom", (inch("18"),), LOAD, height=tall)

    assert needs_of(item, "in").below == inch(below)


# Steps of 1/16 in lose up to that; a tolerance of 1/32 in bears half of it.
WIDTHS = [("14", "14"), ("14 1/32", "14"), ("14 5/128", "14 5/128"), ("14 1/16", "14 1/16")]


@pytest.mark.parametrize(("widest", "made"), WIDTHS)
def test_made_down_to_the_step_or_exactly(widest: str, made: str) -> None:
    """Exact where the step would lose more than the slide bears."""
    item = SlideItem("S", "side", (inch("20"),), LOAD, clearance=Mm(0), tolerance=inch("1/32"))
    needs = needs_of(item, "in")

    assert needs.made_width(inch(widest), inch("1/2"), inch("1/16")) == inch(made)
