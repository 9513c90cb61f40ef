"""A job once more: its kitchen and its ways, and nothing that was recorded."""

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from fractions import Fraction

from django.test import Client

from fronts.models import FitRecord, FrontCut, JobStandard, Snag
from fronts.rules.practice import inches
from fronts.rules.schedule import schedule
from fronts.rules.snags import SnagFacts
from fronts.services.hardware import hardware_own
from fronts.services.job_copies import job_copy
from fronts.services.snags import snag_raise
from fronts.services.stock import practice_set
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.factories import NOW, CabinetFactory, JobFactory
from tests.own_ways import own_ways
from tests.pages.kitchens import furnish
from tests.saying import standard_set, stock_set
from tests.shopjobs.kitchens import cut, fitted, kitchen

SignIn = Callable[[Person], Client]


def copy_of(job: Job, by: Person) -> Job:
    """A copy of the job for somebody else."""
    return job_copy(
        job=job, number="K-2", client="Birch", site="", fit_on=date(2027, 5, 4), at=NOW, by=by
    )


def own_ways_of_job(job: Job) -> None:
    """The job says something itself of all that a job may say."""
    own_ways(job.shop, Fraction(9, 10))
    standard_set(owner=job, gap_between=inches(3, 16), at=NOW)
    stock_set(owner=job, screw_lengths=[inches(1)], at=NOW)
    practice_set(owner=job, values={"ledge_thickness": inches(1, 4)}, at=NOW)
    hardware_own(job=job, at=NOW)


def test_a_copy_has_the_same_kitchen_and_nothing_recorded(job: Job, owner: Person) -> None:
    """The same schedule, whatever the job says itself; cuts, fits and snags stay behind."""
    furnish(job)
    own_ways_of_job(job)
    snag_raise(job=job, facts=SnagFacts("job", "a scratch"), by=owner, at=NOW)

    copy = copy_of(job, owner)

    said, was = kitchen_of(copy), kitchen_of(job)
    assert said.job == replace(
        was.job, number="K-2", client="Birch", site="", fit_on=date(2027, 5, 4)
    )
    assert replace(said, job=was.job) == was
    assert schedule(replace(said, job=was.job)) == schedule(was)
    assert not Snag.objects.filter(job=copy).exists()
    (line,) = Revision.objects.filter(job=copy)
    assert line.text == "Made job K-2 as a copy of job K-1"


def test_cuts_and_fits_stay_with_the_job(job: Job, owner: Person) -> None:
    """They are of the fronts that were cut and hung."""
    left, _ = kitchen(job)
    cut(job, owner, "B1.a")
    fitted(left, owner)

    copy = copy_of(job, owner)

    assert not FitRecord.objects.filter(job=copy).exists()
    assert not FrontCut.objects.filter(front__opening__cabinet__job=copy).exists()
    assert FrontCut.objects.count() == FitRecord.objects.count() == 1


def test_what_is_left_to_the_shop_stays_so(job: Job, owner: Person) -> None:
    """A later change of the house standard reaches the copy as it does the job."""
    CabinetFactory.create(job=job)
    copy = copy_of(job, owner)
    assert not JobStandard.objects.filter(job=copy).exists()

    standard_set(owner=job.shop, gap_between=inches(3, 16), at=NOW)

    assert kitchen_of(copy).standard == kitchen_of(job).standard


def test_the_page_makes_a_copy_once(job: Job, office: Person, signed_in: SignIn) -> None:
    """From its settings, under a number that is free; it can be deleted at once."""
    client, address = signed_in(office), f"/jobs/{job.pk}/copy/"
    JobFactory.create(shop=job.shop, number="K-2")
    page = dom(client.get(address))
    key = page.field("form_key").value
    assert page.field("client").value == "Lindqvist"

    taken = client.post(address, {"number": "K-2", "form_key": key})
    assert taken.status_code == 422
    assert "There is already a job K-2" in dom(taken).words

    typed = {"number": "K-3", "form_key": key}
    answers = [client.post(address, typed, follow=True) for _ in range(2)]
    copy = Job.objects.get(number="K-3")
    assert [each.redirect_chain[-1][0] for each in answers] == [f"/jobs/{copy.pk}/"] * 2
    assert dom(answers[0]).has(f"#said form[action='/jobs/{copy.pk}/delete/']")


def test_who_makes_no_jobs_copies_none(
    job: Job, installer: Person, stranger: Person, signed_in: SignIn
) -> None:
    """An installer may not; for another shop it does not exist."""
    for method in ("get", "post"):
        for person, status in ((installer, 403), (stranger, 404)):
            asked = getattr(signed_in(person), method)
            assert asked(f"/jobs/{job.pk}/copy/").status_code == status
    assert Job.objects.count() == 1
