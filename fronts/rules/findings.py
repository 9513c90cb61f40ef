"""Every finding that a schedule can raise, with its words; by what they are about.

`stop`: do not cut; `check`: measure or decide; `note`: good to know. A finding's `where`
names the fronts it is about, or the opening, cabinet or door where the fault is theirs.
"""

from fronts.rules.findings_along_walls import WallFindings
from fronts.rules.findings_of_boxes import BoxFindings
from fronts.rules.findings_of_fixing import FixingFindings
from fronts.rules.findings_of_fronts import FrontFindings
from fronts.rules.findings_of_grain import GrainFindings
from fronts.rules.findings_of_handles import HandleFindings
from fronts.rules.findings_of_hinges import HingeFindings
from fronts.rules.findings_of_kinds import KindFindings
from fronts.rules.findings_of_openings import OpeningFindings
from fronts.rules.findings_of_walls import WholeWallFindings


class FindingWriter(
    OpeningFindings,
    WallFindings,
    WholeWallFindings,
    FrontFindings,
    GrainFindings,
    HingeFindings,
    HandleFindings,
    BoxFindings,
    FixingFindings,
    KindFindings,
):
    """Writes every finding in the unit of the job."""
