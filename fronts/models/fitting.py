"""On site: how fronts fitted, and which steps of the work on them are done."""

from django.db import models

from fronts.facts import WordsField, columns
from fronts.models.fronts import Front
from fronts.rules.fits import FitFacts as Facts
from fronts.rules.limits import LONGEST_NAME, LONGEST_STEP


class FitRecord(models.Model):
    """The gaps measured round one front once it hung.

    `label` is what the front was called then. It points at nothing where the front has gone
    since. `hung` is the short name of the front as it was: a front that is made or hung
    otherwise since has not been fitted so; "" where that was not noted. `planned_…` and
    `was_…` are what was measured against. `fitted_by_name` is who it was where a file names
    somebody who is not in the shop.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    front = models.ForeignKey(
        Front,
        null=True,
        blank=True,
        on_delete=models.SET_NULL,
        related_name="fits",
        db_index=False,  # `fits_latest_first` begins with it.
    )
    label = columns.words(Facts, "label")
    gap_left = columns.maybe_size(Facts, "gaps.left")
    gap_right = columns.maybe_size(Facts, "gaps.right")
    gap_top = columns.maybe_size(Facts, "gaps.top")
    gap_bottom = columns.maybe_size(Facts, "gaps.bottom")
    gap_left_top = columns.maybe_size(Facts, "gaps.left_top")
    gap_left_bottom = columns.maybe_size(Facts, "gaps.left_bottom")
    gap_right_top = columns.maybe_size(Facts, "gaps.right_top")
    gap_right_bottom = columns.maybe_size(Facts, "gaps.right_bottom")
    gap_top_left = columns.maybe_size(Facts, "gaps.top_left")
    gap_top_right = columns.maybe_size(Facts, "gaps.top_right")
    gap_bottom_left = columns.maybe_size(Facts, "gaps.bottom_left")
    gap_bottom_right = columns.maybe_size(Facts, "gaps.bottom_right")
    planned_left = columns.maybe_size(Facts, "planned.left")
    planned_right = columns.maybe_size(Facts, "planned.right")
    planned_top = columns.maybe_size(Facts, "planned.top")
    planned_bottom = columns.maybe_size(Facts, "planned.bottom")
    planned_left_top = columns.maybe_size(Facts, "planned.left_top")
    planned_left_bottom = columns.maybe_size(Facts, "planned.left_bottom")
    planned_right_top = columns.maybe_size(Facts, "planned.right_top")
    planned_right_bottom = columns.maybe_size(Facts, "planned.right_bottom")
    planned_top_left = columns.maybe_size(Facts, "planned.top_left")
    planned_top_right = columns.maybe_size(Facts, "planned.top_right")
    planned_bottom_left = columns.maybe_size(Facts, "planned.bottom_left")
    planned_bottom_right = columns.maybe_size(Facts, "planned.bottom_right")
    was_width = columns.maybe_size(Facts, "was.width")
    was_height = columns.maybe_size(Facts, "was.height")
    was_thickness = columns.maybe_size(Facts, "was.thickness")
    was_hinged = columns.words(Facts, "was.hinged")
    note = columns.words(Facts, "note")
    state = columns.words(Facts, "state")
    fitted_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )
    fitted_by_name = WordsField(max_length=LONGEST_NAME, blank=True)
    fitted_at = models.DateTimeField()
    fingerprint = models.CharField(max_length=64, blank=True)
    hung = models.CharField(max_length=64, blank=True)

    class Meta:
        # The state of a front is its latest record's: it is read in the index alone.
        indexes = [
            models.Index(fields=["front", "-fitted_at", "-id", "state"], name="fits_latest_first")
        ]

    def __str__(self) -> str:
        return f"{self.label}, {self.fitted_at:%Y-%m-%d}"

    @property
    def by(self) -> str:
        """The name of who recorded it; "" where no name is known."""
        return self.fitted_by.shown_name if self.fitted_by else self.fitted_by_name


class WorkTick(models.Model):
    """A step of the work on a front that somebody ticked off.

    `step` is its words as they were: a step that says something else since is another one.
    `ticked_by_name` is who it was where a file names somebody who is not in the shop.
    """

    front = models.ForeignKey(Front, on_delete=models.CASCADE, related_name="ticks")
    step = WordsField(max_length=LONGEST_STEP)
    ticked_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )
    ticked_by_name = WordsField(max_length=LONGEST_NAME, blank=True)
    ticked_at = models.DateTimeField()

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["front", "step"], name="step_ticked_once"),
        ]

    def __str__(self) -> str:
        return self.step

    @property
    def by(self) -> str:
        """The name of who ticked it off; "" where no name is known."""
        return self.ticked_by.shown_name if self.ticked_by else self.ticked_by_name
