"""Whatever changes a kitchen is counted: what a job needs is remembered by that count."""

import random
from dataclasses import replace
from fractions import Fraction

from fronts.models import CutPlan
from fronts.selectors.needed import needs_of, wanted_by
from fronts.selectors.schedules import schedule_of
from fronts.services.imports import job_import
from shopjobs.models import Job, Person, Shop
from tests.factories import NOW
from tests.history.shop_deeds import DEEDS_OF_SHOP
from tests.history.states import DEEDS, do
from tests.kitchen_files import demo_kitchen
from tests.pages.buy.planned import planned


def test_what_is_remembered_is_what_is_needed(shop: Shop, owner: Person) -> None:
    """After every deed that there is, on the job or for the whole shop."""
    job, chance = job_import(kitchen=demo_kitchen(), shop=shop, at=NOW, by=owner), random.Random(7)
    planned(job, owner)
    for deed in (*DEEDS, *DEEDS_OF_SHOP):
        do(deed, job, owner, chance)
        now = Job.objects.select_related("shop").get(pk=job.pk)
        plan = CutPlan.objects.filter(job=job).first()

        # What was decided and sent for is asked anew each time; what stays ordered though it is
        # not needed any more is none of the needs.
        found = [
            replace(each, covered=Fraction(0), ordered=None)
            for each in wanted_by([now])
            if each.need != 0
        ]
        assert found == list(needs_of(schedule_of(now), plan)), deed
