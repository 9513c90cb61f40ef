"""What stands in the way of ordering, cutting and fitting, with the way to where it is mended."""

from collections.abc import Sequence
from dataclasses import replace

from fronts.figures.findings import findings_of
from fronts.pages.shared.finding_links import FindingRow, Link, Ways
from fronts.rules.results import Finding, Schedule
from fronts.selectors.labels import keys_by_label
from shopjobs.access import SignedInRequest, may
from shopjobs.models import Job


def blocking_findings(request: SignedInRequest, job: Job, schedule: Schedule) -> list[FindingRow]:
    """The stops of a schedule."""
    return findings_with_links(request, job, findings_of(schedule).stops)


def findings_with_links(
    request: SignedInRequest,
    job: Job,
    findings: Sequence[Finding],
    *,
    back: str = "",
) -> list[FindingRow]:
    """Findings with their links, each of which says what it does; `back` is where it returns to.

    Where there is no finding, nothing is read.
    """
    if not findings:
        return []
    may_edit = may(request.user, "edit_kitchen")
    may_set = may(request.user, "standard")
    ways = Ways(job, keys_by_label(job), may_edit=may_edit, may_set=may_set)
    return [
        replace(row, links=tuple(_says(each, back, may_edit=may_edit) for each in row.links))
        for row in ways.findings(findings)
    ]


def _says(link: Link, back: str, *, may_edit: bool) -> Link:
    """What the link does, in words: those who may not change a kitchen measure it again."""
    about = link.words
    if may_edit:
        words = "Change " + about.replace("Box of", "the box of").replace("This job", "this job")
        words = words.replace("The shop", "the shop")
    else:
        words = f"Measure {about} again"
    return Link(words, f"{link.href}?back={back}" if back else link.href)
