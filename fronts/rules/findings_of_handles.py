"""Findings about knobs and pulls: what their screws go through, and whether they line up."""

from collections.abc import Sequence

from fronts.rules.finding_words import FindingWords
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding


class HandleFindings(FindingWords):
    """Findings about knobs and pulls: what their screws go through, and whether they line up."""

    def knob_in_panel(self, front: str, panel: Mm, block: Mm) -> Finding:
        """A screw through a panel that is too thin to hold it alone."""
        words = (
            f"{front}: its knob is screwed through a panel {self.say(panel)} thick; glue a filler "
            f"block {self.say(block)} thick behind it first, or move the knob to the frame."
        )
        return Finding("check", "knob-in-thin-panel", (front,), words)

    def knob_in_glass(self, front: str) -> Finding:
        """A screw through a pane."""
        words = f"{front}: its knob is over the glass; move it to the frame."
        return Finding("check", "knob-in-thin-panel", (front,), words)

    def knobs_out_of_line(self, one: str, other: str, by: Mm) -> Finding:
        """Neighbours' knobs that almost line up."""
        words = f"The knobs of {one} and {other} miss one line by {self.say(by)}."
        return Finding("note", "knobs-out-of-line", (one, other), words)

    def handle_unknown(self, front: str, code: str) -> Finding:
        """A knob or pull that somebody chose and that is not in the shop's list."""
        words = f"{front}: knob or pull {code} was chosen, but it is not in the shop's list."
        return Finding("check", "handle-unknown", (front,), words)

    def standard_handle_unknown(self, fronts: Sequence[str], code: str) -> Finding:
        """A knob or pull that the standard names and that is not in the shop's list."""
        words = (
            f"{', '.join(fronts)}: their standard names knob or pull {code}, which is not in the "
            "shop's list; they have the first of it."
        )
        return Finding("check", "handle-unknown", tuple(fronts), words)
