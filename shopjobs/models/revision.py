"""What was done, by whom and when, and what brings back the state before it."""

from django.conf import settings
from django.db import models

from shopjobs.models.job import Job
from shopjobs.models.shop import Shop


class Revision(models.Model):
    """One thing that somebody did; it outlives the job and the person that it names.

    `changes` are the rows that it made, changed or deleted, each with its values before and
    after, as `services.recording` writes them. `about` names the cabinet that it concerns,
    where it is one. `went` says what went with something that was taken away, as it was then.
    A revision that `undoes` another took that one back.
    """

    shop = models.ForeignKey(Shop, on_delete=models.CASCADE, related_name="revisions")
    job = models.ForeignKey(
        Job, on_delete=models.SET_NULL, null=True, blank=True, related_name="revisions"
    )
    person = models.ForeignKey(
        settings.AUTH_USER_MODEL, on_delete=models.SET_NULL, null=True, blank=True, related_name="+"
    )
    at = models.DateTimeField()
    text = models.CharField(max_length=500)
    about = models.CharField(max_length=40, blank=True)
    changes = models.JSONField(default=list)
    went = models.JSONField(default=list)
    can_undo = models.BooleanField(default=False)
    undoes = models.ForeignKey(
        "self", on_delete=models.SET_NULL, null=True, blank=True, related_name="undone_by"
    )

    class Meta:
        indexes = [
            models.Index(fields=["shop", "-at"], name="revisions_by_time"),
            models.Index(fields=["job", "-id"], name="revisions_of_job"),
        ]

    def __str__(self) -> str:
        return f"{self.at:%Y-%m-%d %H:%M} {self.text}"

    @property
    def who(self) -> str:
        """Who did it, as others read the name."""
        return "somebody" if self.person is None else self.person.shown_name
