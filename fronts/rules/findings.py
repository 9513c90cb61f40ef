"""Every finding that a schedule can raise, with its words.

`stop`: do not cut; `check`: measure or decide; `note`: good to know. A finding's `where`
names the fronts it is about, or the opening, cabinet or door where the fault is theirs.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.kitchen import Side, Unit
from fronts.rules.lengths import Mm, show_with_unit
from fronts.rules.practice import POUND
from fronts.rules.results import Finding


@dataclass(frozen=True, slots=True)
class Speaks:
    """Words findings in the job's unit."""

    unit: Unit

    def say(self, length: Mm) -> str:
        return show_with_unit(length, self.unit)

    def say_weight(self, kilograms: Fraction, *, places: int = 1) -> str:
        """Pounds beside inches, kilograms beside millimetres."""
        if self.unit == "in":
            return f"{float(kilograms / POUND):.{places}f} lb"
        return f"{float(kilograms):.{places}f} kg"

    def fronts_too_close(self, one: str, other: str, gap: Mm, least: Mm) -> Finding:
        if gap < 0:
            words = f"{one} and {other} overlap by {self.say(-gap)}"
        else:
            words = (
                f"{one} and {other} are {self.say(gap)} apart; the least gap is {self.say(least)}"
            )
        return Finding("stop", "fronts-too-close", (one, other), words + ".")

    def past_cabinet_edge(self, front: str, cabinet: str, side: Side, by: Mm) -> Finding:
        words = f"{front} goes {self.say(by)} past the {side} edge of {cabinet}, where the run ends"
        if side == "bottom":
            return Finding("check", "past-cabinet-edge", (front,), f"{words}: is there room below?")
        return Finding("stop", "past-cabinet-edge", (front,), f"{words}.")

    def below_floor(self, front: str, by: Mm) -> Finding:
        words = f"{front} reaches {self.say(by)} below the floor."
        return Finding("stop", "past-cabinet-edge", (front,), words)

    def mixed(self, front: str, laps: Sequence[Side], inside: Sequence[Side], trim: str) -> Finding:
        words = (
            f"{front} laps the opening ({', '.join(laps)}) and falls inside it "
            f"({', '.join(inside)}); {trim}."
        )
        return Finding("stop", "mixed-overlay-and-inset", (front,), words)

    def gap_too_small(self, front: str, gap: Mm, least: Mm, trim: str) -> Finding:
        words = (
            f"{front} leaves {self.say(gap)} inside its opening; the least gap is {self.say(least)}"
        )
        return Finding("stop", "gap-too-small", (front,), f"{words}; {trim}.")

    def out_of_square(self, opening: str, lean: Mm, left: Mm, least: Mm) -> Finding:
        words = (
            f"{opening} leans {self.say(abs(lean))} over its height: hung square, a side gap comes "
            f"down to {self.say(left)}; the least gap is {self.say(least)}. Measure its diagonals "
            f"again, or give it gaps of {self.say(least + abs(lean) / 2)} or more at the sides."
        )
        return Finding("stop", "opening-out-of-square", (opening,), words)

    def leans(self, opening: str, lean: Mm, left: Mm, *, laps: bool) -> Finding:
        what = "lap" if laps else "side gap"
        words = f"{opening} leans {self.say(abs(lean))} over its height; the least {what} will be "
        return Finding("note", "opening-leans", (opening,), words + f"{self.say(left)}.")

    def lap_runs_out(self, opening: str, lean: Mm) -> Finding:
        words = f"{opening} leans {self.say(abs(lean))} over its height: it shows past its front."
        return Finding("check", "lap-runs-out", (opening,), words)

    def measure_again(self, opening: str, why: str) -> Finding:
        return Finding("check", "measure-again", (opening,), f"{opening}: {why}. Measure again.")

    def no_rule(self, opening: str) -> Finding:
        words = f"{opening}: nobody has said how far its front laps; give an overlay or a reveal."
        return Finding("stop", "no-overlay-rule", (opening,), words)

    def no_room(self, opening: str, why: str) -> Finding:
        return Finding("stop", "no-room-for-front", (opening,), f"{opening}: {why}.")

    def no_room_for_panel(self, front: str, width: Mm, height: Mm) -> Finding:
        size = f"{self.say(width)} × {self.say(height)}"
        words = f"{front}: {size} leaves no panel between its stiles and rails; make it a slab."
        return Finding("stop", "no-room-for-panel", (front,), words)

    def heights_past_rule(self, opening: str, by: Mm) -> Finding:
        words = f"{opening}: its drawer fronts' heights come to {self.say(by)} more than the rule."
        return Finding("stop", "heights-past-rule", (opening,), words)

    def lines_miss(self, one: str, other: str, misses: Sequence[tuple[str, Mm]]) -> Finding:
        lines = " and ".join(f"{line} by {self.say(by)}" for line, by in misses)
        words = f"{one} and {other} miss each other's line: {lines}."
        return Finding("note", "lines-miss", (one, other), words)

    def laps_next_opening(self, front: str, opening: str, by: Mm) -> Finding:
        words = f"{front} laps {self.say(by)} over the opening {opening}; its front can't pass."
        return Finding("stop", "laps-next-opening", (front, opening), words)

    def cabinets_overlap(self, one: str, other: str, by: Mm) -> Finding:
        words = f"{one} and {other} overlap by {self.say(by)} on their wall. Measure again."
        return Finding("check", "cabinets-overlap", (one, other), words)

    def openings_overlap(self, one: str, other: str) -> Finding:
        words = f"{one} and {other} overlap. Measure again."
        return Finding("stop", "openings-overlap", (one, other), words)

    def no_screw(self, front: str, least: Mm, most: Mm) -> Finding:
        between = (
            f"{self.say(least)} to {self.say(most)}" if least <= most else "no length is right"
        )
        words = f"{front}: no stocked mounting screw bites without coming through ({between})."
        return Finding("stop", "no-screw-fits", (front,), words)

    def no_knob_screw(self, front: str, stack: Mm, *, recess: bool) -> Finding:
        way_out = "" if recess else "; the box front is too thin for a recess"
        words = f"{front}: no stocked knob screw fits a stack of {self.say(stack)}{way_out}."
        return Finding("stop", "no-knob-screw-fits", (front,), words)

    def knob_screw_to_buy(self, front: str, stack: Mm) -> Finding:
        words = f"{front}: no stocked knob screw fits a front {self.say(stack)} thick; order one."
        return Finding("check", "knob-screw-to-order", (front,), words)

    def hole_hits_pin(self, front: str, x: Mm, y: Mm, *, recess: bool) -> Finding:
        way_out = (
            "a recess in the box front for the screw's head keeps the box front whole"
            if recess
            else "move the knob"
        )
        words = (
            f"{front}: the knob's hole meets a shelf-pin hole on the box front "
            f"({self.say(x)} from the left, {self.say(y)} up); {way_out}."
        )
        return Finding("note", "hole-hits-shelf-pin", (front,), words)

    def no_place(self, front: str, corners: int) -> Finding:
        words = f"{front}: no place in solid wood for {corners} of 4 mounting holes."
        return Finding("stop", "no-place-for-hole", (front,), words)

    def bore_shows(self, front: str, door: str, what: Sequence[str]) -> Finding:
        words = f"{front}, made from door {door}, shows {' and '.join(what)}."
        return Finding("check", "bore-shows", (front,), words)

    def too_heavy(self, front: str, weight: str) -> Finding:
        words = f"{front} weighs {weight}: more than the shop's hinges carry."
        return Finding("stop", "too-heavy", (front,), words)

    def load_too_heavy(self, front: str, load: str) -> Finding:
        words = f"{front}: its box is expected to carry {load}, more than any slide class."
        return Finding("stop", "too-heavy", (front,), words)

    def too_tall(self, front: str, height: Mm) -> Finding:
        words = f"{front} is {self.say(height)} long at its hinges: past the shop's hinge table."
        return Finding("stop", "too-tall", (front,), words)

    def no_hinge(self, front: str, overlay: Mm) -> Finding:
        how = (
            f"an overlay of {self.say(overlay)}"
            if overlay >= 0
            else f"a gap of {self.say(-overlay)}"
        )
        words = f"{front}: none of the shop's hinges makes {how} on the hinge side."
        return Finding("stop", "no-hinge-fits", (front,), words)

    def no_hinge_place(self, front: str) -> Finding:
        words = f"{front}: the hinges find no place clear of the rails."
        return Finding("check", "no-place-for-hinge", (front,), words)

    def no_slide(self, front: str, room: Mm) -> Finding:
        words = f"{front}: no stocked slide fits; the longest that would is {self.say(room)}."
        return Finding("stop", "no-slide-fits", (front,), words)

    def slide_not_measured(self, front: str) -> Finding:
        words = f"{front}: the bottom slide's width and height are needed for the jig's slot."
        return Finding("check", "slide-not-measured", (front,), words)

    def slot_cuts_jig(self, front: str, slot: Mm, jig: Mm) -> Finding:
        words = (
            f"{front}: the slot for the slide is {self.say(slot)} deep, the jig {self.say(jig)} "
            "thick; make it in two pieces, one at each side of the slide."
        )
        return Finding("check", "slot-cuts-jig", (front,), words)

    def no_door(self, front: str, width: Mm, height: Mm) -> Finding:
        size = f"{self.say(width)} × {self.say(height)}"
        words = f"{front}: no door on hand makes {size}; a new one is needed."
        return Finding("check", "no-door-serves", (front,), words)

    def door_used_twice(self, door: str, fronts: Sequence[str]) -> Finding:
        words = f"Door {door} is named for {' and '.join(fronts)}; there is one of it."
        return Finding("stop", "door-used-twice", tuple(fronts), words)

    def box_does_not_fit(self, front: str, why: str) -> Finding:
        return Finding("stop", "box-does-not-fit", (front,), f"{front}: {why}.")

    def box_missing(self, front: str) -> Finding:
        words = f"{front}: its box is not measured, so no jig, holes or screws are worked out."
        return Finding("check", "box-missing", (front,), words)

    def boxes_overlap(self, one: str, other: str, by: Mm) -> Finding:
        words = (
            f"The boxes of {one} and {other} overlap by {self.say(by)} in height. Measure again."
        )
        return Finding("stop", "boxes-overlap", (one, other), words)

    def knob_off_centre(self, front: str, door: str, by: Mm) -> Finding:
        words = f"{front}: the knob hole of door {door} is {self.say(by)} off the middle."
        return Finding("note", "knob-off-centre", (front,), words)

    def gap_closes(self, front: str, grows: Mm) -> Finding:
        words = f"{front} grows {self.say(grows)} in the dampest month, and its gap closes."
        return Finding("stop", "gap-closes", (front,), words)

    def material_unknown(self, front: str, material: str, taken: str) -> Finding:
        words = f"{front}: “{material}” is not a known material; its weight is taken as {taken}."
        return Finding("check", "material-unknown", (front,), words)

    def middle_rail(self, front: str) -> Finding:
        return Finding("note", "middle-rail", (front,), f"{front} is high: it gets a middle rail.")

    def thread_unknown(self, thread: str) -> Finding:
        words = f"“{thread}” is not a thread; knob screws can't be chosen."
        return Finding("check", "thread-unknown", (), words)
