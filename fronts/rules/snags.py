"""Snags: what is wrong and must be settled, on a front, a cabinet or the whole job."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, datetime
from typing import Annotated, Literal, TypeAlias

from fronts.rules.fact_kinds import Day, Label, Text, Word
from fronts.rules.limits import LONGEST_FRONT_LABEL, LONGEST_NOTE

SnagOf: TypeAlias = Literal["front", "cabinet", "job"]
OF: Mapping[SnagOf, str] = {"front": "a front", "cabinet": "a cabinet", "job": "the whole job"}


@dataclass(frozen=True, slots=True)
class SnagFacts:
    """What is wrong, on what, and until when it must be settled.

    `label` is what the front or cabinet was called then, "" for the whole job. `done_note`
    says what was done about it.
    """

    of: Annotated[SnagOf, Word("on", OF)]
    words: Annotated[str, Label("what is wrong", LONGEST_NOTE, example="a scratch")]
    label: Annotated[str, Text("called", LONGEST_FRONT_LABEL)] = ""
    due: Annotated[date | None, Day("to be settled by")] = None
    done_note: Annotated[str, Text("what was done", LONGEST_NOTE)] = ""


@dataclass(frozen=True, slots=True)
class SnagDone:
    """When a snag was settled, and by whom."""

    at: datetime
    by: str = ""


@dataclass(frozen=True, slots=True)
class RecordedSnag:
    """A snag: written down when and by whom, changed last, to be settled by whom (`who`).

    `front` and `cabinet` are what they are called now, "" where they have gone or it is of none.
    """

    facts: SnagFacts
    at: datetime
    changed: datetime
    by: str = ""
    front: str = ""
    cabinet: str = ""
    who: str = ""
    done: SnagDone | None = None


def on_words(of: str, label: str) -> str:
    """What a snag is on: `front B1.a`, `the whole job`."""
    return f"{of} {label}" if label else "the whole job"


@dataclass(frozen=True, slots=True)
class OpenSnags:
    """How many snags are open, and how many of them are late."""

    count: int = 0
    late: int = 0

    @property
    def words(self) -> str:
        """`2 snags, 1 late`; "" where none is open."""
        if not self.count:
            return ""
        snags = f"{self.count} snag{'' if self.count == 1 else 's'}"
        return f"{snags}, {self.late} late" if self.late else snags


NO_SNAGS = OpenSnags()


def is_late(due: date | None, today: date) -> bool:
    """From the day after the one by which it was to be settled."""
    return due is not None and due < today


def open_snags(dues: Iterable[date | None], today: date) -> OpenSnags:
    """The snags that are open, each with the day by which it is to be settled."""
    late = [is_late(due, today) for due in dues]
    return OpenSnags(len(late), sum(late))
