"""What one level says of the house standard, from its columns."""

from fronts.facts.rows import from_row
from fronts.models import ShopStandard
from fronts.models.standard import StandardFields
from fronts.rules.standard_keys import Standard
from fronts.rules.standards import EMPTY, merge
from shopjobs.models import Job


def standard_of(level: StandardFields | None) -> Standard:
    """What one level says."""
    if level is None:
        return EMPTY
    said = from_row(Standard, level)
    return EMPTY if said == EMPTY else said


def standard_if(job: Job, said: Standard) -> Standard:
    """What would hold in a job's kitchen if the job said this: what it leaves, its shop says."""
    shop_level = ShopStandard.objects.filter(shop_id=job.shop_id).first()
    return merge(said, standard_of(shop_level))
