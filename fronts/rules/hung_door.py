"""What decides how one door hangs, and the hinge that follows from it.

A hinge that somebody chose is taken; else, where the door's old bores serve, one for these; else
the shop's first that makes the overlay.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.hinge_choice import (
    DoorToHang,
    HingeSetting,
    OldBore,
    best_setting,
    choose_hinge,
    within_adjustment,
)
from fronts.rules.hinges import hinge_count
from fronts.rules.kinds import FRONT_KINDS, Hinged, is_upright
from fronts.rules.kitchen import DoorOnHand, Kitchen
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.old_bores import Reused, reused
from fronts.rules.usual_hinges import Hinge


@dataclass(frozen=True, slots=True)
class HungDoor:
    """What decides how one door hangs; `door` is the one on hand, trimmed."""

    laid: Laid
    hinged: Hinged
    thickness: Mm
    door: DoorOnHand | None
    weight: Fraction
    kitchen: Kitchen
    hinges: Sequence[Hinge]

    @property
    def length(self) -> Mm:
        """Of the side at which it hinges."""
        return self.laid.height if is_upright(self.hinged) else self.laid.width

    @property
    def across(self) -> Mm:
        return self.laid.width if is_upright(self.hinged) else self.laid.height

    @property
    def count(self) -> int:
        """How many hinges it takes; past the shop's table as many as that ends with."""
        practice = self.kitchen.practice
        count = hinge_count(self.length, self.weight, practice)
        return practice.hinges_by_height[-1][1] if count is None else count

    @property
    def to_hang(self) -> DoorToHang | None:
        """None where a front of its own opening is at its hinge side."""
        overlay = self.laid.overlays[self.hinged]
        build = self.laid.cabinet.build
        return None if overlay is None else DoorToHang(overlay, build, self.thickness)

    @property
    def chosen(self) -> Hinge | None:
        """The hinge that somebody, or its standard, names for it, if the shop has it."""
        code = self.laid.hinge
        return next((hinge for hinge in self.hinges if hinge.item.code == code), None)

    @property
    def is_chosen(self) -> bool:
        """Whether somebody named a hinge for this very door."""
        return self.laid.decided.hinge is not None


def swings(laid: Laid) -> Hinged | None:
    """The side of a front at which it hangs on hinges with cups; None: it hangs on none."""
    return laid.hinged if FRONT_KINDS[laid.opening.closing.front].swings else None


def reused_bores(hung: HungDoor) -> Reused | None:
    """The old bores that the door hangs in, with the hinge for them; None: in none."""
    door, to_hang = hung.door, hung.to_hang
    # What a standard names gives way to bores that are there.
    chosen = hung.chosen if hung.is_chosen else None
    if door is None or not door.hinge_bores or to_hang is None:
        return None

    def choose(old: OldBore) -> HingeSetting | None:
        if chosen is None:
            return choose_hinge(to_hang, hung.hinges, old)
        setting = best_setting(chosen, to_hang.overlay, old)
        return setting if setting and within_adjustment(setting) else None

    return reused(door, hung.hinged, hung.count, choose)


def setting_of(hung: HungDoor) -> HingeSetting | None:
    """The hinge with new bores: the one that somebody chose, else the shop's first that serves."""
    to_hang = hung.to_hang
    if to_hang is None:
        return None
    if hung.chosen is not None:
        return best_setting(hung.chosen, to_hang.overlay)
    return choose_hinge(to_hang, hung.hinges)
