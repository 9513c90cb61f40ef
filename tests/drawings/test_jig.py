"""The jig's drawing: every figure that it is made by."""

import pytest

from fronts.drawings.jig import jig_drawing
from fronts.rules.fitting_results import Jig, Ledges, Slot
from fronts.rules.lengths import show
from tests.drawings.kitchens import demo
from tests.drawings.reading import meetings, texts
from tests.rules.small_kitchens import inch

JIG = Jig(
    thickness=inch("3/4"),
    length=inch("14"),
    ledges=Ledges(inch("1/4"), inch("2 1/4"), inch("7/8"), inch("1 3/8")),
    slot=Slot(inch("1 7/8"), inch("9/16")),
    fronts=("B1.a",),
)


def test_everything_it_is_made_by_is_written() -> None:
    """Block, ledges, overhang, slot: each figure stands on the drawing."""
    said = [each.text for each in texts(jig_drawing(JIG, inch("7/8"), unit="in"))]
    for figure in ("3/4", "14", "1/4", "2 1/4", "7/8", "1 3/8", "slot 1 7/8 × 9/16 deep"):
        assert figure in said
    assert {"front", "box", "block"} <= set(said)


@pytest.mark.parametrize("room", [(330_00, 140_00), (412_00, 140_00), (640_00, 230_00)])
@pytest.mark.parametrize("thickness", ["1/8", "3/4", "1 3/4", "4"])
@pytest.mark.parametrize("length", ["5", "14", "33 1/2"])
def test_no_text_stands_on_another(room: tuple[int, int], thickness: str, length: str) -> None:
    """Thin and thick, short and long, with its slot."""
    jig = Jig(inch(thickness), inch(length), JIG.ledges, JIG.slot, JIG.fronts)
    assert meetings(jig_drawing(jig, inch("3/4"), unit="in", room=room)) == []


def test_the_demo_kitchens_jigs_can_be_drawn_in_millimetres() -> None:
    """The same drawing in the other unit."""
    for jig in demo()[1].jigs:
        said = [each.text for each in texts(jig_drawing(jig, inch("3/4"), unit="mm"))]
        assert show(jig.thickness, "mm") in said
