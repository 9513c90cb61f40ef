"""Findings about a wall as a whole: its length, its corners, the appliances in its runs."""

from fronts.rules.finding_words import FindingWords
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding, Level
from fronts.rules.thing_kinds import Run

_RUNS: dict[Run, str] = {"floor": "on the floor", "upper": "above"}


class WholeWallFindings(FindingWords):
    """Findings about a wall as a whole."""

    def run_past_wall(self, wall: str, run: Run, by: Mm) -> Finding:
        """More stands in a run than its wall is long."""
        words = f"Wall {wall}: the run {_RUNS[run]} ends {self.say(by)} past the wall's end."
        return Finding("stop", "run-past-wall", (wall,), words)

    def corner_blocks(self, level: Level, front: str, other: str, filler: Mm, usual: Mm) -> Finding:
        """A front that does not open across the other wall of its inside corner."""
        words = (
            f"{front} {_how_far(level)}: {other} is in its way round the corner. A filler of "
            f"{self.say(filler)} more beside it would do; {self.say(usual)} at each side of an "
            f"inside corner is usual."
        )
        return Finding(level, "corner-blocks", (front,), words)

    def appliance_blocks(self, level: Level, front: str, appliance: str, short: Mm) -> Finding:
        """A front that does not open past an appliance deeper than its face."""
        words = (
            f"{front} {_how_far(level)}: {appliance} stands out beside it. A filler of "
            f"{self.say(short)} between them would do."
        )
        return Finding(level, "appliance-blocks", (front,), words)


def _how_far(level: Level) -> str:
    return "does not open" if level == "stop" else "opens to 90 degrees and no further"
