"""How far jobs have come, counted from their rows."""

from datetime import timedelta

from django.utils import timezone
from pytest_django import DjangoAssertNumQueries

from fronts.models import (
    ApprovedLine,
    Front,
    OrderApproval,
    OrderCheck,
    OrderList,
    OrderSending,
    SentLine,
)
from fronts.models.shelf import GIVEN_BACK
from fronts.rules.snags import SnagFacts
from fronts.selectors.approved_items import buying_names_of
from fronts.selectors.job_counts import counts_of
from fronts.selectors.job_progress import progress_of, standings_of
from fronts.selectors.order_progress import order_progress
from fronts.services.dates import stage_begin
from fronts.services.snags import snag_raise
from shopjobs.job_progress import Count, JobProgress
from shopjobs.models import Job, Person, Shop
from shopjobs.services.jobs import job_delete
from tests.factories import NOW, JobFactory
from tests.ordering import approved, sent_to
from tests.shopjobs.kitchens import cut, done_kitchen, fitted, kitchen
from tests.stocked import counted, moved


def progress(job: Job) -> JobProgress:
    """How far the job has come; what a list says of all jobs agrees with it."""
    found = progress_of([job])[job.pk]
    assert standings_of(Job.objects.filter(pk=job.pk)).of(job.pk) == found.standing
    return found


def test_a_job_comes_from_measuring_to_done(job: Job, owner: Person) -> None:
    """Each stage by what was recorded; the latest record of a front is the one that counts."""
    assert progress(job).stage == "to measure"

    left, right = kitchen(job)
    found = progress(job)
    assert (found.stage, found.made, found.fitted) == ("to cut", Count(0, 2), Count(0, 2))

    cut(job, owner, "B1.a")
    assert progress(job).made == Count(1, 2)
    assert progress(job).waits_for == "1 front to cut or to come"

    fitted(right, owner, "to-adjust")
    assert progress(job).stage == "to cut"
    fitted(right, owner, "done", 1)
    found = progress(job)
    assert (found.stage, found.made, found.fitted) == ("to fit", Count(2, 2), Count(1, 2))

    fitted(left, owner)
    assert progress(job).stage == "done"
    fitted(left, owner, "to-remake", 1)
    found = progress(job)
    assert (found.fitted, found.waits_for) == (Count(1, 2), "1 front to fit, 1 with a problem")
    fitted(left, owner, "done", 2)

    facts = SnagFacts("job", "paint on the floor")
    snag_raise(job=job, facts=facts, by=owner, at=NOW)
    assert (progress(job).stage, progress(job).snags) == ("to settle", "1 snag")


def test_what_is_there_already_need_not_be_cut(job: Job) -> None:
    """A front made of a door on hand, or one of a size of its own that exists."""
    kitchen(job)
    Front.objects.update(choose=True)

    found = progress(job)

    assert (found.stage, found.made, found.fitted) == ("to fit", Count(0, 0), Count(0, 2))


def test_lines_of_the_order_count_once_somebody_began(job: Job, owner: Person) -> None:
    """Those that stood on it then, and those that were checked beside them."""
    assert progress(job).order == Count(0, 0)
    OrderList.objects.create(job=job, items=["hinge", "slide"])
    for item in ("hinge", "knob"):
        OrderCheck.objects.create(job=job, item=item, need=1, checked_at=NOW, checked_by=owner)

    assert progress(job).order == Count(2, 3)


def test_a_job_that_is_deleted_meanwhile_is_no_fault(job: Job, owner: Person) -> None:
    """A list may hold it a moment longer."""
    job_delete(job=job, by=owner, at=timezone.now())

    assert progress_of([job])[job.pk].late == ""


def test_late_is_what_is_past_and_not_done(shop: Shop, owner: Person) -> None:
    """By the day on which it was to be fitted."""
    yesterday = timezone.localdate() - timedelta(days=1)
    late, done = (JobFactory.create(shop=shop, fit_on=yesterday) for _ in range(2))
    done_kitchen(done, owner)

    assert progress(late).standing.is_late
    assert not progress(done).standing.is_late


def test_what_it_is_at_and_what_it_is_late_at_agree(job: Job, owner: Person) -> None:
    """Entered, approved and sent: each ends the stages before it, in the list as by its dates."""
    job.fit_on = timezone.localdate()
    job.save()
    found = progress(job)
    assert (found.stage, found.late) == ("to measure", "late at measuring")

    kitchen(job)
    found = progress(job)
    assert (found.stage, found.late) == ("to cut", "late at ordering")

    stage_begin(job=job, stage="measure", on=timezone.localdate(), by=owner, at=NOW)
    found = progress(job)
    assert found.stage == "to measure"
    assert found.late in ("late at measuring", "will be late")

    lines = [ApprovedLine(item="hinge", amount=8, facts={}), ApprovedLine(item="k", amount=2,
             facts={})]  # fmt: skip
    approval = OrderApproval.objects.create(
        job=job, kind="order", approved_by=owner, approved_at=NOW
    )
    for line in lines:
        line.approval = approval
        line.save()
    found = progress(job)
    assert (found.stage, found.late) == ("to cut", "late at ordering")

    sending = OrderSending.objects.create(
        job=job, supplier="Northfield", sent_on=NOW.date(), sent_by=owner, sent_at=NOW
    )
    SentLine.objects.create(sending=sending, item="hinge", amount=8)
    assert progress(job).late == "late at ordering"
    SentLine.objects.create(sending=sending, item="k", amount=2)
    assert progress(job).late == "late at cutting"


def test_what_is_laid_by_from_stock_is_not_sent_for(job: Job, owner: Person) -> None:
    """Part of it sent, the rest laid by: ordered. What is given back is to be sent for again."""
    kitchen(job)
    approved(job, owner)
    first, *others = order_progress(job).to_send
    sent_to(job, "Northfield", owner, {first.item: first.to_send})
    names = buying_names_of(job)
    things = [(counted(job.shop, owner, each.to_send, names[each.item]), each) for each in others]

    for goods, each in things:
        assert not counts_of([job.pk])[job.pk].sent
        moved(goods, job, owner, each.to_send)
    assert not order_progress(job).to_send
    assert counts_of([job.pk])[job.pk].sent

    moved(things[0][0], job, owner, 1, GIVEN_BACK)
    assert order_progress(job).to_send
    assert not counts_of([job.pk])[job.pk].sent


def test_many_jobs_cost_no_more_questions(
    shop: Shop, owner: Person, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    """The number of jobs and fronts makes no difference, and no schedule is asked for."""
    jobs = [JobFactory.create(shop=shop) for _ in range(3)]
    for job in jobs:
        done_kitchen(job, owner)
        approved(job, owner)
        name = next(iter(buying_names_of(job).values()))
        moved(counted(shop, owner, 10, name), job, owner, 1)

    with django_assert_num_queries(13):
        progress_of(jobs)
    with django_assert_num_queries(13):
        progress_of(jobs[:1])
