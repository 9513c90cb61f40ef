"""What fronts were cut as: frozen when somebody marked them as cut."""

from django.db import models

from fronts.facts import WordsField, columns
from fronts.models.fronts import Front
from fronts.rules.cut_fronts import CutTo as Facts
from fronts.rules.limits import LONGEST_NAME


class FrontCut(models.Model):
    """The size that a front was cut to, where it was in its cabinet, and how it was made.

    A later change of the kitchen changes nothing of it: it says what is to be trimmed, or made
    again. Cuts from before it was noted how a front is made have no build. `cut_by_name` is who
    it was where a file names somebody who is not in the shop.
    """

    front = models.OneToOneField(Front, on_delete=models.CASCADE, related_name="cut")
    width = columns.size(Facts, "width")
    height = columns.size(Facts, "height")
    thickness = columns.size(Facts, "thickness")
    left = columns.size(Facts, "left")
    bottom = columns.size(Facts, "bottom")
    build = columns.word(Facts, "build")
    material = columns.words(Facts, "material")
    grain = columns.word(Facts, "grain")
    frame_left = columns.maybe_size(Facts, "frame.left")
    frame_right = columns.maybe_size(Facts, "frame.right")
    frame_top = columns.maybe_size(Facts, "frame.top")
    frame_bottom = columns.maybe_size(Facts, "frame.bottom")
    glass = columns.flag(Facts, "glass")
    hinged = columns.word(Facts, "hinged")
    on_hand = columns.flag(Facts, "on_hand")
    cut_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )
    cut_by_name = WordsField(max_length=LONGEST_NAME, blank=True)
    cut_at = models.DateTimeField()

    def __str__(self) -> str:
        return f"{self.front}, cut"

    @property
    def by(self) -> str:
        """The name of who marked it; "" where no name is known."""
        return self.cut_by.shown_name if self.cut_by else self.cut_by_name
