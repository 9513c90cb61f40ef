"""What is still to be settled of jobs, in words, for whoever looks at their list."""

from django.db.models import QuerySet

from fronts.selectors.dates import late_words_by_job
from fronts.selectors.snags import open_snags_by_job
from shopjobs.models import Job


def to_settle_by_job(jobs: QuerySet[Job]) -> dict[int, str]:
    """`late at cutting; 2 snags, 1 late`, by the jobs' keys; nothing of a job without either."""
    late, snags = late_words_by_job(jobs), open_snags_by_job(jobs)
    return {
        key: "; ".join(each[key] for each in (late, snags) if key in each)
        for key in late.keys() | snags.keys()
    }
