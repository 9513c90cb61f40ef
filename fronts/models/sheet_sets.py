"""All the sheets of a job, printed by a worker and kept for a day."""

from django.db import models


class SheetSet(models.Model):
    """A set and the kitchen as it was when somebody asked for it, as a job file.

    So that all its sheets agree, whoever changes what meanwhile; `fingerprint` is that of its
    schedule. `site` is the address to which its sheets lead, "" where they lead nowhere. `sheets`
    counts the file of all fitting sheets too, which is put together when somebody asks for it.
    It goes with its task.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    task = models.OneToOneField(
        "shopjobs.BackgroundTask", on_delete=models.CASCADE, related_name="+"
    )
    kitchen = models.TextField()
    fingerprint = models.CharField(max_length=64)
    plan = models.ForeignKey("CutPlan", on_delete=models.SET_NULL, null=True, related_name="+")
    paper = models.CharField(max_length=6)
    site = models.CharField(max_length=300, blank=True)
    printed_on = models.DateField()
    sheets = models.PositiveIntegerField()

    def __str__(self) -> str:
        return f"{self.job}, {self.printed_on}"


class SheetFile(models.Model):
    """A PDF of a set; `cabinet` is the label of the one whose fitting sheet it is.

    `made_from` is the short name of all that it was made from: the same from there is the same PDF.
    """

    sheet_set = models.ForeignKey(SheetSet, on_delete=models.CASCADE, related_name="files")
    name = models.CharField(max_length=100)
    cabinet = models.CharField(max_length=200, blank=True)
    made_from = models.CharField(max_length=64, blank=True, db_index=True)
    content = models.BinaryField()

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["sheet_set", "name"], name="sheet_once_a_set"),
        ]

    def __str__(self) -> str:
        return self.name
