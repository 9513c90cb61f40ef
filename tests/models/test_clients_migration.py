"""What jobs said of clients and sites in words becomes rows, and words again on the way back."""

import pytest

from shopjobs.models import Client, Job, Person, Revision, Site
from tests.factories import NOW, JobFactory, PersonFactory, ShopFactory
from tests.models.steps import migrated, newest
from tests.saying import client_set

pytestmark = pytest.mark.thorough

BEFORE = ("shopjobs", "0008_job_lists")
SAID = [
    ("Ash", "3 Mill Lane"),
    ("Ash", "3 Mill Lane"),
    ("Birch", ""),
    ("", "9 Hill Road"),
    ("", ""),
]


def said() -> list[tuple[str, str]]:
    """Client and site of every job, the deleted ones too."""
    return [(job.client_name, job.site_address) for job in Job.with_deleted.order_by("pk")]


@pytest.mark.usefixtures("now")
def test_names_come_and_go_and_come_again() -> None:
    """The same words throughout, one row for each name of a shop; history follows."""
    ours, theirs = ShopFactory.create(), ShopFactory.create()
    by: Person = PersonFactory.create(shop=ours, owner=True)
    for client, site in SAID:
        JobFactory.create(shop=ours, client=client, site=site)
    other = JobFactory.create(shop=theirs, client="Ash", site="3 Mill Lane")
    changed = Job.objects.filter(shop=ours).order_by("pk")[0]
    client_set(changed, "Elm", NOW, by)
    Job.objects.filter(pk=changed.pk).update(deleted_at=NOW)
    before = said()

    old = migrated(BEFORE)

    jobs = old("shopjobs", "Job").objects.order_by("pk").values_list("client", "site")
    assert list(jobs) == before
    kept = old("shopjobs", "Revision").objects.filter(person_id=by.pk).latest("pk").changes
    (change,) = [each for each in kept if each[0] == "shopjobs.job"]
    assert (change[2]["client"], change[3]["client"]) == ("Ash", "Elm")

    newest()

    assert said() == before
    assert Client.objects.filter(shop=ours).count() == 3
    assert Client.objects.filter(shop=theirs).count() == 1
    assert Site.objects.filter(client=None).count() == 1
    assert Job.objects.get(pk=other.pk).client != Job.objects.filter(shop=ours)[0].client
    (change,) = [
        each
        for each in Revision.objects.filter(person=by).latest("pk").changes
        if each[0] == "shopjobs.job"
    ]
    names = [Client.objects.get(pk=each["client_id"]).name for each in change[2:4]]
    assert names == ["Ash", "Elm"]
