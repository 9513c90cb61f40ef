"""A fitting sheet's code as it is frozen when the sheet is printed, without printing it."""

from datetime import date

from fronts.models import PrintedSheet
from fronts.sheets.job_source import source_of_job, with_codes_kept
from shopjobs.models import Job
from tests.factories import NOW


def frozen_code(job: Job, label: str, site: str = "") -> str:
    """The code of this cabinet's sheet as it would be printed now."""
    source = source_of_job(job, date(2027, 3, 1))
    kept = with_codes_kept(source, job, [label], site, NOW)
    (code,) = kept.first_printed
    return PrintedSheet.objects.get(job=job, label=label, code=code).code
