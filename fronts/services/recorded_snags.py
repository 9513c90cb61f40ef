"""Snags that a file brings: those that are new, and none of them twice."""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from fronts.facts.rows import columns_of
from fronts.models import Cabinet, Snag
from fronts.rules.snags import RecordedSnag
from fronts.selectors.kitchens import front_keys_of
from fronts.services.recorded_names import Who, named, who_of
from fronts.services.saving import checked_at, enter, saved
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class SnagStood:
    """What the front and the cabinet of a snag were called before a file replaced them."""

    front: str = ""
    cabinet: str = ""


@dataclass(frozen=True, slots=True)
class Same:
    """What makes two snags the same one, whatever was said of it since."""

    at: datetime
    who: Who
    of: str
    label: str


def snags_stood(job: Job) -> dict[int, SnagStood]:
    """Where each snag of the job stands, by its key."""
    called = {key: label for label, key in front_keys_of(job).items()}
    rows = Snag.objects.filter(job=job).values_list("pk", "front", "cabinet__label")
    return {
        key: SnagStood(called.get(front or 0, ""), cabinet or "") for key, front, cabinet in rows
    }


def snags_add(
    job: Job,
    snags: Iterable[RecordedSnag],
    people: Mapping[str, int],
    before: Mapping[int, SnagStood],
) -> None:
    """Of a snag that is there already the later word holds; none that is there is lost.

    One that the file does not hold finds its front and cabinet by what they were called `before`.
    """
    places = _Places(job)
    new: dict[Same, list[RecordedSnag]] = defaultdict(list)
    for said in dict.fromkeys(snags):
        who = people.get(said.by, said.by)
        new[Same(said.at, who, said.facts.of, said.facts.label)].append(said)
    for row in Snag.objects.filter(job=job).order_by("raised_at", "pk"):
        same = new.get(_same(row, people), [])
        if same:
            said = same.pop(0)
            later = said.changed > row.changed_at
            enter(row, places.of(said.front, said.cabinet))
            enter(row, _columns(said, people) if later else {})
        else:
            stood = before.get(row.pk, SnagStood())
            enter(row, places.of(stood.front, stood.cabinet))
        saved(row)
    for one, said in ((one, each) for one, several in new.items() for each in several):
        row = Snag(job=job, raised_at=one.at, **named("raised_by", one.who))
        enter(row, places.of(said.front, said.cabinet) | _columns(said, people))
        checked_at(row, f"snag on {row.on}, {row.raised_at:%Y-%m-%d %H:%M}")
        saved(row)


class _Places:
    """The job's fronts and cabinets by what they are called."""

    def __init__(self, job: Job) -> None:
        self._fronts = front_keys_of(job)
        self._cabinets = dict(Cabinet.objects.filter(job=job).values_list("label", "pk"))

    def of(self, front: str, cabinet: str) -> dict[str, Any]:
        """The columns that point at them; at nothing where there are none."""
        return {"front_id": self._fronts.get(front), "cabinet_id": self._cabinets.get(cabinet)}


def _columns(said: RecordedSnag, people: Mapping[str, int]) -> dict[str, Any]:
    done = said.done
    by = named("done_by", people.get(done.by, done.by) if done else "")
    at = {"done_at": done.at if done else None, "changed_at": said.changed}
    who = named("assigned_to", people.get(said.who, said.who))
    return {**columns_of(said.facts), **who, **by, **at}


def _same(row: Snag, people: Mapping[str, int]) -> Same:
    who = who_of(row.raised_by_id, row.raised_by_name, people)
    return Same(row.raised_at, who, row.of, row.label)
