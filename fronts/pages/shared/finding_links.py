"""Where a front or a finding leads: to the form in which its cause is entered."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from django.urls import reverse

from fronts.pages.shared.standard_links import standard_address
from fronts.pages.shared.thing_addresses import path_of
from fronts.rules.results import Finding, Level
from fronts.selectors.kitchens import things_by_label
from fronts.selectors.labels import KeysByLabel
from shopjobs.models import Job

_OF_BOXES = frozenset({"box-missing", "box-does-not-fit", "slide-not-measured", "no-slide-fits"})
_OF_STANDARD = frozenset({"no-overlay-rule"})
_UNSAID = "Nobody has said how far fronts lap. Give an overlay or a reveal, or make them inset."
_OF_STOCK = frozenset({"thread-unknown", "no-screw-fits", "no-knob-screw-fits"})
_SIGNS: Mapping[Level, tuple[str, str]] = {
    "stop": ("!", "Stop"),
    "check": ("?", "Check"),
    "note": ("i", "Note"),
}


@dataclass(frozen=True, slots=True)
class Link:
    """Words that lead somewhere."""

    words: str
    href: str


@dataclass(frozen=True, slots=True)
class FindingRow:
    """A finding with its sign, its word, and where to mend it; by its `id` in its list."""

    level: Level
    sign: str
    word: str
    message: str
    links: tuple[Link, ...]
    where: tuple[str, ...] = ()
    id: str = ""


def finding_row(finding: Finding, links: tuple[Link, ...] = ()) -> FindingRow:
    """A finding in words, its sign for those who see no colour."""
    return FindingRow(finding.level, *_SIGNS[finding.level], finding.message, links, finding.where)


class Ways:
    """Addresses of a job's forms by the labels that drawings and findings use."""

    def __init__(
        self, job: Job, keys: KeysByLabel, *, may_edit: bool, may_set: bool = False
    ) -> None:
        """`may_edit` the job's kitchen, and `may_set` the shop's standard."""
        self.job, self.keys = job, keys
        self.may_edit, self.may_set = may_edit, may_set

    @cached_property
    def _things(self) -> dict[str, str]:
        """What stands beside the cabinets is looked up once a finding is about it."""
        if not self.may_edit:
            return {}
        return {
            label: _to("thing-edit", self.job, path_of(kind), key)
            for kind, things in things_by_label(self.job).items()
            for label, key in things
        }

    def front(self, label: str) -> str:
        """The address of the form of the front's opening."""
        return self._opening(label) or f"#{label}"

    def findings(self, found: Sequence[Finding]) -> list[FindingRow]:
        """The findings as the page shows them."""
        unsaid = [each for each in found if each.code in _OF_STANDARD]
        others = [each for each in found if each.code not in _OF_STANDARD]
        rows = [finding_row(each, tuple(self._links(each))) for each in others]
        rows = [self._unsaid(unsaid), *rows] if unsaid else rows
        return [replace(row, id=f"finding-{place}") for place, row in enumerate(rows, start=1)]

    def _unsaid(self, findings: Sequence[Finding]) -> FindingRow:
        """One word is missing for many fronts, and one place mends it."""
        links = [each for found in findings for each in self._places(found)]
        if self.may_edit:
            links.insert(0, Link("This job's standard", _to("job-standard", self.job)))
        links[1:1] = self._standard(findings[0])
        where = tuple(label for found in findings for label in found.where)
        return FindingRow("stop", *_SIGNS["stop"], _UNSAID, tuple(links), where)

    def _links(self, finding: Finding) -> list[Link]:
        return [*self._places(finding), *self._standard(finding)]

    def _standard(self, finding: Finding) -> list[Link]:
        """The page of the shop's standard that the finding goes by, for who may change it."""
        address = standard_address(finding.code) if self.may_set else None
        return [] if address is None else [Link("The shop's standard", address)]

    def _places(self, finding: Finding) -> list[Link]:
        links = []
        for label in finding.where:
            box = self._box(label) if finding.code in _OF_BOXES else None
            way = box or self._opening(label) or self._cabinet(label) or self._things.get(label)
            if way is not None:
                links.append(Link(f"Box of {label}" if box else label, way))
        if self.may_edit and finding.code in _OF_STOCK:
            links.append(Link("This job's stock", _to("job-stock", self.job)))
        return links

    def _cabinet(self, label: str) -> str | None:
        key = self.keys.cabinets.get(label) if self.may_edit else None
        return None if key is None else _to("cabinet-edit", self.job, key)

    def _opening(self, label: str) -> str | None:
        """The form of an opening, or of the opening that a front is in."""
        key = self.keys.openings.get(label)
        if key is None:
            key, _ = self.keys.fronts.get(label, (None, 0))
        name = "opening-edit" if self.may_edit else "opening-measured"
        return None if key is None else _to(name, self.job, key)

    def _box(self, label: str) -> str | None:
        if not self.may_edit or label not in self.keys.on_box:
            return None
        return _to("box-edit", self.job, *self.keys.fronts[label])


def _to(name: str, job: Job, *args: int | str) -> str:
    return reverse(f"fronts:{name}", args=(job.pk, *args))
