"""Boxes to be made, worked out from a kitchen of one front; and random kitchens of some."""

from fractions import Fraction

from hypothesis import strategies as st

from fronts.rules.box_facts import BoxesMadeOf, BoxToMake
from fronts.rules.items import Hardware, SlideItem
from fronts.rules.job_facts import JobFacts
from fronts.rules.kinds import ClosedBy, Mount, Unit
from fronts.rules.kitchen import Cabinet, FrontFacts, Kitchen, Measured, Opening
from fronts.rules.lengths import INCH, Mm
from fronts.rules.results import Part
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from tests.strategies_of_shops import lengths


def parts_of_box(of: Kitchen) -> dict[str, Part]:
    """The pieces of the one box, by their names."""
    return {part.part: part for part in schedule(of).parts if part.part.startswith("box-")}


def outside(of: Kitchen) -> tuple[Mm, Mm, Mm | None, Mm]:
    """Width, height, depth and rise of the one box."""
    (box,) = schedule(of).boxes
    return box.width, box.height, box.depth, box.rise


@st.composite
def kitchens_of_boxes(draw: st.DrawFn) -> Kitchen:
    """A stack of drawers or a pull-out with boxes to be made, in either unit."""
    unit: Unit = draw(st.sampled_from(("in", "mm")))
    closed_by: ClosedBy = draw(st.sampled_from(("drawers", "pull-out")))
    width, height = draw(lengths(unit, 180, 900)), draw(lengths(unit, 200, 1400))
    box = BoxToMake(
        slide=draw(st.sampled_from((None, "side", "under", "bottom"))),
        shelves=draw(st.integers(0, 3)) if closed_by == "pull-out" else 0,
        load_kg=draw(st.none() | st.just(Fraction(5))),
    )
    count = draw(st.integers(1, 3)) if closed_by == "drawers" else 1
    of = Opening(
        label="a", x=Mm(40), y=Mm(40), width=width, height=height, closed_by=closed_by,
        fronts=(FrontFacts(box_to_make=box),) * count,
        measured=Measured(
            width_top=draw(st.none() | st.just(width - 2)),
            height_left=draw(st.none() | st.just(height - 3)),
        ),
    )  # fmt: skip
    side = Sides(*[draw(lengths(unit, 2, 12))] * 4)
    mount: Mount = draw(st.sampled_from(("overlay", "inset")))
    cabinet = Cabinet(
        "B1", "tall", "frameless", "North", Mm(0), Mm(0), width + 80, height + 80,
        draw(lengths(unit, 350, 650)), (of,),
    )  # fmt: skip
    some = tuple(Mm(length) for length in (250, 300, 350, 400, 450, 500, 550))
    return Kitchen(
        job=JobFacts("T-1", unit=unit, step=INCH / 16 if unit == "in" else Mm(1)),
        standard=Standard(mount=mount, overlay=side, inset_gap=side),
        cabinets=(cabinet,),
        hardware=Hardware(slides=tuple(
            SlideItem(f"{kind}-{carries}", kind, some, Fraction(carries),
                      height=Mm(13) if kind == "bottom" else None)
            for kind in ("under", "side", "bottom") for carries in (20, 45, 200)
        )),
        boxes_made_of=BoxesMadeOf(
            side=draw(st.none() | lengths(unit, 9, 19)),
            joint=draw(st.sampled_from(("butt", "rabbet", "dado", "through-dovetail"))),
            heights=draw(st.just(()) | st.just((Mm(75), Mm(100), Mm(150), Mm(250)))),
        ),
    )  # fmt: skip
