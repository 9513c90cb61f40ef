"""Findings about an opening and how its fronts lie in it."""

from collections.abc import Mapping, Sequence

from fronts.rules.finding_words import FindingWords
from fronts.rules.kinds import Side
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding


class OpeningFindings(FindingWords):
    """Findings about an opening and how its fronts lie in it."""

    def no_rule(self, opening: str) -> Finding:
        """Neither an overlay nor a reveal is given, and the front is new."""
        words = f"{opening}: nobody has said how far its front laps; give an overlay or a reveal."
        return Finding("stop", "no-overlay-rule", (opening,), words)

    def no_room(self, opening: str, why: str) -> Finding:
        """No fronts go into the opening."""
        return Finding("stop", "no-room-for-front", (opening,), f"{opening}: {why}.")

    def heights_past_rule(self, opening: str, by: Mm) -> Finding:
        """The fixed heights of a stack are more than the rule allows."""
        words = f"{opening}: its drawer fronts' heights come to {self.say(by)} more than the rule."
        return Finding("stop", "heights-past-rule", (opening,), words)

    def mixed(self, front: str, laps: Sequence[Side], inside: Sequence[Side], trim: str) -> Finding:
        """A front that laps at some sides and falls inside at others closes nothing."""
        words = (
            f"{front} laps the opening ({', '.join(laps)}) and falls inside it "
            f"({', '.join(inside)}); {trim}."
        )
        return Finding("stop", "mixed-overlay-and-inset", (front,), words)

    def gap_too_small(self, front: str, gap: Mm, least: Mm, trim: str) -> Finding:
        """A front inside its opening that will rub."""
        words = (
            f"{front} leaves {self.say(gap)} inside its opening; the least gap is {self.say(least)}"
        )
        return Finding("stop", "gap-too-small", (front,), f"{words}; {trim}.")

    def out_of_square(self, opening: str, lean: Mm, left: Mm, least: Mm) -> Finding:
        """The opening leans so far that a square front comes too near to a side of it."""
        words = (
            f"{opening} leans {self.say(abs(lean))} over its height: hung square, a side gap comes "
            f"down to {self.say(left)}; the least gap is {self.say(least)}. Measure its diagonals "
            f"again, or give it gaps of {self.say(least + abs(lean) / 2)} or more at the sides."
        )
        return Finding("stop", "opening-out-of-square", (opening,), words)

    def leans(self, opening: str, lean: Mm, left: Mm, *, laps: bool) -> Finding:
        """The opening leans, and the front still covers or clears it."""
        what = "lap" if laps else "side gap"
        words = f"{opening} leans {self.say(abs(lean))} over its height; the least {what} will be "
        return Finding("note", "opening-leans", (opening,), words + f"{self.say(left)}.")

    def lap_runs_out(self, opening: str, lean: Mm) -> Finding:
        """The opening leans past the edge of the front that laps it."""
        words = f"{opening} leans {self.say(abs(lean))} over its height: it shows past its front."
        return Finding("check", "lap-runs-out", (opening,), words)

    def opening_tapers(self, opening: str, ways: Mapping[str, Mm]) -> Finding:
        """The opening is so much wider or higher at one end that a square front looks crooked."""
        differs = " and ".join(f"{where} by {self.say(by)}" for where, by in ways.items())
        words = (
            f"{opening} tapers: round a square front it differs from end to end {differs}. Cut "
            f"the front to the taper, or scribe a strip beside it."
        )
        return Finding("check", "opening-tapers", (opening,), words)

    def measure_again(self, opening: str, why: str) -> Finding:
        """Measurements that contradict each other."""
        return Finding("check", "measure-again", (opening,), f"{opening}: {why}. Measure again.")

    def openings_overlap(self, one: str, other: str) -> Finding:
        """Two openings of one cabinet that can't both be where they were measured."""
        words = f"{one} and {other} overlap. Measure again."
        return Finding("stop", "openings-overlap", (one, other), words)

    def laps_next_opening(self, front: str, opening: str, by: Mm) -> Finding:
        """A front that laps over an opening whose own front lies inside it."""
        words = f"{front} laps {self.say(by)} over the opening {opening}; its front can't pass."
        return Finding("stop", "laps-next-opening", (front, opening), words)
