"""How far a job has come, as whoever knows its kitchen says it to the list of jobs."""

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Count:
    """So many of all that there are."""

    done: int = 0
    of: int = 0


@dataclass(frozen=True, slots=True)
class Standing:
    """The word of the stage that a job is at; whether it is done, and whether it is late."""

    stage: str
    is_done: bool
    is_late: bool


@dataclass(frozen=True, slots=True)
class Standings:
    """How jobs stand, by their keys: those in which something is left to do; else `over`."""

    left: Mapping[int, Standing]
    over: Standing

    def of(self, key: int) -> Standing:
        """How one of the jobs stands that were asked for."""
        return self.left.get(key, self.over)


@dataclass(frozen=True, slots=True)
class JobProgress:
    """How a job stands: its `stage` in words, what it waits for, and its open snags.

    `order` counts the lines of the hardware order that were checked, `made` the fronts that
    were cut or came, `fitted` those that are done. `late` says by its dates at what it is late.
    """

    standing: Standing
    stage: str
    waits_for: str
    snags: str
    order: Count
    made: Count
    fitted: Count
    late: str = ""
