"""The short pages of the shop's standard: what each is about, its fields, its drawing."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from fronts.drawings.standard.bought import bought_drawing
from fronts.drawings.standard.boxes import boxes_drawing
from fronts.drawings.standard.errors import errors_drawing
from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.five_piece import five_piece_drawing
from fronts.drawings.standard.fixed import fixed_drawing
from fronts.drawings.standard.gaps import gaps_drawing
from fronts.drawings.standard.hinges import hinges_drawing
from fronts.drawings.standard.jigs import jigs_drawing
from fronts.drawings.standard.knobs import knobs_drawing
from fronts.drawings.standard.lap import lap_drawing
from fronts.drawings.standard.materials import materials_drawing
from fronts.drawings.standard.measuring import measuring_drawing
from fronts.drawings.standard.mounting_holes import mounting_holes_drawing
from fronts.drawings.standard.offcuts import offcuts_drawing
from fronts.drawings.standard.order import order_drawing
from fronts.drawings.standard.screws import screws_drawing
from fronts.drawings.standard.slabs import slabs_drawing
from fronts.drawings.standard.slides import slides_drawing
from fronts.drawings.standard.trimming import trimming_drawing
from fronts.drawings.standard.wall import wall_drawing
from fronts.pages.shared.kitchen_form import Group
from fronts.rules.kinds import SIDES


@dataclass(frozen=True, slots=True)
class ShortPage:
    """One page; `path` stands for it in addresses, `few` are the figures that
    matter most, each with its words; `overlay` stands for all its sides.
    """

    path: str
    title: str
    about: str
    groups: tuple[Group, ...]
    few: tuple[tuple[str, str], ...]
    draw: Callable[[Figures], str]

    @property
    def names(self) -> tuple[str, ...]:
        """Its fields, in their order."""
        return tuple(name for group in self.groups for name in group.fields)


def _group(legend: str, *fields: str, hint: str = "") -> Group:
    return Group(legend, fields, hint=hint, kind="cells numbers")


def _sides(legend: str, prefix: str, *before: str, hint: str = "") -> Group:
    fields = (*before, *(f"{prefix}_{side}" for side in SIDES))
    laps = prefix in ("overlay", "reveal")
    # A lap has nothing usual, so that its fields hold a size and no more.
    return Group(legend, fields, hint=hint, kind="cells" if laps else "cells numbers")


_BOTH = "Give the overlay or the reveal, not both."
_PAGES = (
    ShortPage(
        "lap", "How far fronts lap",
        "Whether fronts lap past their openings or lie in them, and by how much.",
        (
            _group("", "mount"),
            _sides("Overlay: how far a front laps past its opening", "overlay", hint=_BOTH),
            _sides(
                "Reveal: how much of a member stays in sight", "reveal", "reveal_between",
                hint="Between two openings of a cabinet, and at each outer side of it.",
            ),
        ),
        (("Fronts are", "mount"), ("Overlay", "overlay"), ("Reveal", "reveal")),
        lap_drawing,
    ),
    ShortPage(
        "gaps", "Gaps",
        "What stays open between two fronts, and round a front that lies in its opening.",
        (
            _group("", "gap_between", "least_gap"),
            _sides("Inset: gap inside the opening", "inset"),
        ),
        (("Between two fronts", "gap_between"), ("Least anywhere", "least_gap"),
         ("Inset gap", "inset")),
        gaps_drawing,
    ),
    ShortPage(
        "wall", "What stands side by side",
        "Along a wall: what counts as one run and one line, and what a front must pass.",
        (
            _group("Lines and runs", "lines_seen", "near_plane", "filler"),
            _group("Opening past something", "passing_clear", "corner_filler"),
        ),
        (("A miss that shows", "lines_seen"), ("Filler in a corner", "corner_filler")),
        wall_drawing,
    ),
    ShortPage(
        "measuring", "Measuring on site",
        "How far off a size may be measured before somebody is asked whether it is so.",
        (_group("", "asked_off_plan", "asked_off_pair"),),
        (("Off its plan", "asked_off_plan"), ("Off its pair", "asked_off_pair")),
        measuring_drawing,
    ),
    ShortPage(
        "errors", "How close you work",
        "How far off what you measure, cut and set may be. Before anything is cut, each front is "
        "held against it: can it be moved far enough to hang true?",
        (_group("At most, either way", "measuring_error", "cutting_error", "setting_error",
                hint="A figure that nearly every front keeps within."),),
        (("Measured", "measuring_error"), ("Cut", "cutting_error"), ("Set", "setting_error")),
        errors_drawing,
    ),
    ShortPage(
        "hinges", "Hinges",
        "How many hinges a door gets, where they sit, and what yours can do.",
        (
            _group("How many", "hinges_by_height", "hinges_by_weight"),
            _group("Which hinge", "front_hinge"),
            _group("Where they sit", "hinge_end", "hinge_half", "cup_diameter", "cup_from_edge"),
            _group("What a hinge makes, where its item does not say", "hinge_overlay_most",
                   "hinge_inset_most", "hinge_adjust_side", "hinge_adjust_height"),
        ),
        (("Doors up to, and hinges", "hinges_by_height"), ("First from the end", "hinge_end")),
        hinges_drawing,
    ),
    ShortPage(
        "boxes", "Drawer boxes",
        "What drawer boxes are made of, how their corners are joined, and how high they come.",
        (
            _group("", "boxes_side", "boxes_bottom", "boxes_groove", "boxes_material"),
            _group("Corners", "boxes_joint", "boxes_joint_depth"),
            _group("Heights", "boxes_heights", "box_clear"),
        ),
        (("Sides", "boxes_side"), ("Bottom", "boxes_bottom"), ("Corners", "boxes_joint")),
        boxes_drawing,
    ),
    ShortPage(
        "slides", "Slides and loads",
        "How deep slides may be, what they must carry, and when a pull-out wants a guide.",
        (
            _group("Depth", "back", "rear_clearance"),
            _group("Load", "slide_classes", "drawer_load", "load_margin"),
            _group("Pull-outs", "guide_over", "guide_times"),
        ),
        (("Load on a floor", "drawer_load"), ("Load classes", "slide_classes")),
        slides_drawing,
    ),
    ShortPage(
        "mounting-holes", "Mounting holes in a box",
        "Where the holes go through which a front is screwed to its box.",
        (
            _group("The hole", "hole_diameter", "head_half"),
            _group("Where it goes", "hole_inset", "hole_to_edge", "head_clear", "hole_apart",
                   "hole_clear", "hole_move"),
        ),
        (("Hole", "hole_diameter"), ("From the box’s edges", "hole_inset")),
        mounting_holes_drawing,
    ),
    ShortPage(
        "screws", "Screws into a front",
        "How deep screws go, the pilot holes for them, and recesses for their heads.",
        (
            _group("Screw", "screw_diameter", "bite", "skin"),
            _group("Pilot hole", "pilot_softwood", "pilot_hardwood", "pilot_short", "drill_past"),
            _group("Recess for a knob screw's head", "recess_width", "recess_depth",
                   "recess_wall"),
        ),
        (("Screw", "screw_diameter"), ("Least bite", "bite"), ("Left before the tip", "skin")),
        screws_drawing,
    ),
    ShortPage(
        "jigs", "Jigs, shims and foam tape",
        "What the shop cuts to hold a front in its place while it is screwed on.",
        (
            _group("Jig", "ledge_thickness", "ledge_length", "slot_wider", "slot_deeper",
                   "jig_play"),
            _group("Shim", "bottom_shim_length"),
            _group("Foam tape", "tape_width", "tape_thickness"),
        ),
        (("Ledge", "ledge_length"), ("Shim", "bottom_shim_length"), ("Tape", "tape_thickness")),
        jigs_drawing,
    ),
    ShortPage(
        "knobs", "Knobs and pulls",
        "Where knobs and pulls go when nobody says otherwise.",
        (
            _group("Which knob or pull", "front_handle"),
            _group("On a door", "knob_from_end", "knob_from_side", "knob_height", "easy_reach"),
            _group("On a drawer front", "wide_drawer", "knobs_line"),
            _group("Screwed on", "knob_hole", "knob_panel", "handle_projection"),
        ),
        (("From a door’s end", "knob_from_end"), ("From its edge", "knob_from_side"),
         ("Two knobs from", "wide_drawer")),
        knobs_drawing,
    ),
    ShortPage(
        "trimming", "Doors on hand",
        "How much may be sawn off a door that exists, and what must be left of its stiles.",
        (_group("", "trim_limit", "least_stile"),),
        (("Most to trim", "trim_limit"), ("Least stile left", "least_stile")),
        trimming_drawing,
    ),
    ShortPage(
        "offcuts", "Offcuts",
        "How large a piece that a cutting plan leaves must be, so that it is offered to be kept.",
        (
            _group("Of a sheet", "offcut_narrow", "offcut_long"),
            _group("Of a stick", "offcut_stick"),
        ),
        (("Of a sheet, wide", "offcut_narrow"), ("Long", "offcut_long"),
         ("Of a stick", "offcut_stick")),
        offcuts_drawing,
    ),
    ShortPage(
        "materials", "Materials and the air",
        "What fronts are made of where nobody says, and the air that their wood lives in.",
        (
            _group("What fronts are made of", "front_build", "front_material", "material",
                   "frame_material", "front_thickness"),
            _group("The wood, and the air on site", "made_at", "humidity_low", "humidity_high",
                   "site_celsius"),
        ),
        (("Slab", "material"), ("Frame", "frame_material"), ("Thickness", "front_thickness")),
        materials_drawing,
    ),
    ShortPage(
        "five-piece", "Five-piece fronts and glass",
        "Frames, panels and glass of the fronts that you make.",
        (
            _group("Frame", "stile", "rail", "tongue", "middle_rail_over", "narrow_rail"),
            _group("Panel", "panel_thickness", "panel_clearance", "solid_panels", "least_panel"),
            _group("Glass", "glass_thickness", "glass_rabbet", "glass_play"),
        ),
        (("Stile", "stile"), ("Rail", "rail"), ("Panel", "panel_thickness")),
        five_piece_drawing,
    ),
    ShortPage(
        "edge-bands", "Edge bands of slab fronts",
        "Which edges of a slab are banded, and what is milled off them first.",
        (
            _sides(
                "Band on each edge", "band",
                hint="A front is cut smaller by the thickness of its bands. A plain one, "
                "on plywood and particleboard, is too thin to be reckoned with.",
            ),
            _sides("Milled off an edge before its band goes on", "premill",
                   hint="A front is cut larger by it."),
        ),
        (("Band", "band"), ("Milled off", "premill")),
        slabs_drawing,
    ),
    ShortPage(
        "bought", "Made here, or bought",
        "Whether a door maker makes your fronts, and what the maker is told.",
        (
            _group("", "made_by"),
            _group("In your own words; sizes, hands and bores follow", "door_style", "species",
                   "edge_profile", "panel_profile", "finish"),
        ),
        (("Fronts are", "made_by"), ("Door style", "door_style")),
        bought_drawing,
    ),
    ShortPage(
        "fixed", "Fixed fronts and tip-outs",
        "Fronts that are screwed fast from behind, and trays before a sink.",
        (
            _group("Fixed front", "fixed_screws", "fixed_behind"),
            _group("Tip-out tray", "tray_depth", "tray_side"),
        ),
        (("Screws", "fixed_screws"), ("Depth of a tray", "tray_depth")),
        fixed_drawing,
    ),
    ShortPage(
        "order", "What goes with an order",
        "Screws and bumpers counted with each part, and the spares on top.",
        (_group("", "bumpers", "hinge_screws", "slide_screws", "spares"),),
        (("Bumpers a front", "bumpers"), ("Spares", "spares")),
        order_drawing,
    ),
)  # fmt: skip
SHORT_PAGES: Mapping[str, ShortPage] = {page.path: page for page in _PAGES}


class ShortPageConverter:
    """A short page in an address, by its word."""

    regex = "|".join(SHORT_PAGES)

    def to_python(self, value: str) -> ShortPage:
        """The page whose word stands in the address."""
        return SHORT_PAGES[value]

    def to_url(self, value: ShortPage | str) -> str:
        """The word of a page."""
        return value if isinstance(value, str) else value.path
