"""Where pulls go, which have two holes: common practice, no source."""

from dataclasses import replace

import pytest

from fronts.rules.item_kinds import HandleWay
from fronts.rules.items import HandleItem
from fronts.rules.kinds import FrontBuild, Hinged
from fronts.rules.kitchen import FrontFacts
from fronts.rules.lengths import INCH
from tests.rules.handles_on_fronts import front_of, listing
from tests.rules.small_kitchens import BOX, cabinet, inch, inches, kitchen, only_front, opening

# On a door 16 × 28 1/2 in: how it hangs, what its pull is like, the middle of the pull.
PULLS = [
    ("left", 4, "upright", "14 7/8", "23 1/2"),
    ("left", 8, "upright", "14 7/8", "21 1/2"),
    ("left", 20, "upright", "14 7/8", "15 1/2"),
    ("right", 8, "across", "5 1/8", "25 1/2"),
    ("left", 8, "across", "10 7/8", "25 1/2"),
    ("top", 8, "upright", "8", "7"),
    ("bottom", 8, "upright", "8", "21 1/2"),
    ("top", 8, "across", "8", "3"),
]


@pytest.mark.parametrize(("hinged", "centres", "way", "x", "y"), PULLS)
def test_the_nearer_screw_of_a_pull_is_where_a_knob_would_be(
    hinged: Hinged, centres: int, way: HandleWay, x: str, y: str
) -> None:
    """3 in from the end, 1 1/8 in from the free edge."""
    pull = HandleItem("P", centres=centres * INCH, door=way)
    (handle,) = front_of("door", pull, hinged=hinged).handles

    assert (handle.x, handle.y) == tuple(inches(x, y))


@pytest.mark.parametrize("way", ["upright", "across"])
@pytest.mark.parametrize("hinged", ["left", "right", "top", "bottom"])
def test_no_screw_of_a_pull_misses_its_frame_s_edge(hinged: Hinged, way: HandleWay) -> None:
    """A pull wider than its stile or rail lies further in, 3/8 in of wood beyond its hole."""
    pull = HandleItem("P", centres=inch("5"), door=way)
    front = front_of("door", pull, hinged=hinged, build="five-piece")
    spare = inch("3/8")

    for hole in front.handles[0].holes:
        assert spare <= hole.x <= front.width - spare
        assert spare <= hole.y <= front.height - spare


@pytest.mark.parametrize(("build", "from_top"), [("slab", "3"), ("five-piece", "3/8")])
def test_a_pull_of_a_pull_out_is_on_it_too(build: FrontBuild, from_top: str) -> None:
    """Its upper screw is as far from the top, though no door beside it says how high."""
    box = replace(BOX, height=inch("26 3/4"))
    hole = opening("pull-out", boxes=(box,), front=FrontFacts(build=build))
    pull = HandleItem("P", centres=inch("8"))
    pulled = only_front(listing(pull, of=kitchen(cabinet(hole))))

    assert pulled.handles[0].holes[1].y == pulled.height - inch(from_top)
