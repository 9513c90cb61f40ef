"""What was done, by whom and when."""

from django.conf import settings
from django.db import models

from shopjobs.models.job import Job
from shopjobs.models.shop import Shop


class DiaryEntry(models.Model):
    """One line of a shop's diary; it outlives the job and the person that it names."""

    shop = models.ForeignKey(Shop, on_delete=models.CASCADE, related_name="diary")
    job = models.ForeignKey(
        Job, on_delete=models.SET_NULL, null=True, blank=True, related_name="diary"
    )
    person = models.ForeignKey(
        settings.AUTH_USER_MODEL, on_delete=models.SET_NULL, null=True, blank=True, related_name="+"
    )
    at = models.DateTimeField()
    text = models.CharField(max_length=500)

    class Meta:
        indexes = [models.Index(fields=["shop", "-at"], name="diary_by_time")]

    def __str__(self) -> str:
        return f"{self.at:%Y-%m-%d %H:%M} {self.text}"
