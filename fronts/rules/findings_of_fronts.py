"""Findings about what a front is made of or from, and how a door hangs."""

from collections.abc import Sequence

from fronts.rules.finding_words import FindingWords
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding


class FrontFindings(FindingWords):
    """Findings about what a front is made of or from, and how a door hangs."""

    def material_unknown(self, front: str, material: str, taken: str) -> Finding:
        """No density is known, so weights and hinges rest on another material's."""
        words = f"{front}: “{material}” is not a known material; its weight is taken as {taken}."
        return Finding("check", "material-unknown", (front,), words)

    def middle_rail(self, front: str) -> Finding:
        """A door high enough to want a middle rail."""
        return Finding("note", "middle-rail", (front,), f"{front} is high: it gets a middle rail.")

    def no_room_for_panel(self, front: str, width: Mm, height: Mm) -> Finding:
        """A five-piece front whose frame leaves no panel."""
        size = f"{self.say(width)} × {self.say(height)}"
        words = f"{front}: {size} leaves no panel between its stiles and rails; make it a slab."
        return Finding("stop", "no-room-for-panel", (front,), words)

    def too_little_panel(self, front: str, least: Mm) -> Finding:
        """A five-piece drawer front so low that even narrow rails leave no panel to see."""
        words = (
            f"{front}: even narrow rails leave less than {self.say(least)} of panel; "
            f"it is made as a slab."
        )
        return Finding("check", "too-little-panel", (front,), words)

    def no_lift(self, front: str, weight: str, height: Mm) -> Finding:
        """A front that lifts up, past every stay and lift on the shop's list."""
        words = (
            f"{front} weighs {weight} and is {self.say(height)} high: "
            f"none of the shop's lifts serves it."
        )
        return Finding("stop", "lift-does-not-serve", (front,), words)

    def gap_closes(self, front: str, grows: Mm) -> Finding:
        """A slab of solid wood that swells until it touches."""
        words = f"{front} grows {self.say(grows)} in the dampest month, and its gap closes."
        return Finding("stop", "gap-closes", (front,), words)

    def too_heavy(self, front: str, weight: str) -> Finding:
        """A door past the weights in the shop's hinge table."""
        words = f"{front} weighs {weight}: more than the shop's hinges carry."
        return Finding("stop", "too-heavy", (front,), words)

    def too_tall(self, front: str, height: Mm) -> Finding:
        """A door past the heights in the shop's hinge table."""
        words = f"{front} is {self.say(height)} long at its hinges: past the shop's hinge table."
        return Finding("stop", "too-tall", (front,), words)

    def no_door(self, front: str, width: Mm, height: Mm) -> Finding:
        """A front that was to be a door on hand, and none is large enough."""
        size = f"{self.say(width)} × {self.say(height)}"
        words = f"{front}: no door on hand makes {size}; a new one is needed."
        return Finding("check", "no-door-serves", (front,), words)

    def no_door_style(self, fronts: Sequence[str]) -> Finding:
        """Five-piece fronts that are bought, of a style that nobody named."""
        several = len(fronts) > 1
        words = (
            f"{len(fronts)} five-piece fronts are bought" if several
            else f"{fronts[0]} is bought as a five-piece front"
        )  # fmt: skip
        told = f"{words}, and no door style is named: the house standard has a place for it."
        return Finding("check", "no-door-style", tuple(fronts), told)

    def door_used_twice(self, door: str, fronts: Sequence[str]) -> Finding:
        """One door on hand that several openings name."""
        words = f"Door {door} is named for {' and '.join(fronts)}; there is one of it."
        return Finding("stop", "door-used-twice", tuple(fronts), words)

    def bore_shows(self, front: str, door: str, what: Sequence[str]) -> Finding:
        """What of a door's past can be seen once it is a front."""
        words = f"{front}, made from door {door}, shows {' and '.join(what)}."
        return Finding("check", "bore-shows", (front,), words)

    def knob_off_centre(self, front: str, door: str, by: Mm) -> Finding:
        """A door's own knob hole that the eye sees off a drawer front's middle."""
        words = f"{front}: the knob hole of door {door} is {self.say(by)} off the middle."
        return Finding("note", "knob-off-centre", (front,), words)

    def band_unknown(self, code: str, fronts: Sequence[str]) -> Finding:
        """A band that the house standard names and that is not in the shop's list."""
        words = (
            f"Edge band {code} is in the house standard, but not in the shop's list: nothing is "
            f"taken off {', '.join(fronts)} for it. Choose another, or enter it."
        )
        return Finding("stop", "band-unknown", tuple(fronts), words)

    def no_room_for_bands(self, front: str) -> Finding:
        """A slab of which nothing would be left between its bands."""
        words = f"{front}: nothing is left to cut between its edge bands; choose thinner ones."
        return Finding("stop", "no-room-for-bands", (front,), words)

    def band_too_narrow(self, front: str, code: str, width: Mm, thickness: Mm) -> Finding:
        """A band that does not cover the edge that it goes on."""
        words = (
            f"{front}: edge band {code} is {self.say(width)} wide and the front "
            f"{self.say(thickness)} thick; choose a wider one."
        )
        return Finding("check", "band-too-narrow", (front,), words)
