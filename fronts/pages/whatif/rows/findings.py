"""Findings in few lines: what is said of several fronts alike is said once."""

from collections.abc import Iterable

from fronts.pages.shared.finding_links import FindingRow, finding_row
from fronts.rules.results import Finding


def finding_rows(findings: Iterable[Finding]) -> tuple[FindingRow, ...]:
    """The findings in their order: `B1.a, B2.a: none of the shop's hinges …`."""
    alike: dict[tuple[str, str], list[Finding]] = {}
    for finding in findings:
        alike.setdefault((finding.code, _rest(finding)), []).append(finding)
    return tuple(_row(rest, several) for (_, rest), several in alike.items())


def _row(rest: str, several: list[Finding]) -> FindingRow:
    first = several[0]
    if len(several) == 1:
        return finding_row(first)
    places = dict.fromkeys(finding.where[0] for finding in several)
    words = f"{', '.join(places)}: {rest}"
    return finding_row(Finding(first.level, first.code, first.where, words))


def _rest(finding: Finding) -> str:
    """The words after the label that they begin with; all of them where there is none."""
    place = finding.where[0] if finding.where else ""
    return finding.message.removeprefix(f"{place}: ")
