"""Whether foam tape may hold a front while it is fixed: only where its opening is true enough.

Tape holds where it first touches, so an opening that is out of true throws the gaps out for
good: half of what its widths or heights differ by, and half of its lean (common practice, no
source).
"""

from fronts.rules.findings import FindingWriter
from fronts.rules.fitting_results import Tape
from fronts.rules.kitchen import Opening
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.opening_sizes import heights_of, widths_of


def foam_tape(opening: Opening, lean: Mm | None, least_gap: Mm, writer: FindingWriter) -> Tape:
    """Whether tape may be used, and why (not)."""
    widths, heights = widths_of(opening), heights_of(opening)
    uneven = max(max(widths) - min(widths), max(heights) - min(heights))
    error = (uneven + abs(lean or NOTHING)) / 2
    if error > least_gap:
        thrown, least = writer.say(error), writer.say(least_gap)
        why = f"the opening may throw a gap out by {thrown}, more than {least}"
        return Tape(suggested=False, why=why)
    return Tape(suggested=True, why="quick, but once the tape touches, the front stays")
