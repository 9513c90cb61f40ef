"""A cabinet's face, said as a whole: openings that it keeps, changes, gets and loses."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import datetime
from difflib import SequenceMatcher
from itertools import zip_longest

from fronts.models import Cabinet, Opening
from fronts.rules.kitchen import Opening as OpeningFacts
from fronts.rules.opening_labels import free_labels
from fronts.services.openings import opening_change, opening_create, opening_delete
from fronts.services.saving import job_changed
from fronts.snapshot.things import at_hand
from shopjobs.models import Person
from shopjobs.services.recording import recorded


@recorded
def face_change(
    *, cabinet: Cabinet, openings: Sequence[OpeningFacts], at: datetime, by: Person | None = None
) -> Cabinet:
    """Let these openings, from the top, be the cabinet's.

    Those that are closed as one that was there keep its label, and what is decided about its
    fronts; boxes stay behind fronts that stay.
    """
    rows = sorted(_rows(cabinet), key=lambda row: (-row.y, row.x))
    pairs = list(_pairs(rows, openings))
    for row, facts in pairs:
        if row is not None and facts is None:
            opening_delete(opening=row, at=at, by=by)
    labels = free_labels(row.label for row, facts in pairs if row is not None and facts is not None)
    for row, facts in pairs:
        if row is not None and facts is not None:
            opening_change(opening=row, facts=_as_before(row, facts), at=at, by=by)
        elif facts is not None:
            opening_create(cabinet=cabinet, facts=replace(facts, label=next(labels)), at=at, by=by)
    text = f"Changed the face of cabinet {cabinet.label}"
    job_changed(job=cabinet.job, text=text, by=by, at=at, about=cabinet)
    return cabinet


def _rows(cabinet: Cabinet) -> list[Opening]:
    rows = list(Opening.objects.filter(cabinet=cabinet))
    for row in rows:
        row.cabinet = cabinet
    return rows


def _pairs(
    rows: Sequence[Opening], openings: Sequence[OpeningFacts]
) -> Iterator[tuple[Opening | None, OpeningFacts | None]]:
    """Which opening goes on as which: those closed alike, then those in each other's place."""
    was = [row.closed_by for row in rows]
    now = [opening.closed_by for opening in openings]
    for _, i, j, k, n in SequenceMatcher(None, was, now, autojunk=False).get_opcodes():
        yield from zip_longest(rows[i:j], openings[k:n])


def _as_before(row: Opening, facts: OpeningFacts) -> OpeningFacts:
    """The opening as said, with what is decided besides where it is closed as it was."""
    held: OpeningFacts = at_hand(row)
    if held.closed_by != facts.closed_by:
        return replace(facts, label=held.label, measured=held.measured, standard=held.standard)
    fronts = tuple(
        said if before is None
        else replace(before, own_height=said.own_height, hinged=said.hinged)
        for before, said in zip_longest(held.fronts[: len(facts.fronts)], facts.fronts)
    )  # fmt: skip
    return replace(
        held, x=facts.x, y=facts.y, width=facts.width, height=facts.height, fronts=fronts
    )
