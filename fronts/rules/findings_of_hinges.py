"""Findings about a door's hinges, and about what a door on hand has from before."""

from collections.abc import Sequence

from fronts.rules.finding_words import FindingWords
from fronts.rules.kinds import CABINET_BUILDS, CabinetBuild
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding


class HingeFindings(FindingWords):
    """Findings about a door's hinges, and about what a door on hand has from before."""

    def no_hinge(self, front: str, overlay: Mm, build: CabinetBuild, thickness: Mm) -> Finding:
        """An overlay or gap that none of the shop's hinges makes."""
        how = self.say_overlay(overlay)
        words = (
            f"{front}: none of the shop's hinges makes {how} on the hinge side. One for "
            f"{CABINET_BUILDS[build].says.lower()} cabinets and doors {self.say(thickness)} thick "
            "that does would serve."
        )
        return Finding("stop", "no-hinge-makes-overlay", (front,), words)

    def hinge_adjusted(self, front: str, hinge: str, overlay: Mm, shift: Mm) -> Finding:
        """A hinge whose side screw must take up what it does not make."""
        words = (
            f"{front}: hinge {hinge} comes within {self.say(abs(shift))} of "
            f"{self.say_overlay(overlay)}; its side screw takes up the rest."
        )
        return Finding("check", "hinge-adjusted", (front,), words)

    def hinge_unsuited(self, front: str, hinge: str, why: Sequence[str]) -> Finding:
        """A hinge that somebody chose for a door that it does not fit."""
        words = f"{front}: hinge {hinge} was chosen, but {' and '.join(why)}."
        return Finding("check", "hinge-does-not-suit", (front,), words)

    def hinges_close(self, front: str, apart: Mm, across: Mm) -> Finding:
        """Hinges so near to each other that the door's own width levers them."""
        words = (
            f"{front}: its outermost hinges are {self.say(apart)} apart and it measures "
            f"{self.say(across)} across; makers want more than that."
        )
        return Finding("check", "hinges-close-for-width", (front,), words)

    def no_hinge_place(self, front: str) -> Finding:
        """Hinges that can't be kept clear of the rails behind the door."""
        words = f"{front}: the hinges find no place clear of the rails."
        return Finding("check", "no-place-for-hinge", (front,), words)

    def bores_clash(self, front: str, door: str, clear: Mm) -> Finding:
        """New cups that find no place away from a door's old bores."""
        words = (
            f"{front}: the old bores of door {door} don't serve its hinges, and new cups find no "
            f"place {self.say(clear)} from them, middle to middle."
        )
        return Finding("stop", "bores-clash", (front,), words)

    def bores_to_plug(self, front: str, door: str, count: int) -> Finding:
        """Old bores on the hinge side that no hinge uses."""
        bores, serve, them = "old bores", "serve", "them"
        if count == 1:
            bores, serve, them = "old bore", "serves", "it"
        where = f"of door {door} on its hinge side"
        words = f"{front}: {count} {bores} {where} {serve} no hinge; plug {them}."
        return Finding("note", "bores-to-plug", (front,), words)

    def trim_cuts_bore(self, front: str, door: str) -> Finding:
        """A door that can't be trimmed without sawing into a bore or a knob hole."""
        words = (
            f"{front}: door {door} can't be trimmed to it without cutting a bore or its knob hole, "
            "whichever side gives."
        )
        return Finding("stop", "trim-cuts-bore", (front,), words)

    def stiles_differ(self, front: str, door: str) -> Finding:
        """A five-piece door that loses more from one side than from the other."""
        words = (
            f"{front}: door {door} is trimmed more on one side than on the other, so its frame's "
            "widths will differ."
        )
        return Finding("check", "stiles-differ", (front,), words)

    def standard_hinge_unknown(self, fronts: Sequence[str], code: str) -> Finding:
        """A hinge that the standard names and that is not in the shop's list."""
        words = (
            f"{', '.join(fronts)}: their standard names hinge {code}, which is not in the shop's "
            "list; theirs are chosen by the rule."
        )
        return Finding("check", "hinge-does-not-suit", tuple(fronts), words)
