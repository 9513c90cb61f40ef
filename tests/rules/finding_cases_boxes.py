"""Cases of findings about boxes, found or to be made, and their slides."""

from dataclasses import replace
from typing import Any

from fronts.rules.box_facts import Box, BoxesMadeOf, BoxToMake
from fronts.rules.items import Hardware, SlideItem
from fronts.rules.kinds import CabinetBuild, SlideKind
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.practice import POUND
from tests.rules.finding_cases import Case, boxed, one
from tests.rules.small_kitchens import BOX, cabinet, inch, inches, kitchen, opening

A = ("B1.a",)
SIDE = SlideItem("S-1", "side", inches("12", "16", "20"), 100 * POUND)
UNDER = SlideItem("U-1", "under", inches("12", "15", "18", "21"), 100 * POUND)
BOTTOM = SlideItem("C-1", "bottom", inches("14", "18"), 50 * POUND, height=inch("1/2"))
SLIDES = (SIDE, UNDER, BOTTOM)


def with_slides(of: Kitchen, *slides: SlideItem, **changes: Any) -> Kitchen:
    """The kitchen of a shop with these slides on its list, changed."""
    return replace(of, hardware=Hardware(slides=slides or SLIDES), **changes)


def to_make(
    slide: SlideKind | None = None, *, made_of: BoxesMadeOf | None = None, **said: Any
) -> Kitchen:
    """A pull-out 15 × 27 1/2 in in an opening, its box to be made."""
    load, shelves = said.pop("load_kg", None), said.pop("shelves", 0)
    plain = opening(said.pop("closed_by", "pull-out"), **said)
    wanted = replace(plain.fronts[0], box_to_make=BoxToMake(slide, shelves, load))
    of = one(replace(plain, fronts=(wanted,)))
    return with_slides(of, boxes_made_of=made_of or BoxesMadeOf())


def _found(box: Box, closed_by: str = "pull-out", **opening_is: Mm) -> Kitchen:
    return with_slides(one(opening(closed_by, boxes=(box,), **opening_is)))  # type: ignore[arg-type]


def _side(width: str, clearance: str | None = None) -> Kitchen:
    box = replace(BOX, slide="side", width=inch(width))
    return _found(replace(box, side_clearance=None if clearance is None else inch(clearance)))


def _under(**sizes: str) -> Kitchen:
    """14 7/8 in wide: 15 in - 42 mm + 1 1/2 in is 14.846 in."""
    box = replace(BOX, slide="under", width=inch("14.84"))
    return _found(replace(box, **{name: inch(size) for name, size in sizes.items()}))  # type: ignore[arg-type]


def _bottom(rise: str) -> Kitchen:
    box = replace(BOX, slide="bottom", width=inch("14 5/8"), slide_width=inch("1 3/4"))
    return _found(replace(box, slide_height=inch("1/2"), rise=inch(rise)))


def _deep(depth: str) -> Kitchen:
    of = opening("pull-out", boxes=(replace(BOX, depth=None),))
    return kitchen(cabinet(of, depth=inch(depth)))


def _loaded(pounds: int) -> Kitchen:
    box = replace(BOX, load_kg=pounds * POUND, slide="side")
    return with_slides(one(opening("pull-out", boxes=(box,))))


def _stacked(rise: str, *, height: str = "8") -> Kitchen:
    lower = replace(BOX, height=inch(height))
    of = opening("drawers", count=2, boxes=(replace(lower, rise=inch(rise)), lower))
    return one(of)


def _framed(build: CabinetBuild, slide: SlideKind) -> Kitchen:
    box = replace(BOX, slide=slide)
    return with_slides(kitchen(cabinet(opening("pull-out", boxes=(box,)), build=build)))


CASES = [
    Case("no box measured", "box-missing", "check", A, one(opening("pull-out")), boxed()),
    Case("boxes typed over each other", "boxes-overlap", "stop", ("B1.a.1", "B1.a.2"),
         _stacked("8 7/16"), _stacked("8 1/2")),
    Case("a box of unknown slides wider than its opening", "box-does-not-fit", "stop", A,
         boxed(width=inch("15 1/16")), boxed(width=inch("15"))),
    Case("a box off to the right", "box-does-not-fit", "stop", A,
         boxed(side_clearance=inch("1 1/16")), boxed(side_clearance=inch("1"))),
    Case("a hair wider than 1/2 in less a side", "box-does-not-run", "stop", A,
         _side("14 1/128"), _side("14")),
    Case("a hair narrower than 1/16 in less", "box-does-not-run", "stop", A,
         _side("13 119/128"), _side("13 15/16")),
    Case("off to one side by more than half the tolerance", "box-does-not-run", "stop", A,
         _side("14", "7/16"), _side("13 31/32", "1/2")),
    Case("a hair more than 15 in - 42 mm + 1 1/2 in", "box-does-not-run", "stop", A,
         _under(width="377.11 mm"), _under(width="377.1 mm")),
    Case("a bottom slide in a wide gap wobbles", "box-does-not-run", "check", A,
         replace(_bottom("1/2"), cabinets=(cabinet(opening("pull-out", boxes=(
             replace(BOX, slide="bottom", width=inch("14 1/2")),))),)), _bottom("1/2")),
    Case("under slides of which none is as long", "slide-not-the-boxs-length", "stop", A,
         _under(depth="20"), _under(depth="21")),
    Case("a bottom slide of 1/2 in with 3/8 in below", "bottom-slide-too-high", "stop", A,
         _bottom("3/8"), _bottom("1/2")),
    Case("a box as high as its opening", "box-cannot-come-out", "stop", A,
         boxed(height=inch("26 29/32")), boxed(height=inch("26 7/8"))),
    Case("a box on its opening's edge", "box-cannot-come-out", "stop", A,
         boxed(rise=inch("3/32")), boxed(rise=inch("1/8"))),
    Case("an upper box behind the lower front", "box-cannot-come-out", "stop", ("B1.a.1",),
         _stacked("13 5/8"), _stacked("13 11/16")),
    Case("24 in of box in a 24 in cabinet", "box-too-long", "stop", A,
         boxed(depth=inch("24")), boxed(depth=inch("23 3/4"))),
    Case("no slide under 12 in", "no-slide-fits", "stop", A, _deep("12 11/16"), _deep("12 3/4")),
    Case("no slide of the list carries it", "no-slide-fits", "stop", A,
         _loaded(57), _loaded(56)),
    Case("a made box that no slide carries", "no-slide-fits", "stop", A,
         to_make("side", load_kg=61 * POUND), to_make("side", load_kg=60 * POUND)),
    Case("sides too thick for the slide", "no-slide-fits", "stop", A,
         with_slides(to_make("under", made_of=BoxesMadeOf(side=inch("3/4"))),
                     replace(UNDER, most_side=inch("5/8")),
                     boxes_made_of=BoxesMadeOf(side=inch("3/4"))),
         with_slides(to_make("under", made_of=BoxesMadeOf(side=inch("5/8"))),
                     replace(UNDER, most_side=inch("5/8")),
                     boxes_made_of=BoxesMadeOf(side=inch("5/8")))),
    Case("a box to be made in 2 15/16 in", "no-room-for-box", "stop", A,
         to_make(closed_by="drawer", height=inch("2 15/16")),
         to_make(closed_by="drawer", height=inch("3"))),
    Case("1 15/16 in between a made box's sides", "no-room-for-box", "stop", A,
         to_make("side", width=inch("3 15/16")), to_make("side", width=inch("4"))),
    Case("side slides behind a stile", "stile-wants-blocking", "note", A,
         _framed("face-frame", "side"), _framed("face-frame", "bottom")),
    Case("a frameless cabinet has no stile", "stile-wants-blocking", "note", A,
         _framed("face-frame", "side"), _framed("frameless", "side")),
    Case("over 2 1/2 times as high as wide", "box-wants-guide", "note", A,
         boxed(width=inch("9 1/2")), boxed(width=inch("9 5/8"))),
]  # fmt: skip
