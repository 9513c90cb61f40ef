"""What fronts of a job were cut as."""

from collections.abc import Mapping

from fronts.facts.rows import from_row
from fronts.models import FrontCut
from fronts.rules.cut_fronts import CutTo
from shopjobs.models import Job


def cuts_of(job: Job, keys: Mapping[str, int]) -> dict[str, FrontCut]:
    """The fronts that were cut, by their labels; `keys` are those of the job's fronts by these."""
    rows = FrontCut.objects.filter(front__opening__cabinet__job=job).select_related("cut_by")
    cut = {row.front_id: row for row in rows}
    return {label: cut[key] for label, key in keys.items() if key in cut}


def cut_to_of(row: FrontCut) -> CutTo:
    """What was kept."""
    return from_row(CutTo, row)
