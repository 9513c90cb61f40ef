"""What the hardware list held when somebody began to go through it."""

from fronts.models import OrderList
from shopjobs.models import Job


def items_known(job: Job) -> frozenset[str] | None:
    """The items that are not new, or None while nobody has checked a line."""
    begun = OrderList.objects.filter(job=job).first()
    return None if begun is None else frozenset(begun.items)
