"""What is wrong with the kinds of front that have a rule of their own.

A panel on a machine's door, a front that tips out, one that opens upwards.
"""

from collections.abc import Sequence

from fronts.rules.appliance_panels import panel_findings
from fronts.rules.findings import FindingWriter
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid
from fronts.rules.opening_past import hung_front
from fronts.rules.results import Finding, Front
from fronts.rules.runs import Placed
from fronts.rules.swing_above import swing_findings, swings_up
from fronts.rules.tip_outs import tray_findings


def special_findings(
    fronts: Sequence[Front],
    laid: Sequence[Laid],
    standing: Sequence[Placed],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> list[Finding]:
    """Each front by the rule of its kind."""
    findings: list[Finding] = []
    for front, laid_front in zip(fronts, laid, strict=True):
        findings += panel_findings(front, writer)
        findings += tray_findings(laid_front, front, kitchen.job.unit, writer)
    if any(swings_up(front) for front in fronts):
        hung = [hung_front(*pair, kitchen) for pair in zip(fronts, laid, strict=True)]
        for one in hung:
            findings += swing_findings(one, hung, standing, kitchen.hardware.lifts, writer)
    return findings
