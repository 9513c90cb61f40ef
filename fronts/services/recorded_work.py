"""Cuts and ticks of fronts: those of the kitchen that a file replaces, and those that it brings."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from fronts.facts.rows import columns_of
from fronts.models import FrontCut, WorkTick
from fronts.rules.records import Records
from fronts.selectors.kitchens import front_keys_of
from fronts.services.recorded_names import named
from fronts.services.saving import checked_at
from shopjobs.models import Job
from shopjobs.services.recording import made

Work = type[FrontCut] | type[WorkTick]
_TABLES: tuple[Work, ...] = (FrontCut, WorkTick)


@dataclass(frozen=True, slots=True)
class WorkStood:
    """A row of one of these tables: what its front was called, and its other columns."""

    table: Work
    front: str
    said: dict[str, Any]

    @property
    def what(self) -> tuple[Work, str, str]:
        """What there is one of: a front's cut, a step of a front."""
        return self.table, self.front, self.said.get("step", "")

    def row(self, keys: Mapping[str, int]) -> FrontCut | WorkTick:
        """It as a row of the front that is called so now."""
        return self.table(front_id=keys[self.front], **self.said)

    def goes_before(self, other: "WorkStood") -> bool:
        """Whether it holds, of two of the same: the later cut; who ticked a step off first."""
        if self.table is FrontCut:
            return bool(self.said["cut_at"] > other.said["cut_at"])
        return bool(self.said["ticked_at"] < other.said["ticked_at"])


def work_stood(job: Job) -> tuple[WorkStood, ...]:
    """Every cut and tick of the job's fronts, before a file replaces them."""
    called = {key: label for label, key in front_keys_of(job).items()}
    return tuple(
        WorkStood(table, called[row.front_id], _said(row))
        for table in _TABLES
        for row in table._default_manager.filter(front__in=called).order_by("pk")
    )


def work_add(
    job: Job, records: Records, people: Mapping[str, int], stood: Iterable[WorkStood]
) -> None:
    """What stood there, and what a file brings beside it, none of it twice.

    They are those of the fronts that are called so now; what is called so no more is gone.
    """
    keys = front_keys_of(job)
    held = {one.what: one for one in stood}
    for one in _brought(records, people):
        there = held.get(one.what)
        if there is None or one.goes_before(there):
            checked_at(one.row(keys), f"{_CALLED[one.table]} of {one.front}")
            held[one.what] = one
    for table in _TABLES:
        ours = (one for one in held.values() if one.table is table and one.front in keys)
        made(table, [one.row(keys) for one in ours])


def _brought(records: Records, people: Mapping[str, int]) -> Iterator[WorkStood]:
    for cut in records.cuts:
        who = named("cut_by", people.get(cut.by, cut.by))
        yield WorkStood(FrontCut, cut.front, {**columns_of(cut.facts), **who, "cut_at": cut.at})
    for tick in records.ticks:
        who = named("ticked_by", people.get(tick.by, tick.by))
        said = {"step": tick.step, **who, "ticked_at": tick.at}
        yield WorkStood(WorkTick, tick.front, said)


def _said(row: FrontCut | WorkTick) -> dict[str, Any]:
    columns = (column.attname for column in row._meta.concrete_fields)
    return {name: getattr(row, name) for name in columns if name not in ("id", "front_id")}


_CALLED: Mapping[Work, str] = {FrontCut: "cut", WorkTick: "tick"}
