"""Findings about kinds of front with a rule of their own: machines' panels, tip-outs, lift-ups."""

from collections.abc import Sequence
from fractions import Fraction
from typing import Literal

from fronts.rules.finding_words import FindingWords
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding


class KindFindings(FindingWords):
    """Findings about kinds of front with a rule of their own."""

    def machine_unknown(self, front: str) -> Finding:
        """A panel whose machine nobody has read up on."""
        words = (
            f"{front}: nothing is said of its machine. Take the panel's least and greatest width "
            f"and height, and the heaviest that it carries, from the machine's booklet."
        )
        return Finding("check", "machine-unknown", (front,), words)

    def panel_past_machine(
        self, front: str, size: Mm, way: str, limit: Mm, end: Literal["least", "most"]
    ) -> Finding:
        """A panel smaller or larger than its machine takes."""
        words = (
            f"{front} is {self.say(size)} {way}; its machine takes a panel of at {end} "
            f"{self.say(limit)}."
        )
        return Finding("stop", "panel-past-machine", (front,), words)

    def panel_too_heavy(self, front: str, weight: Fraction, most: Fraction) -> Finding:
        """A panel that the springs of its machine's door do not hold."""
        words = (
            f"{front} weighs {self.say_weight(weight)}; its machine's door carries "
            f"{self.say_weight(most)}. A thinner or lighter one, or another machine."
        )
        return Finding("stop", "panel-too-heavy", (front,), words)

    def no_depth_for_tray(self, front: str, depth: Mm, room: Mm) -> Finding:
        """A tip-out in a cabinet that is shallower than its tray."""
        words = (
            f"{front}: its tray is {self.say(depth)} deep, and the cabinet is "
            f"{self.say(max(room, Mm(0)))} deep behind it."
        )
        return Finding("stop", "no-room-for-tray", (front,), words)

    def sink_in_way(self, front: str, depth: Mm, room: Mm) -> Finding:
        """A tip-out whose tray would meet the bowl of the sink."""
        words = (
            f"{front}: its tray is {self.say(depth)} deep, and there is {self.say(room)} in front "
            f"of the sink. A shallower tray, or a fixed front."
        )
        return Finding("check", "no-room-for-tray", (front,), words)

    def blocked_above(self, front: str, met: Sequence[str], rise: Mm) -> Finding:
        """A front that meets what is above it when it opens upwards."""
        words = (
            f"{front} comes up to {self.say(rise)} above its top edge when it opens, and "
            f"{' and '.join(met)} {'is' if len(met) == 1 else 'are'} there. Check that it opens, "
            f"or choose a lift that keeps it lower."
        )
        return Finding("check", "blocked-above", (front,), words)

    def room_above(self, front: str, top: Mm) -> Finding:
        """How high a front comes that opens upwards: the ceiling is nowhere in the job."""
        words = (
            f"{front} comes up to {self.say(top)} above the floor when it opens: keep ceiling, "
            f"crown and lamps above that."
        )
        return Finding("note", "room-above", (front,), words)
