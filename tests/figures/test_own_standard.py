"""What differs from the standard is said where it differs."""

from dataclasses import replace

from fronts.figures.own_standard import differing_fronts, own_note, own_words
from fronts.notebook import read_notebook
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.practice import inches
from fronts.rules.standard_keys import Sides, Standard

QUARTER = inches(1, 4)
TEXT = "wall North\nbase 30 high 24 deep 4 up\nB1 36 drawer 6 over pair\nB2 18 door left"


def kitchen() -> Kitchen:
    """B1's cabinet is inset, its drawer has an overlay; one of its doors its own handle."""
    read = read_notebook(TEXT, "in", inches(1, 16))
    first, second = read.cabinets
    drawer, pair = first.openings
    lapped = Standard(overlay=Sides(QUARTER, QUARTER, QUARTER, inches(1, 2)))
    drawer = replace(drawer, standard=lapped)
    pair = replace(pair, fronts=(FrontFacts(handle="K-2", material="oak"), FrontFacts()))
    inset = replace(first, openings=(drawer, pair), standard=Standard(mount="inset"))
    return replace(read, cabinets=(inset, second))


def test_sides_that_say_the_same_are_said_together() -> None:
    """Four alike as one; where one differs, each by itself."""
    alike = Standard(overlay=Sides(QUARTER, QUARTER, QUARTER, QUARTER), gap_between=inches(1, 8))
    assert own_words(alike, "in") == ("overlay 1/4", "gap between two fronts in one opening 1/8")
    assert own_note(Standard(), "in") == ""
    assert own_note(alike, "in") == "own standard"
    assert own_note(replace(alike, gap_between=None), "in") == "own standard: overlay 1/4"


def test_each_front_says_what_it_its_opening_and_its_cabinet_say() -> None:
    """The farther level first; what a front is made of stands elsewhere."""
    assert differing_fronts(kitchen().cabinets, kitchen()) == {
        "B1.a": "fronts are inset, overlay left 1/4, overlay right 1/4, overlay top 1/4, "
        "overlay bottom 1/2",
        "B1.b.1": "fronts are inset, knob or pull K-2",
        "B1.b.2": "fronts are inset",
    }
