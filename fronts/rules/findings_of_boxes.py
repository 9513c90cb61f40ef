"""Findings about boxes, found or to be made, and the slides that they run on."""

from collections.abc import Mapping, Sequence

from fronts.rules.finding_words import FindingWords
from fronts.rules.kinds import Side
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding


class BoxFindings(FindingWords):
    """Findings about boxes, found or to be made, and the slides that they run on."""

    def box_missing(self, front: str) -> Finding:
        """A front on a box that nobody has measured."""
        words = f"{front}: its box is not measured, so no jig, holes or screws are worked out."
        return Finding("check", "box-missing", (front,), words)

    def no_room_for_box(self, front: str, slides: str, width: Mm, height: Mm) -> Finding:
        """A box to be made that would come out too low or too narrow."""
        room = f"{self.say(width)} wide and {self.say(height)} high"
        words = f"{front}: its room, {room}, leaves no box on any of the shop's {slides}."
        return Finding("stop", "no-room-for-box", (front,), words)

    def no_slide(self, front: str, slides: str, longest: Mm, needed: str | None) -> Finding:
        """None of the shop's slides is short enough, strong enough, and for such a box."""
        carries = f" and carries {needed}" if needed else ""
        words = f"{front}: none of the shop's {slides} fits; one up to {self.say(longest)} long"
        return Finding("stop", "no-slide-fits", (front,), f"{words}{carries} is wanted.")

    def box_does_not_fit(self, front: str, width: Mm, opening: Mm) -> Finding:
        """A box that does not go through its opening."""
        words = f"{front}: its box, {self.say(width)} wide, does not pass an opening of "
        return Finding("stop", "box-does-not-fit", (front,), f"{words}{self.say(opening)}.")

    def box_does_not_run(
        self, front: str, slides: str, width: Mm, least: Mm, most: Mm, *, loose: bool
    ) -> Finding:
        """A box that is not where its slides would reach it; a `loose` one only wobbles."""
        wanted = f"{self.say(least)} to {self.say(most)} in the middle of the opening"
        words = f"{front}: its box, {self.say(width)} wide, does not run on {slides}: {wanted}."
        return Finding("check" if loose else "stop", "box-does-not-run", (front,), words)

    def box_cannot_come_out(self, front: str, met: Sequence[str]) -> Finding:
        """A box that its opening or another front is in the way of."""
        words = f"{front}: its box can't come out: {'; '.join(met)}."
        return Finding("stop", "box-cannot-come-out", (front,), words)

    def box_too_long(self, front: str, depth: Mm, inside: Mm) -> Finding:
        """A box that is longer than its cabinet is deep."""
        words = (
            f"{front}: its box is {self.say(depth)} deep, its cabinet inside {self.say(inside)}."
        )
        return Finding("stop", "box-too-long", (front,), words)

    def slide_not_the_boxs_length(self, front: str, depth: Mm) -> Finding:
        """A box on slides that hook into its front and back, and none is as long."""
        words = (
            f"{front}: none of the shop's under slides is as long as its box, {self.say(depth)}."
        )
        return Finding("stop", "slide-not-the-boxs-length", (front,), words)

    def bottom_slide_too_high(self, front: str, slide: Mm, rise: Mm) -> Finding:
        """A slide that does not go under its box."""
        words = (
            f"{front}: its slide is {self.say(slide)} high, and its box stands {self.say(rise)} "
            "above the opening's bottom edge."
        )
        return Finding("stop", "bottom-slide-too-high", (front,), words)

    def stile_wants_blocking(self, front: str, thick: Mapping[Side, Mm]) -> Finding:
        """Stiles that keep side slides off the cabinet's sides."""
        where = " and ".join(f"{self.say(each)} at the {side}" for side, each in thick.items())
        words = f"{front}: its slides want blocking behind the face frame, {where}."
        return Finding("note", "stile-wants-blocking", (front,), words)

    def box_wants_guide(self, front: str, width: Mm, height: Mm) -> Finding:
        """A pull-out so high that its slides alone let it sway."""
        size = f"{self.say(width)} × {self.say(height)}"
        words = f"{front}: its box, {size}, is high: give it a guide at its top too."
        return Finding("note", "box-wants-guide", (front,), words)

    def boxes_overlap(self, one: str, other: str, by: Mm) -> Finding:
        """Two boxes of a stack in each other's way."""
        words = (
            f"The boxes of {one} and {other} overlap by {self.say(by)} in height. Measure again."
        )
        return Finding("stop", "boxes-overlap", (one, other), words)
