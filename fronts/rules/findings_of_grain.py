"""Findings about fronts whose grain should run on from one to the next."""

from collections.abc import Sequence

from fronts.rules.finding_words import FindingWords
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding


class GrainFindings(FindingWords):
    """Findings about fronts whose grain should run on from one to the next."""

    def grain_set_of_one(self, front: str, name: str) -> Finding:
        """A set of a single front."""
        words = f"{front} is the only front of grain set {name}: name the others too."
        return Finding("note", "grain-set-of-one", (front,), words)

    def grain_across(self, fronts: tuple[str, ...], name: str, *, upright: bool) -> Finding:
        """A front that is said to have its grain across that of its set."""
        way = "up and down" if upright else "from side to side"
        words = (
            f"{', '.join(fronts)}: grain set {name} runs {way}, so this front is cut so too; "
            "say the same of all its fronts, or take it out of the set."
        )
        return Finding("check", "grain-across-its-set", fronts, words)

    def grain_not_cut(self, fronts: tuple[str, ...], name: str) -> Finding:
        """A front of a set that nothing is cut for here: it exists, is bought, is all frame."""
        words = (
            f"{', '.join(fronts)}: in grain set {name}, but nothing of it is cut with the others, "
            "so the grain does not run on there."
        )
        return Finding("check", "grain-set-front-not-cut", fronts, words)

    def no_grain(self, fronts: tuple[str, ...], name: str, material: str) -> Finding:
        """A set of a material without grain."""
        words = f"{', '.join(fronts)}: in grain set {name}, but {material} has no grain to run on."
        return Finding("check", "grain-set-without-grain", fronts, words)

    def grain_of_several_stocks(
        self, fronts: tuple[str, ...], name: str, stocks: Sequence[tuple[str, Mm]]
    ) -> Finding:
        """A set that no one sheet gives: its parts differ in material or thickness."""
        listed = " and ".join(f"{material} {self.say(thick)}" for material, thick in stocks)
        words = (
            f"Grain set {name} is cut from {listed}: the grain runs on only among parts from the "
            "same sheet."
        )
        return Finding("check", "grain-set-of-several-stocks", fronts, words)

    def grain_parted(
        self, fronts: tuple[str, ...], name: str, sheet: tuple[Mm, Mm], runs: int, blocks: int
    ) -> Finding:
        """A set that is larger than a sheet."""
        length, width = sheet
        words = (
            f"Grain set {name} is larger than a sheet of {self.say(length)} × {self.say(width)}: "
            f"its grain runs on within each of {runs} parts of it, cut in order"
        )
        if blocks > 1:
            words += f" from {blocks} sheets; take sheets that follow one another in the flitch"
        return Finding("note", "grain-set-parted", fronts, f"{words}.")
