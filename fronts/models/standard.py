"""The house standard: what the shop, a job, a cabinet or an opening says about its fronts."""

from django.db import models

from fronts.facts import WordsField, columns
from fronts.models.kept import Kept
from fronts.rules.kitchen import KindStandard as KindFacts
from fronts.rules.limits import LONGEST_MATERIAL
from fronts.rules.standard_keys import Standard


class StandardFields(models.Model):
    """Every key of the house standard; None (mount: "") leaves it to the farther level.

    The columns are the declaration's: a new key of the standard needs only its migration.
    """

    class Meta:
        abstract = True


for _name, _column in columns.of_all(Standard).items():
    StandardFields.add_to_class(_name, _column)


class SharedStandard(StandardFields):
    """A standard that holds for a whole shop or job, with the shop's tables beside it.

    The tables' rows carry exact numbers as text; None leaves them to the farther level.
    """

    hinges_by_height = models.JSONField(null=True, blank=True)
    hinges_by_weight = models.JSONField(null=True, blank=True)
    slide_classes = models.JSONField(null=True, blank=True)
    material = WordsField(max_length=LONGEST_MATERIAL, blank=True)
    frame_material = WordsField(max_length=LONGEST_MATERIAL, blank=True)

    class Meta:
        abstract = True


class KindStandard(StandardFields, Kept):
    """What all cabinets of one kind in a job do otherwise than the job."""

    facts, owner = KindFacts, "job"

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    kind = columns.word(KindFacts, "kind")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["job", "kind"], name="kind_standard_in_job"),
        ]

    def __str__(self) -> str:
        return f"{self.get_kind_display()} cabinets"


class ShopStandard(SharedStandard):
    """How this shop makes its fronts where nobody says otherwise."""

    shop = models.OneToOneField("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")

    def __str__(self) -> str:
        return f"Standard of {self.shop}"


class JobStandard(SharedStandard):
    """What one job does otherwise."""

    job = models.OneToOneField("shopjobs.Job", on_delete=models.CASCADE, related_name="+")

    def __str__(self) -> str:
        return f"Standard of {self.job}"
