"""Snags: what is wrong on a job, and whether it is settled."""

from django.db import models

from fronts.facts import WordsField, columns
from fronts.models.cabinets import Cabinet
from fronts.models.fronts import Front
from fronts.rules.limits import LONGEST_NAME
from fronts.rules.snags import SnagFacts as Facts
from fronts.rules.snags import on_words


class Snag(models.Model):
    """What is wrong on a front, a cabinet or the whole job, until it is done.

    `label` is what the front or cabinet was called then. It points at nothing where that has
    gone since; one on a front points at its cabinet too. A `…_name` is who it was where a file
    names somebody who is not in the shop.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    cabinet = models.ForeignKey(
        Cabinet, null=True, blank=True, on_delete=models.SET_NULL, related_name="snags"
    )
    front = models.ForeignKey(
        Front, null=True, blank=True, on_delete=models.SET_NULL, related_name="snags"
    )
    of = columns.word(Facts, "of")
    label = columns.words(Facts, "label")
    words = columns.words(Facts, "words")
    due = models.DateField(null=True, blank=True)
    assigned_to = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )
    assigned_to_name = WordsField(max_length=LONGEST_NAME, blank=True)
    raised_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )
    raised_by_name = WordsField(max_length=LONGEST_NAME, blank=True)
    raised_at = models.DateTimeField()
    done_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )
    done_by_name = WordsField(max_length=LONGEST_NAME, blank=True)
    done_at = models.DateTimeField(null=True, blank=True)
    done_note = columns.words(Facts, "done_note")
    changed_at = models.DateTimeField()

    def __str__(self) -> str:
        return f"Snag on {self.on}"

    @property
    def on(self) -> str:
        """What it is on, as that was called then: `front B1.a`, `the whole job`."""
        return on_words(self.of, self.label)

    @property
    def by(self) -> str:
        """The name of who wrote it down; "" where no name is known."""
        return self.raised_by.shown_name if self.raised_by else self.raised_by_name

    @property
    def who(self) -> str:
        """The name of who is to settle it; "" where nobody is yet."""
        return self.assigned_to.shown_name if self.assigned_to else self.assigned_to_name

    @property
    def settled_by(self) -> str:
        """The name of who settled it; "" where no name is known."""
        return self.done_by.shown_name if self.done_by else self.done_by_name
