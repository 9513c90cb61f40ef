"""Which revision Undo takes back next, and which Redo does again."""

from collections.abc import Iterable
from dataclasses import dataclass

from shopjobs.models import Job, Person, Revision, Shop
from shopjobs.selectors import revisions_of

LOOKED_BACK = 300
"""Revisions among which the next step is sought."""


@dataclass(frozen=True, slots=True)
class Steps:
    """What a person can take back and do again; `theirs` is the last thing, if another did it.

    `redo` took back what is then done again: `again`.
    """

    undo: Revision | None
    redo: Revision | None
    again: Revision | None
    theirs: Revision | None


def steps_of(owner: Job | Shop, person: Person) -> Steps:
    """The next steps of a person; everybody goes through what they did themselves."""
    rows = revisions_of(owner).filter(can_undo=True).order_by("-pk").defer("changes")
    newest = list(rows.select_related("person")[:LOOKED_BACK])
    dead = taken_back(newest)
    alive = [revision for revision in newest if revision.pk not in dead]
    mine = [revision for revision in alive if revision.person_id == person.pk]
    deeds = [revision for revision in alive if revision.undoes_id is None]
    undo = next((revision for revision in mine if revision.undoes_id is None), None)
    redo = next((revision for revision in mine if _undone(revision, newest)), None)
    if redo is not None and undo is not None and undo.pk > redo.pk:
        redo = None
    last = deeds[0] if deeds else None
    theirs = last if last is not None and last.person_id != person.pk else None
    return Steps(undo, redo, _undone(redo, newest) if redo else None, theirs)


def taken_back(newest_first: Iterable[Revision]) -> set[int]:
    """The keys of those revisions that others, still in force, took back."""
    dead: set[int] = set()
    for revision in newest_first:
        if revision.undoes_id is not None and revision.pk not in dead:
            dead.add(revision.undoes_id)
    return dead


def is_taken_back(revision: Revision) -> bool:
    """Whether another that is still in force took it back."""
    return any(not is_taken_back(other) for other in revision.undone_by.defer("changes"))


def _undone(revision: Revision, among: Iterable[Revision]) -> Revision | None:
    """The deed that it took back, if it did; what took back an undo did that deed again."""
    undone = next((other for other in among if other.pk == revision.undoes_id), None)
    return undone if undone is not None and undone.undoes_id is None else None
