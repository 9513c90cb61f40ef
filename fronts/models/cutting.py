"""A cutting plan that was made, kept with what it was made from."""

from django.db import models


class PlanState(models.TextChoices):
    """How far a cutting plan has come."""

    WORKING = "working", "being worked out"
    DONE = "done", "made"
    FAILED = "failed", "given up"


class CutPlan(models.Model):
    """One run of the plan for all of a job's parts; `fingerprint` is that of the parts.

    `asked` and `found` are lists, an entry for each material and thickness; `found` grows
    while the plan is being worked out by its `task`, which goes a while after it has ended.
    `sawn_at` is when somebody said that all of it is sawn.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    task = models.OneToOneField(
        "shopjobs.BackgroundTask", on_delete=models.SET_NULL, null=True, related_name="+"
    )
    fingerprint = models.CharField(max_length=64)
    asked = models.JSONField()
    found = models.JSONField(default=list)
    state = models.CharField(max_length=7, choices=PlanState, default=PlanState.WORKING)
    fault = models.CharField(max_length=400, blank=True)
    made_by = models.ForeignKey("shopjobs.Person", on_delete=models.RESTRICT, related_name="+")
    started_at = models.DateTimeField()
    finished_at = models.DateTimeField(null=True, blank=True)
    sawn_at = models.DateTimeField(null=True, blank=True)
    sawn_by = models.ForeignKey(
        "shopjobs.Person", on_delete=models.RESTRICT, null=True, blank=True, related_name="+"
    )

    class Meta:
        indexes = [models.Index(fields=["job", "started_at"])]
        constraints = [
            models.UniqueConstraint(
                fields=["job"],
                condition=models.Q(state=PlanState.WORKING),
                name="one_plan_at_work_a_job",
            ),
        ]

    def __str__(self) -> str:
        return f"{self.job}, {self.started_at:%Y-%m-%d %H:%M}"
