"""What weight × height of a stay means, worked out by hand."""

from fractions import Fraction

from fronts.drawings.lift_item import lift_item_drawing
from fronts.rules.items import LiftItem
from tests.drawings.reading import meetings, texts


def test_weights_at_heights_that_one_meets() -> None:
    """9 kg·m: at 450 mm 20 kg; at 12 in 9 / 0.3048 = 29.53 kg, which are 65.1 lb."""
    lift = LiftItem("L-1", Fraction(3, 2), Fraction(9))
    metric, inches = lift_item_drawing(lift, "mm"), lift_item_drawing(lift, "in")
    said = {each.text for each in texts(metric)}
    assert "serves weight × height from 1.5 up to 9 kg·m" in said
    assert "a door 450 mm high: from about 3.3 kg up to about 20.0 kg" in said
    assert "a door 12 in high: from about 10.8 lb up to about 65.1 lb" in {
        each.text for each in texts(inches)
    }
    for svg in (metric, inches):
        assert meetings(svg) == []


def test_one_that_serves_from_nothing_says_only_the_most() -> None:
    """Nobody is told of 0.0 lb."""
    svg = lift_item_drawing(LiftItem("L", Fraction(0), Fraction(3)), "in")
    said = [each.text for each in texts(svg)]
    assert "serves weight × height up to 3 kg·m" in said
    assert not [text for text in said if "from" in text]
