"""Where history is read and taken back, of a job or of the shop."""

from django.urls import reverse

from shopjobs.models import Job, Shop


def undo_address(owner: Job | Shop) -> str:
    """Where what was done is taken back."""
    return _address(owner, "undo")


def history_address(owner: Job | Shop) -> str:
    """Where what was done is read."""
    return _address(owner, "history")


def _address(owner: Job | Shop, what: str) -> str:
    if isinstance(owner, Job):
        return reverse(f"fronts:job-{what}", args=[owner.pk])
    return reverse(f"fronts:shop-{what}")
