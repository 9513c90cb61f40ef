"""The numbers that a shop working in millimetres starts from: round ones, not converted inches.

All are common practice without a source, but for the reach, which the 2010 ADA Standards, 308,
give in both (48 in, 1220 mm). What stands nowhere here is metric everywhere, such as a cup of
35 mm, or says so itself where it is worked with (`member_width`, `tapering`).
"""

from collections.abc import Mapping
from fractions import Fraction
from types import MappingProxyType

from fronts.rules.job_facts import Stock
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Sides, Standard

HALF = Fraction(1, 2)

METRIC_STANDARD = Standard(
    gap_between=Mm(3),
    least_gap=1 + HALF,
    inset_gap=Sides(Mm(2), Mm(2), Mm(2), Mm(2)),
    front_thickness=Mm(19),
    trim_limit=Mm(25),
    least_stile=Mm(45),
    skin=Mm(3),
    bite=Mm(10),
    hinge_end=Mm(100),
)

METRIC_STOCK = Stock(
    screw_lengths=tuple(Mm(length) for length in (20, 25, 30, 35, 40)),
    knob_screw_lengths=tuple(Mm(length) for length in (25, 30, 35, 40, 45)),
    knob_thread="M4",
    knob_thread_depth=Mm(12),
    slide_lengths=tuple(Mm(length) for length in (300, 350, 400, 450, 500, 550, 600)),
)

METRIC_NUMBERS: Mapping[str, Mm] = MappingProxyType(
    {
        "hole_diameter": Mm(6),
        "screw_diameter": Mm(4),
        "hole_inset": Mm(40),
        "hole_to_edge": Mm(10),
        "hole_clear": Mm(5),
        "hole_apart": Mm(20),
        "head_half": Mm(6),
        "head_clear": Mm(3),
        "pilot_short": Mm(3),
        "hole_move": Mm(1),
        "ledge_thickness": Mm(6),
        "ledge_length": Mm(60),
        "slot_wider": Mm(3),
        "slot_deeper": 1 + HALF,
        "bottom_shim_length": Mm(300),
        "tape_width": Mm(25),
        "tape_thickness": Mm(3),
        "drill_past": 1 + HALF,
        "recess_width": Mm(12),
        "recess_depth": Mm(6),
        "recess_wall": Mm(3),
        "knob_hole": Mm(5),
        "knob_from_end": Mm(75),
        "knob_from_side": Mm(30),
        "easy_reach": Mm(1220),
        "knob_height": Mm(1000),
        "knob_panel": Mm(12),
        "knobs_line": Mm(25),
        "wide_drawer": Mm(600),
        "lines_seen": Mm(6),
        "near_plane": Mm(75),
        "filler": Mm(75),
        "asked_off_plan": Mm(12),
        "asked_off_pair": Mm(6),
        "measuring_error": HALF,
        "cutting_error": HALF,
        "setting_error": HALF,
        "box_clear": Mm(3),
        "guide_over": Mm(1200),
        "handle_projection": Mm(25),
        "passing_clear": Mm(6),
        "corner_filler": Mm(75),
        "rear_clearance": Mm(12),
        "stile": Mm(60),
        "rail": Mm(60),
        "tongue": Mm(10),
        "panel_clearance": 1 + HALF,
        "panel_thickness": Mm(6),
        "narrow_rail": Mm(40),
        "least_panel": Mm(25),
        "glass_thickness": Mm(3),
        "glass_rabbet": Mm(10),
        "glass_play": 1 + HALF,
        "middle_rail_over": Mm(1500),
        "offcut_narrow": Mm(100),
        "offcut_long": Mm(300),
        "offcut_stick": Mm(450),
        "tray_depth": Mm(65),
        "tray_side": Mm(25),
        "fixed_behind": Mm(18),
        "hinge_half": Mm(25),
        "hinge_overlay_most": Mm(38),
        "hinge_inset_most": Mm(6),
    }
)
"""By their names in `Practice`."""

METRIC_HINGES_BY_HEIGHT = ((Mm(1000), 2), (Mm(1500), 3), (Mm(2000), 4), (Mm(2500), 5))
METRIC_HINGES_BY_WEIGHT = (
    (Fraction(6), 2), (Fraction(13), 3), (Fraction(20), 4), (Fraction(27), 5),
)  # fmt: skip
"""Whole kilograms, none above the 15, 30, 45 and 60 lb of an inch shop."""
METRIC_SLIDE_CLASSES = tuple(Fraction(load) for load in (20, 30, 45, 65, 90))
"""Whole kilograms, none above the classes of an inch shop."""
