"""A job's kitchen as it was once: later changes are taken back, looked at, and put back."""

from django.db import transaction
from django.db.models import Q

from fronts.rules.kitchen import Kitchen
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Revision
from shopjobs.services.recording import unkept
from shopjobs.services.undo import take_back


def kitchen_after(job: Job, revision: Revision) -> Kitchen:
    """The kitchen as a revision left it, with the shop's ways as they were then.

    Every later change is taken back within a transaction that is then rolled back, so that
    what is shown comes from rows like any other kitchen.
    """
    later = Revision.objects.filter(
        Q(job=job) | Q(shop=job.shop_id, job=None), pk__gt=revision.pk, can_undo=True
    )
    with transaction.atomic(), unkept():
        for each in later.order_by("-pk").iterator(chunk_size=50):
            take_back(each)
        kitchen = kitchen_of(Job.with_deleted.select_related("shop").get(pk=job.pk))
        transaction.set_rollback(True)
    return kitchen
