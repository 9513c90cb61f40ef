"""The shop's own numbers beside the house standard, each with its source.

A shop may change every one of them. "Practice" marks a fact of the trade with no
published source; "memory" a value recalled and not looked up.
"""

from dataclasses import dataclass, field, fields
from fractions import Fraction

from fronts.rules.lengths import INCH, Mm

POUND = Fraction(45359237, 100_000_000)
"""One pound in kilograms, exactly (international yard and pound agreement, 1959)."""


def inches(whole: int, over: int = 1) -> Mm:
    """So many inches, or so many parts of one."""
    return Fraction(whole, over) * INCH


def _number(
    value: Fraction,
    says: str,
    source: str,
    *,
    plain: tuple[int, int] | None = None,
    zero: bool = True,
) -> Fraction:
    """A length, or where `plain` gives its least and most a number as it reads.

    Without `zero` it can't be nothing: what is drilled or driven, the step of a search.
    """
    about = {"says": says, "source": source, "plain": plain, "zero": zero}
    return field(default=value, metadata=about)


@dataclass(frozen=True, slots=True)
class Practice:
    """How this shop works. Lengths in mm; percentages and counts as they read."""

    hole_diameter: Mm = _number(inches(1, 4), "mounting hole in the box", "practice", zero=False)
    screw_diameter: Mm = _number(
        Fraction(164, 1000) * INCH,
        "mounting screw, #8",
        "ASME B18.6.1: 0.060 + 0.013 × 8 in",
        zero=False,
    )
    hole_inset: Mm = _number(
        inches(3, 2), "mounting hole from the box's sides and ends", "practice"
    )
    hole_to_edge: Mm = _number(inches(3, 8), "mounting hole from the edge of its wood", "practice")
    hole_clear: Mm = _number(inches(3, 16), "wood left between two holes", "practice")
    hole_move: Mm = _number(
        inches(1, 16), "step by which a mounting hole is moved", "practice", zero=False
    )
    head_half: Mm = _number(inches(1, 4), "half a washer head", "practice")
    head_clear: Mm = _number(inches(1, 8), "washer head from the box's side", "practice")
    hole_apart: Mm = _number(inches(3, 4), "mounting holes apart, at least", "practice")
    pilot_softwood: Fraction = _number(
        Fraction(70),
        "pilot hole in softwood, % of the screw's root",
        "Wood Handbook, lead holes: about 70 %",
        plain=(1, 100),
    )
    pilot_hardwood: Fraction = _number(
        Fraction(90),
        "pilot hole in hardwood and boards, % of the screw's root",
        "Wood Handbook, lead holes: about 90 %; boards: practice",
        plain=(1, 100),
    )
    pilot_short: Mm = _number(inches(1, 8), "pilot hole ends before the screw's tip by", "practice")
    ledge_thickness: Mm = _number(inches(1, 4), "jig ledge, thickness", "practice")
    ledge_length: Mm = _number(inches(9, 4), "jig ledge, length", "practice")
    slot_wider: Mm = _number(inches(1, 8), "jig slot wider than the slide by", "practice")
    slot_deeper: Mm = _number(inches(1, 16), "jig slot deeper than the slide by", "practice")
    jig_play: Fraction = _number(
        Fraction(50),
        "share of its holes' play by which a merged jig may set a front off, %",
        "practice",
        plain=(0, 100),
    )
    bottom_shim_length: Mm = _number(inches(12), "bottom shim, length", "practice")
    tape_width: Mm = _number(inches(1), "foam tape, width", "practice")
    tape_thickness: Mm = _number(inches(1, 8), "foam tape, thickness", "practice")
    drill_past: Mm = _number(inches(1, 16), "drill stop past the box front, at most", "practice")
    recess_width: Mm = _number(inches(1, 2), "recess for a screw head, width", "practice")
    recess_depth: Mm = _number(inches(1, 4), "recess for a screw head, depth", "practice")
    recess_wall: Mm = _number(inches(1, 8), "box front left behind a recess", "practice")
    knob_hole: Mm = _number(inches(3, 16), "hole for a knob screw", "practice")
    knob_from_end: Mm = _number(inches(3), "knob from a door's end", "practice")
    knob_from_side: Mm = _number(inches(9, 8), "knob from a door's free edge", "practice")
    easy_reach: Mm = _number(
        inches(48), "easy reach from the floor", "2010 ADA Standards, 308: 48 in at most"
    )
    knob_height: Mm = _number(inches(40), "knob of a tall door above the floor", "practice")
    knob_panel: Mm = _number(
        inches(1, 2), "thinnest panel that a knob is screwed through", "practice"
    )
    knobs_line: Mm = _number(
        inches(1), "knobs that miss a line by less than this are seen", "practice"
    )
    wide_drawer: Mm = _number(inches(24), "drawer front that takes two knobs", "practice")
    lines_seen: Mm = _number(inches(1, 4), "lines that miss by less than this are seen", "practice")
    near_plane: Mm = _number(inches(3), "faces nearer than this in depth count as one", "practice")
    filler: Mm = _number(inches(3), "space between cabinets that is still one run", "practice")
    handle_projection: Mm = _number(
        inches(1), "knob or pull stands out from its front, where its item does not say", "practice"
    )
    passing_clear: Mm = _number(
        inches(1, 4), "a front passes what stands out beside it with", "practice"
    )
    corner_filler: Mm = _number(inches(3), "filler at each side of an inside corner", "practice")
    asked_off_plan: Mm = _number(
        inches(1, 2), "measured size asked about where it is off the plan by more than", "practice"
    )
    asked_off_pair: Mm = _number(
        inches(1, 4), "measured size asked about where it is off its pair by more than", "practice"
    )
    measuring_error: Mm = _number(
        inches(1, 64), "a size that is measured is off by, at most", "practice"
    )
    cutting_error: Mm = _number(inches(1, 64), "what is cut is off by, at most", "practice")
    setting_error: Mm = _number(
        inches(1, 64), "a front is set off its place by, at most", "practice"
    )
    box_clear: Mm = _number(
        inches(1, 8), "between a box and its opening, below and above", "practice"
    )
    guide_over: Mm = _number(
        inches(48), "pull-out box higher than this: a guide at its top", "practice"
    )
    guide_times: Fraction = _number(
        Fraction(5, 2), "… or so many times as high as wide", "practice", plain=(1, 100)
    )
    rear_clearance: Mm = _number(inches(1, 2), "behind a slide", "practice")
    stile: Mm = _number(inches(9, 4), "stile width of a five-piece front", "practice")
    rail: Mm = _number(inches(9, 4), "rail width of a five-piece front", "practice")
    tongue: Mm = _number(inches(3, 8), "tongue, and depth of its groove", "practice")
    panel_clearance: Mm = _number(inches(1, 16), "panel clearance a side", "practice")
    panel_thickness: Mm = _number(inches(1, 4), "panel of a five-piece front", "practice")
    solid_panels: Fraction = _number(
        Fraction(0),
        "panels of solid wood (1) or of plywood (0)",
        "practice",
        plain=(0, 1),
    )
    narrow_rail: Mm = _number(inches(3, 2), "narrow rail of a low drawer front", "practice")
    least_panel: Mm = _number(inches(1), "least height of a panel that shows", "practice")
    glass_thickness: Mm = _number(inches(1, 8), "glass in a door", "practice", zero=False)
    glass_rabbet: Mm = _number(inches(3, 8), "rabbet for glass, width", "practice")
    glass_play: Mm = _number(inches(1, 16), "glass short of its rabbet, a side", "practice")
    middle_rail_over: Mm = _number(
        inches(60),
        "door height over which a middle rail is wanted",
        "Architectural Woodwork Standards, 1st ed. 2009, stile-and-rail doors",
    )
    cup_diameter: Mm = _number(Fraction(35), "hinge cup", "practice, memory", zero=False)
    cup_from_edge: Mm = _number(
        Fraction(45, 2), "hinge cup's centre from the door's edge", "practice, memory"
    )
    hinge_half: Mm = _number(inches(1), "half a hinge plate, kept clear of rails", "practice")
    hinge_overlay_most: Mm = _number(
        inches(3, 2), "greatest overlay the shop's hinges make", "practice, memory"
    )
    hinge_inset_most: Mm = _number(
        inches(1, 4), "greatest inset gap the shop's hinges make", "practice, memory"
    )
    hinge_adjust_side: Mm = _number(
        Fraction(2), "a hinge moves its door sideways by, each way", "practice"
    )
    hinge_adjust_height: Mm = _number(
        Fraction(2), "a hinge moves its door up and down by, each way", "practice"
    )
    humidity_low: Fraction = _number(
        Fraction(30), "driest month on site, % RH", "practice", plain=(0, 100)
    )
    humidity_high: Fraction = _number(
        Fraction(55), "dampest month on site, % RH", "practice", plain=(0, 100)
    )
    site_celsius: Fraction = _number(
        Fraction(21), "room temperature on site, °C", "practice", plain=(-20, 60)
    )
    made_at: Fraction = _number(
        Fraction(7),
        "moisture content when made, %",
        "Wood Handbook: 6–8 % for cabinet hardwood",
        plain=(0, 30),
    )
    drawer_load: Fraction = _number(
        15 * POUND / inches(12) ** 2,
        "load of a drawer, kg a mm² of its floor",
        "ANSI/KCMA A161.1: 15 lb/ft²",
        plain=(0, 1),
    )
    load_margin: Fraction = _number(
        Fraction(125),
        "class of slides, % of load, box and front, at least",
        "practice",
        plain=(100, 1000),
    )
    offcut_narrow: Mm = _number(
        inches(4), "an offcut that is kept is as wide as this, at least", "practice"
    )
    offcut_long: Mm = _number(inches(12), "… and as long as this", "practice")
    offcut_stick: Mm = _number(
        inches(18), "what is kept of a stick is as long as this, at least", "practice"
    )
    tray_depth: Mm = _number(inches(5, 2), "tip-out tray, depth with its hinges", "practice")
    tray_side: Mm = _number(inches(1), "tip-out tray shorter than its opening, a side", "practice")
    fixed_screws: Fraction = _number(
        Fraction(4), "screws of a fixed front", "practice", plain=(0, 50)
    )
    fixed_behind: Mm = _number(
        inches(3, 4), "wood through which a fixed front is screwed", "practice", zero=False
    )
    bumpers: Fraction = _number(
        Fraction(2), "bumpers a door or drawer front", "practice", plain=(0, 50)
    )
    hinge_screws: Fraction = _number(
        Fraction(4), "screws a hinge, with its plate", "practice", plain=(0, 50)
    )
    slide_screws: Fraction = _number(
        Fraction(8), "screws a pair of slides", "practice", plain=(0, 50)
    )
    spares: Fraction = _number(Fraction(5), "spares on an order, %", "practice", plain=(0, 100))

    hinges_by_height: tuple[tuple[Mm, int], ...] = (
        (inches(40), 2), (inches(60), 3), (inches(80), 4), (inches(100), 5),
    )  # fmt: skip
    """Door height up to, and hinges (practice, memory)."""
    hinges_by_weight: tuple[tuple[Fraction, int], ...] = (
        (15 * POUND, 2), (30 * POUND, 3), (45 * POUND, 4), (60 * POUND, 5),
    )  # fmt: skip
    """Door weight up to, in kg, and hinges (practice, memory)."""
    slide_classes: tuple[Fraction, ...] = tuple(
        pounds * POUND for pounds in (50, 75, 100, 150, 200)
    )
    """Load classes of slides in kg; 50, 75, 100 lb: Architectural Woodwork Standards, 1st ed.,
    slide guide; 150 and 200 lb: practice, memory."""
    material: str = "MDF"
    """What a slab is made of where nobody says."""
    frame_material: str = "hard maple"
    """What a five-piece front's frame is made of where nobody says."""


PRACTICE = Practice()
NUMBERS = tuple(each for each in fields(Practice) if "says" in each.metadata)
"""The single numbers that a shop can change, in their order."""
NUMBER_NAMES = tuple(number.name for number in NUMBERS)
TABLES = tuple(each.name for each in fields(Practice) if "says" not in each.metadata)
"""The names of what is no single number, in their order."""
PLAIN: dict[str, tuple[Fraction, Fraction]] = {
    number.name: (Fraction(number.metadata["plain"][0]), Fraction(number.metadata["plain"][1]))
    for number in NUMBERS
    if number.metadata["plain"] is not None
}
"""The numbers that are no lengths, with the range that each makes sense in."""
POSITIVE = frozenset(number.name for number in NUMBERS if not number.metadata["zero"])
"""Lengths that can't be nothing."""
