"""Findings about what meets along a wall."""

from collections.abc import Sequence

from fronts.rules.finding_words import FindingWords
from fronts.rules.kinds import Side
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding


class WallFindings(FindingWords):
    """Findings about what meets along a wall."""

    def fronts_too_close(self, one: str, other: str, gap: Mm, least: Mm) -> Finding:
        """Neighbours nearer than the least gap, or on top of each other."""
        if gap < 0:
            words = f"{one} and {other} overlap by {self.say(-gap)}"
        else:
            words = (
                f"{one} and {other} are {self.say(gap)} apart; the least gap is {self.say(least)}"
            )
        return Finding("stop", "fronts-too-close", (one, other), words + ".")

    def past_cabinet_edge(self, front: str, cabinet: str, side: Side, by: Mm) -> Finding:
        """A front past its cabinet where no other follows; below, somebody must look."""
        words = f"{front} goes {self.say(by)} past the {side} edge of {cabinet}, where the run ends"
        if side == "bottom":
            return Finding("check", "past-cabinet-edge", (front,), f"{words}: is there room below?")
        return Finding("stop", "past-cabinet-edge", (front,), f"{words}.")

    def below_floor(self, front: str, by: Mm) -> Finding:
        """A front that reaches below the floor."""
        words = f"{front} reaches {self.say(by)} below the floor."
        return Finding("stop", "past-cabinet-edge", (front,), words)

    def lines_miss(self, one: str, other: str, misses: Sequence[tuple[str, Mm]]) -> Finding:
        """Edges of neighbours that the eye takes for one line, and that are not."""
        lines = " and ".join(f"{line} by {self.say(by)}" for line, by in misses)
        words = f"{one} and {other} miss each other's line: {lines}."
        return Finding("note", "lines-miss", (one, other), words)

    def cabinets_overlap(self, one: str, other: str, by: Mm) -> Finding:
        """Two cabinets or things that can't both stand where they were measured."""
        words = f"{one} and {other} overlap by {self.say(by)} on their wall. Measure again."
        return Finding("check", "cabinets-overlap", (one, other), words)
