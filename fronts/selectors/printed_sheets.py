"""What printed sheets showed, by their codes."""

from collections.abc import Mapping
from datetime import datetime

from django.db.models import QuerySet

from fronts.models import PrintedSheet
from shopjobs.models import Job, Shop


def sheets_with_code(shop: Shop, code: str) -> QuerySet[PrintedSheet]:
    """The shop's sheets under this code, the latest first: one, but for a copied job's.

    Another shop's sheets do not exist.
    """
    jobs = Job.objects.filter(shop=shop)
    rows = PrintedSheet.objects.filter(job__in=jobs, code=code)
    return rows.select_related("job", "cabinet").order_by("-printed_at", "-pk")


def first_printed(job: Job) -> Mapping[str, datetime]:
    """When sheets of the job were printed first, by their codes."""
    rows = PrintedSheet.objects.filter(job=job).order_by("-printed_at")
    return dict(rows.values_list("code", "printed_at"))
