"""Findings about how a front is fixed to its box."""

from collections.abc import Sequence

from fronts.rules.finding_words import FindingWords
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding

MOST_NAMED = 4
"""So many fronts are named in words; `where` has them all."""


class FixingFindings(FindingWords):
    """Findings about how a front is fixed to its box."""

    def no_screw(self, front: str, least: Mm, most: Mm) -> Finding:
        """No stocked mounting screw is long enough to hold and short enough not to show."""
        between = (
            f"{self.say(least)} to {self.say(most)}" if least <= most else "no length is right"
        )
        words = f"{front}: no stocked mounting screw bites without coming through ({between})."
        return Finding("stop", "no-screw-fits", (front,), words)

    def no_place(self, front: str, missing: int, count: int) -> Finding:
        """Mounting holes that find no solid wood clear of everything else."""
        words = f"{front}: no place in solid wood for {missing} of {count} mounting holes."
        return Finding("stop", "no-place-for-hole", (front,), words)

    def no_knob_screw(self, front: str, stack: Mm, *, recess: bool) -> Finding:
        """No stocked screw reaches a knob through front and box."""
        way_out = "" if recess else "; the box front is too thin for a recess"
        words = f"{front}: no stocked knob screw fits a stack of {self.say(stack)}{way_out}."
        return Finding("stop", "no-knob-screw-fits", (front,), words)

    def knob_screw_to_buy(self, front: str, stack: Mm) -> Finding:
        """No stocked screw reaches a knob through the front alone."""
        words = f"{front}: no stocked knob screw fits a front {self.say(stack)} thick; order one."
        return Finding("check", "knob-screw-to-order", (front,), words)

    def hole_hits_pin(self, front: str, x: Mm, y: Mm, *, recess: bool) -> Finding:
        """A knob's hole through the box front that meets a shelf-pin hole."""
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

    def thread_unknown(self, thread: str) -> Finding:
        """A thread that says no diameter, so no knob screw can be chosen."""
        words = f"“{thread}” is not a thread; knob screws can't be chosen."
        return Finding("check", "thread-unknown", (), words)

    def slide_not_measured(self, front: str) -> Finding:
        """A bottom slide without the sizes that the jig's slot is made by."""
        words = f"{front}: the bottom slide's width and height are needed for the jig's slot."
        return Finding("check", "slide-not-measured", (front,), words)

    def slot_cuts_jig(self, front: str, slot: Mm, jig: Mm) -> Finding:
        """A slot as deep as its jig is thick."""
        words = (
            f"{front}: the slot for the slide is {self.say(slot)} deep, the jig {self.say(jig)} "
            "thick; make it in two pieces, one at each side of the slide."
        )
        return Finding("check", "slot-cuts-jig", (front,), words)

    def two_holes(self, front: str, height: Mm) -> Finding:
        """A box too low for a mounting hole in each corner."""
        words = f"{front}: its box, {self.say(height)} high, takes two mounting holes, not four."
        return Finding("note", "two-mounting-holes", (front,), words)

    def may_not_come_true(
        self, fronts: Sequence[str], expected: Mm, worst: Mm, play: Mm, known: Mm, *, hung: bool
    ) -> Finding:
        """Fronts that are likely to hang off by more than they can be moved.

        `known` is how much of both figures comes of an opening that is out of true.
        """
        named, others = ", ".join(fronts[:MOST_NAMED]), len(fronts) - MOST_NAMED
        more = f" and {others} more" if others > 0 else ""
        of_it = f" ({self.say(known)} of it as the opening leans or tapers)" if known else ""
        moves = "hinges move" if hung else "screws in their holes move"
        helps = (
            "a hinge whose screws move it further" if hung else "larger mounting holes in the box"
        )
        words = (
            f"{named}{more} may not come true: expect {self.say(expected)} off{of_it}, at worst "
            f"{self.say(worst)}, and the {moves} a front by {self.say(play)}. What helps: "
            f"{helps}, cutting closer, or measuring again at both ends."
        )
        return Finding("check", "may-not-come-true", tuple(fronts), words)
