"""What the shop's numbers are called on their pages, where a symbol would puzzle."""

from shopjobs.words import capitalized

_LABELS = {
    "screw_diameter": "Diameter of a mounting screw",
    "hole_diameter": "Mounting hole in the box, diameter",
    "slot_wider": "Jig slot is wider than the slide by",
    "slot_deeper": "Jig slot is deeper than the slide by",
    "jig_play": "Jigs become one within this share of the holes’ play, %",
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


def number_label(name: str, says: str, unit: str) -> str:
    """What a number is called on its page."""
    words = _LABELS.get(name, capitalized(says))
    return words.format(**_UNITS[unit])


def number_unit(name: str, says: str, unit: str) -> str:
    """What stands after a number that is no length: `%`, `°F` …"""
    for brace, words in _UNITS[unit].items():
        if f"{{{brace}}}" in _LABELS.get(name, ""):
            return words
    return "%" if "%" in _LABELS.get(name, says) else ""


def sourced(source: str) -> str:
    """Where the usual number is from, as a sentence."""
    words = {"practice": "Common practice.", "practice, memory": "Common practice, from memory."}
    return words.get(source, f"{source}.")
