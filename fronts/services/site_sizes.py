"""Sizes of an opening as they are taken on site, one at a time."""

from dataclasses import replace
from datetime import datetime

from fronts.models import Opening
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.site_sizes import with_size
from fronts.rules.size_questions import question_words, size_question
from fronts.rules.validity import measured_faults
from fronts.services.openings import opening_change
from fronts.services.saving import AskFirst
from fronts.snapshot.things import at_hand
from shopjobs.models import Person
from shopjobs.services.recording import recorded


@recorded
def size_measure(
    *,
    opening: Opening,
    name: str,
    length: Mm | None,
    pair: Mm | None,
    kitchen: Kitchen,
    confirmed: bool,
    at: datetime,
    by: Person | None = None,
) -> Opening:
    """Keep one size of an opening; what looks misread is asked about until it is `confirmed`.

    `kitchen` is the opening's, with the shop's numbers; `pair` the other diagonal where that was
    taken just before. The first of two diagonals is checked and asked about like any size, but
    kept only together with the second.
    """
    facts = at_hand(opening)
    measured = with_size(facts.measured, name, length, pair)
    if length is not None and not confirmed:
        job = kitchen.job
        question = size_question(facts, name, length, pair, kitchen.practice, job.step)
        if question is not None:
            raise AskFirst(question_words(question, length, job.unit), ())
    if measured_faults(measured):
        return opening
    return opening_change(opening=opening, facts=replace(facts, measured=measured), at=at, by=by)
