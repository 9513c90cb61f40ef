"""A front that tips out before a sink: its tray, and the depth that this wants behind it.

The tray is screwed to the front's back and goes in between the opening's sides, as deep as
trays of plastic or steel are (common practice, no source). How far the sink's bowl leaves room
only a tape measure tells.
"""

from collections.abc import Iterator

from fronts.rules.findings import FindingWriter
from fronts.rules.fitting_results import Tray
from fronts.rules.inside_depth import inside_depth
from fronts.rules.kinds import FRONT_KINDS, Unit
from fronts.rules.laying import Laid
from fronts.rules.opening_sizes import widths_of
from fronts.rules.practice import Practice
from fronts.rules.results import Finding, Front


def tray_of(laid: Laid, practice: Practice) -> Tray | None:
    """The tray of a front that tips out; None for any other, or where none goes in."""
    if not FRONT_KINDS[laid.opening.closing.front].tips_out:
        return None
    length = min(widths_of(laid.opening)) - 2 * practice.tray_side
    return Tray(length, practice.tray_depth, laid.decided.room_behind) if length > 0 else None


def tray_findings(laid: Laid, front: Front, unit: Unit, writer: FindingWriter) -> Iterator[Finding]:
    """A tray that goes in nowhere, or that the sink has no room for."""
    tray = front.tray
    if tray is None:
        return
    deep = inside_depth(laid, front.thickness, unit)
    if deep < tray.depth:
        yield writer.no_depth_for_tray(laid.label, tray.depth, deep)
    elif tray.room is not None and tray.room < tray.depth:
        yield writer.sink_in_way(laid.label, tray.depth, tray.room)
