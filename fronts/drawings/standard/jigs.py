"""Jigs, shims and foam tape: what holds a front while it is screwed on."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px

_END: Px = 350_00


def jigs_drawing(figures: Figures) -> str:
    """A jig from its side and from the front, a shim, a strip of tape."""
    plate = Plate(figures)
    _from_the_side(plate)
    _slot(plate)
    _shim_and_tape(plate)
    return plate.svg("A jig, a shim and foam tape")


def _from_the_side(plate: Plate) -> None:
    thick, length = plate.size("ledge_thickness", 18_00), plate.size("ledge_length", 80_00)
    start, under = 50_00, 80_00
    plate.rect("front", start + 30_00, 40_00, start + 30_00 + 60_00, under)
    plate.rect("front", start, under, start + length, under + thick)
    plate.rect("hidden", start + 6_00, 12_00, start + 30_00, under)
    plate.note(start + 3_00, 26_00, "front", "end")
    plate.upright("ledge_thickness", under, under + thick, 20_00, "ledge", base=start)
    plate.points("jig_play", 130_00, 146_00, "jigs are one within {} of the play")
    plate.across("ledge_length", start, start + length, under + thick + 16_00, "ledge",
                 base=under + thick)  # fmt: skip


def _slot(plate: Plate) -> None:
    """The block from the front, its slot round a slide."""
    left, right, top, bottom = 230_00, 390_00, 36_00, 128_00
    wide, high, middle = 44_00, 30_00, 300_00
    more, deeper = plate.size("slot_wider", 14_00, most=28_00), plate.size("slot_deeper", 12_00)
    start, end = middle - wide // 2, middle + wide // 2
    foot: Px = top + high + deeper
    plate.path("front", [
        (start, top), (left, top), (left, bottom), (right, bottom), (right, top),
        (end + more, top), (end + more, foot), (start, foot), (start, top),
    ])  # fmt: skip
    plate.rect("hidden", start, top, end, top + high)
    plate.note(middle, 24_00, "slide")
    plate.across("slot_wider", end, end + more, top + 12_00, "wider")
    plate.upright("slot_deeper", top + high, foot, middle, "deeper")


def _shim_and_tape(plate: Plate) -> None:
    length = plate.size("bottom_shim_length", 160_00, most=300_00)
    plate.rect("front", 40_00, 175_00, 40_00 + length, 187_00)
    plate.across("bottom_shim_length", 40_00, 40_00 + length, 205_00, "shim", base=187_00)
    thick, wide = plate.size("tape_thickness", 18_00), plate.size("tape_width", 70_00)
    left, face = 130_00, 280_00
    plate.cut(left, face - 30_00, left + 170_00, face)
    plate.rect("box", left + 20_00, face, left + 20_00 + wide, face + thick)
    plate.cut(left - 10_00, face + thick, left + 190_00, face + thick + 24_00, leaning=-1)
    plate.note(left - 8_00, face - 14_00, "box", "end")
    plate.note(left - 18_00, face + thick + 12_00, "front", "end")
    plate.across("tape_width", left + 20_00, left + 20_00 + wide, face + thick + 42_00, "tape",
                 base=face + thick)  # fmt: skip
    plate.upright("tape_thickness", face, face + thick, left + 200_00, "tape", base=_END - 40_00)
