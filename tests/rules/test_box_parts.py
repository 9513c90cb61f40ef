"""The pieces of a box to be made, by hand; joints and play: common practice, no source."""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.rules.box_facts import BoxesMadeOf
from fronts.rules.box_parts import BoxPiece, box_weight
from fronts.rules.box_stock import MATERIAL, box_stock
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.materials import density_of
from tests.rules.finding_cases_boxes import UNDER, to_make, with_slides
from tests.rules.made_boxes import outside, parts_of_box
from tests.rules.small_kitchens import findings_of, inch, inches

RABBET = BoxesMadeOf(joint="rabbet", joint_depth=inch("1/4"))
DOVETAIL = BoxesMadeOf(joint="through-dovetail", side=inch("5/8"))


def _drawer(made_of: BoxesMadeOf, height: str = "7") -> Kitchen:
    """A box 14 × 6 × 20 in on side slides."""
    return to_make("side", made_of=made_of, closed_by="drawer", height=inch(height))


# Side 1/2 in, bottom and groove 1/4 in, play 1/16 in: 14 - 1 + 1/2 - 1/16 by 20 - 1 + 1/2 - 1/16.
PIECES: list[tuple[str, Kitchen, str, str, str, int]] = [
    ("sides as long as the box", _drawer(BoxesMadeOf()), "box-side", "20", "6", 2),
    ("butted", _drawer(BoxesMadeOf()), "box-front", "13", "6", 1),
    ("in rabbets 1/4 in deep", _drawer(RABBET), "box-front", "13 1/2", "6", 1),
    ("in rabbets of half the side", _drawer(BoxesMadeOf(joint="dado")), "box-back", "13 1/2", "6",
     1),
    ("dovetailed through 5/8 in", _drawer(DOVETAIL), "box-back", "14", "6", 1),
    ("the bottom in grooves all round", _drawer(BoxesMadeOf()), "box-bottom", "13 7/16", "19 7/16",
     1),
    ("a pull-out's low sides", to_make("side"), "box-side", "20", "4", 2),
    ("two a tier", to_make("side", shelves=2, load_kg=Fraction(10)), "box-side", "20", "4", 6),
    ("shelves in grooves", to_make("side", shelves=2, load_kg=Fraction(10)), "box-shelf", "13 7/16",
     "19 7/16", 2),
    ("its front keeps its height", to_make("side"), "box-front", "13", "26 1/2", 1),
]  # fmt: skip


@pytest.mark.parametrize(
    ("of", "part", "length", "width", "count"), [row[1:] for row in PIECES],
    ids=[row[0] for row in PIECES],
)  # fmt: skip
def test_pieces(of: Kitchen, part: str, length: str, width: str, count: int) -> None:
    """Length with the grain, width, and how many."""
    piece = parts_of_box(of)[part]

    assert (piece.length, piece.width, piece.count) == (*inches(length, width), count)


def test_what_a_box_weighs() -> None:
    """Two sides of a litre each, of plywood."""
    stock = box_stock(BoxesMadeOf(), "mm")
    sides = BoxPiece("box-side", Mm(1000), Mm(100), Mm(10), 2)

    assert box_weight([sides], stock) == 2 * density_of(MATERIAL, MATERIAL) / 1000


def test_under_slides_go_beneath_the_back() -> None:
    """The back ends 13 mm and the bottom above the box's edge; the bottom runs on behind."""
    of = with_slides(to_make("under"), replace(UNDER, recess=inch("1/2")))
    width, height, _, _ = outside(of)
    pieces = parts_of_box(of)

    assert pieces["box-back"].width == height - inch("1/2") - inch("1/4")
    assert pieces["box-bottom"].length == width - inch("1") + inch("1/2") - inch("1/16")
    assert pieces["box-bottom"].width == inch("21") - inch("1/2") + inch("1/4") - inch("1/16")


def test_what_boxes_are_made_of() -> None:
    """The shop's material, else plywood; one that nobody knows is said."""
    said = BoxesMadeOf(material="paper birch", bottom=inch("3/8"))
    pieces = parts_of_box(_drawer(said))

    assert {piece.material for piece in pieces.values()} == {"paper birch"}
    assert pieces["box-bottom"].thickness == inch("3/8")
    assert pieces["box-side"].thickness == inch("1/2")
    assert parts_of_box(_drawer(BoxesMadeOf()))["box-side"].material == "plywood"
    assert findings_of(_drawer(BoxesMadeOf(material="unobtainium")), "material-unknown")
