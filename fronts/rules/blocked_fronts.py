"""Which fronts do not open: the other wall of a corner, or an appliance, is in the way."""

from collections.abc import Sequence

from fronts.rules.appliance_beside import appliance_findings
from fronts.rules.corners import corner_findings
from fronts.rules.findings import FindingWriter
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid
from fronts.rules.opening_past import hung_front
from fronts.rules.results import Finding, Front
from fronts.rules.runs import Placed


def blocked_findings(
    fronts: Sequence[Front],
    laid: Sequence[Laid],
    standing: Sequence[Placed],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> list[Finding]:
    """Everything that keeps a front from opening."""
    hung = [hung_front(*pair, kitchen) for pair in zip(fronts, laid, strict=True)]
    return [
        *corner_findings(hung, standing, kitchen, writer),
        *appliance_findings(hung, standing, kitchen.practice, writer),
    ]
