"""How the shop's numbers are grouped on their page, and named where a symbol would puzzle."""

from collections.abc import Iterable, Iterator

from fronts.pages.shared.kitchen_form import Group
from shopjobs.words import capitalized

_GROUPS: dict[str, tuple[str, ...]] = {
    "Holes and screws": (
        "hole_diameter", "screw_diameter", "hole_inset", "hole_to_edge", "hole_clear",
        "hole_move", "head_half", "head_clear", "hole_apart", "pilot_softwood", "pilot_hardwood",
        "pilot_short", "drill_past", "recess_width", "recess_depth", "recess_wall",
    ),
    "Jigs, shims and foam tape": (
        "ledge_thickness", "ledge_length", "slot_wider", "slot_deeper", "bottom_shim_length",
        "tape_width", "tape_thickness",
    ),
    "Knobs and pulls": (
        "knob_hole", "knob_from_end", "knob_from_side", "easy_reach", "knob_height", "knob_panel",
        "knobs_line", "wide_drawer", "handle_projection",
    ),
    "Hinges": (
        "cup_diameter", "cup_from_edge", "hinge_half", "hinge_overlay_most", "hinge_inset_most",
        "hinge_adjust_side", "hinge_adjust_height",
    ),
    "Five-piece fronts": (
        "stile", "rail", "tongue", "panel_clearance", "panel_thickness", "solid_panels",
        "middle_rail_over", "narrow_rail", "least_panel",
    ),
    "Glass": ("glass_thickness", "glass_rabbet", "glass_play"),
    "Drawer boxes and slides": (
        "box_clear", "guide_over", "guide_times", "rear_clearance", "drawer_load", "load_margin",
    ),
    "Fixed fronts and tip-outs": (
        "fixed_screws", "fixed_behind", "tray_depth", "tray_side",
    ),
    "What stands side by side": (
        "lines_seen", "near_plane", "filler", "passing_clear", "corner_filler",
    ),
    "Measuring on site": ("asked_off_plan", "asked_off_pair"),
    "The site and the wood": ("humidity_low", "humidity_high", "site_celsius", "made_at"),
    "The order": ("bumpers", "hinge_screws", "slide_screws", "spares"),
}  # fmt: skip
_LABELS = {
    "screw_diameter": "Diameter of a mounting screw",
    "hole_diameter": "Mounting hole in the box, diameter",
    "slot_wider": "Jig slot is wider than the slide by",
    "slot_deeper": "Jig slot is deeper than the slide by",
    "rear_clearance": "Kept free behind a slide",
    "wide_drawer": "Drawer front from this width takes two knobs",
    "asked_off_plan": "A size that is off the plan by more than this is asked about",
    "asked_off_pair": "… or off the other of its pair, top and bottom, left and right",
    "lines_seen": "A line that misses by less than this shows",
    "near_plane": "Faces nearer than this in depth count as one plane",
    "filler": "Widest space between cabinets of one run",
    "tongue": "Length of a tongue, and depth of its groove",
    "panel_thickness": "Thickness of the panel",
    "solid_panels": "The panel is of",
    "cup_diameter": "Hinge cup, diameter",
    "humidity_low": "Relative humidity in the driest month, %",
    "humidity_high": "Relative humidity in the dampest month, %",
    "site_celsius": "Room temperature, {degrees}",
    "made_at": "Moisture content of the wood when made, %",
    "drawer_load": "Load of a drawer on its floor, {load}",
    "bumpers": "Bumpers on a door or a drawer front",
    "hinge_screws": "Screws for a hinge with its plate",
    "slide_screws": "Screws for a pair of slides",
    "spares": "Spares on an order, %",
}
_UNITS = {
    "in": {"degrees": "°F", "load": "lb/ft²"},
    "mm": {"degrees": "°C", "load": "kg/m²"},
}


def number_groups(names: Iterable[str]) -> Iterator[Group]:
    """The numbers under their headings; what is under none comes last."""
    grouped = {name for fields in _GROUPS.values() for name in fields}
    for legend, fields in _GROUPS.items():
        yield Group(legend, fields, kind="cells numbers")
    rest = tuple(name for name in names if name not in grouped)
    if rest:
        yield Group("Other numbers", rest, kind="cells numbers")


def number_label(name: str, says: str, unit: str) -> str:
    """What a number is called on its page."""
    words = _LABELS.get(name, capitalized(says))
    return words.format(**_UNITS[unit])
