"""The things that a shop buys, as its list says them: what the rules need to know of each.

The order of a list is the shop's order of preference. Lengths in mm; what an item leaves out
is as `usual_hinges` or `slide_needs` has it. How the parts of a hinge add up:

    overlay = fixed distance + B - plate     B: from the door's edge to the cup's rim
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import Annotated

from fronts.rules import limits
from fronts.rules.fact_kinds import (
    Count,
    Group,
    Label,
    Length,
    Lengths,
    Number,
    Rows,
    Text,
    Thread,
    Word,
)
from fronts.rules.item_kinds import HANDLE_WAYS, HINGE_FRAMES, HandleWay, HingeFrame
from fronts.rules.kinds import MOUNTS, SLIDES, Mount, SlideKind, words_of
from fronts.rules.lengths import Mm

CUP = Mm(35)
CUP_DEEP = Mm(13)
SWINGS = Fraction(110)
SHARE = (Fraction(0), Fraction(200))


@dataclass(frozen=True, slots=True)
class Span:
    """From `least` to `most`, both included."""

    least: Annotated[Mm, Length("least", zero=True, small=True)]
    most: Annotated[Mm, Length("most", zero=True, small=True)]

    def __contains__(self, length: Mm) -> bool:
        return self.least <= length <= self.most

    def nearest(self, wanted: Mm) -> Mm:
        """The length within it that is nearest to the one wanted."""
        return min(max(wanted, self.least), self.most)


@dataclass(frozen=True, slots=True)
class Adjustment:
    """How far a hinge's screws move its door, each way."""

    side: Annotated[Mm | None, Length("to the side", zero=True, small=True)] = None
    height: Annotated[Mm | None, Length("in height", zero=True, small=True)] = None
    depth: Annotated[Mm | None, Length("in depth", zero=True, small=True)] = None


NO_ADJUSTMENT = Adjustment()


@dataclass(frozen=True, slots=True)
class HingeItem:
    """A hinge: the overlays (inset: gaps) that it makes, or its fixed distance, plates and B."""

    code: Annotated[str, Label("code", example="H-1")]
    mount: Annotated[Mount, Word("for fronts that are", words_of(MOUNTS))]
    name: Annotated[str, Text("name", limits.LONGEST_ITEM_NAME)] = ""
    frame: Annotated[HingeFrame, Word("for", HINGE_FRAMES)] = "either"
    overlays: Annotated[
        tuple[Mm, ...], Lengths("overlays that it makes", limits.MOST_LENGTHS, zero=True)
    ] = ()
    overlay_span: Annotated[Span | None, Group("overlays from, to", "overlay_")] = None
    gaps: Annotated[
        tuple[Mm, ...], Lengths("inset gaps that it serves", limits.MOST_LENGTHS, zero=True)
    ] = ()
    gap_span: Annotated[Span | None, Group("inset gaps from, to", "gap_")] = None
    fixed_distance: Annotated[
        Mm | None, Length("fixed distance at plate 0", zero=True, signed=True, small=True)
    ] = None
    plates: Annotated[tuple[Mm, ...], Lengths("plate heights", limits.MOST_LENGTHS, zero=True)] = ()
    bore: Annotated[Span | None, Group("B, door's edge to the cup's rim", "bore_")] = None
    usual_bore: Annotated[Mm | None, Length("usual B", zero=True, small=True)] = None
    cup_diameter: Annotated[Mm, Length("cup, diameter", small=True)] = CUP
    cup_depth: Annotated[Mm, Length("cup, depth", small=True)] = CUP_DEEP
    angle: Annotated[Fraction, Number("opens to", "°", Fraction(1), Fraction(270))] = SWINGS
    adjust: Annotated[Adjustment, Group("adjusts", "adjust_")] = NO_ADJUSTMENT
    turn: Annotated[Mm | None, Length("one turn of a screw moves it", small=True)] = None
    screws: Annotated[int | None, Count("screws that it takes", 0, 50)] = None
    most_door_thickness: Annotated[Mm | None, Length("thickest door", small=True)] = None


@dataclass(frozen=True, slots=True)
class SlideItem:
    """A slide, or a pair of them: lengths, load class, and what it asks of the box."""

    code: Annotated[str, Label("code", example="S-1")]
    kind: Annotated[SlideKind, Word("kind", words_of(SLIDES))]
    lengths: Annotated[tuple[Mm, ...], Lengths("lengths", limits.MOST_LENGTHS)]
    load_kg: Annotated[Fraction, Number("load class", "kg", limits.LEAST_KG, limits.MOST_KG)]
    name: Annotated[str, Text("name", limits.LONGEST_ITEM_NAME)] = ""
    clearance: Annotated[Mm | None, Length("clearance a side", zero=True, small=True)] = None
    inside_clearance: Annotated[
        Mm | None, Length("opening less the box's inside width", zero=True, small=True)
    ] = None
    tolerance: Annotated[Mm | None, Length("tolerance in all", zero=True, small=True)] = None
    below: Annotated[Mm | None, Length("room below the box", zero=True, small=True)] = None
    above: Annotated[Mm | None, Length("room above the box", zero=True, small=True)] = None
    width: Annotated[Mm | None, Length("width of the slide", small=True)] = None
    height: Annotated[Mm | None, Length("height of the slide", small=True)] = None
    recess: Annotated[
        Mm | None, Length("sides' lower edge to the bottom panel", zero=True, small=True)
    ] = None
    most_side: Annotated[Mm | None, Length("thickest side of a box", small=True)] = None


@dataclass(frozen=True, slots=True)
class HandleItem:
    """A knob (without `centres`, one screw) or a pull (two screws, so far apart)."""

    code: Annotated[str, Label("code", example="K-1")]
    name: Annotated[str, Text("name", limits.LONGEST_ITEM_NAME)] = ""
    centres: Annotated[Mm | None, Length("hole centres of a pull", small=True)] = None
    thread: Annotated[str | None, Thread("thread")] = None
    projection: Annotated[Mm | None, Length("stands out from the front", small=True)] = None
    door: Annotated[HandleWay, Word("on a door", HANDLE_WAYS)] = "upright"
    drawer: Annotated[HandleWay, Word("on a drawer front", HANDLE_WAYS)] = "across"


@dataclass(frozen=True, slots=True)
class LiftItem:
    """A stay or lift: weight × height of the fronts that it serves, in kg·m.

    `rise` None: a front may stand all its height above its top edge.
    """

    code: Annotated[str, Label("code", example="L-1")]
    least: Annotated[Fraction, Number("least", "kg·m", Fraction(0), Fraction(1000))]
    most: Annotated[Fraction, Number("most", "kg·m", Fraction(0), Fraction(1000))]
    name: Annotated[str, Text("name", limits.LONGEST_ITEM_NAME)] = ""
    rise: Annotated[
        Fraction | None,
        Number("an open front stands above its top edge by", "% of its height", *SHARE),
    ] = None


NO_BAND, PLAIN_BAND = "none", "plain"
BY_RULE = "by rule"
"""In place of a hinge's or handle's code: as if nobody named one, whatever a farther level says."""
EDGE_WORDS = {NO_BAND: "No band", PLAIN_BAND: "Plain, where the core shows"}
"""What may stand in place of a band's code, and what people call it."""


@dataclass(frozen=True, slots=True)
class BandItem:
    """A band for the edges of slab fronts: a front is cut smaller by its thickness."""

    code: Annotated[str, Label("code", example="E-1")]
    thickness: Annotated[Mm, Length("thickness", small=True)]
    name: Annotated[str, Text("name", limits.LONGEST_ITEM_NAME)] = ""
    width: Annotated[Mm | None, Length("width", small=True)] = None


@dataclass(frozen=True, slots=True)
class Hardware:
    """A shop's list, each kind in its order of preference; an empty kind is left to the usual."""

    hinges: Annotated[tuple[HingeItem, ...], Rows("hinges", limits.MOST_ITEMS, "hinge")] = ()
    slides: Annotated[tuple[SlideItem, ...], Rows("slides", limits.MOST_ITEMS, "slide")] = ()
    handles: Annotated[
        tuple[HandleItem, ...], Rows("knobs and pulls", limits.MOST_ITEMS, "knob or pull")
    ] = ()
    lifts: Annotated[tuple[LiftItem, ...], Rows("lifts and stays", limits.MOST_ITEMS, "lift")] = ()
    bands: Annotated[tuple[BandItem, ...], Rows("edge bands", limits.MOST_ITEMS, "band")] = ()


NO_ITEMS = Hardware()
