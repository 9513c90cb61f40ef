"""Who holds a shop and who holds one of its jobs never wait for each other."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from threading import Event
from typing import Any, cast

import pytest
from django.db import connection, connections, transaction
from django.http import HttpResponse
from django.test import Client, RequestFactory

from fronts.models import StageMark
from fronts.services.plan_offcuts import plan_offcuts_lay_by
from shopjobs.access import SignedInRequest, in_turn
from shopjobs.models import Job, Person
from shopjobs.services.locks import shop_lock
from tests.factories import NOW, JobFactory
from tests.queue_work import wait_until
from tests.saying import standard_set
from tests.services.test_offcuts import entered, plan_that_takes
from tests.shopjobs.kitchens import kitchen

pytestmark = pytest.mark.django_db(transaction=True)
SignIn = Callable[[Person], Client]
Deed = Callable[[], object]


def while_sent(
    client: Client, address: str, sent: dict[str, Any], hold: Callable[[Deed], None]
) -> int:
    """A form sent while something is held: what it is answered.

    `hold` takes what it holds, then waits by what it is given until the form has come as far as it
    can: it is answered, or a lock keeps it.
    """
    answered = Event()
    browser = Client(raise_request_exception=False)
    browser.cookies = client.cookies

    def send() -> int:
        try:
            return browser.post(address, sent).status_code
        finally:
            answered.set()
            connections.close_all()

    with ThreadPoolExecutor(1) as pool:
        sending = []

        def as_far_as_it_can() -> None:
            sending.append(pool.submit(send))
            wait_until(lambda: answered.is_set() or _somebody_waits())

        hold(as_far_as_it_can)
        return sending[0].result(60)


def _somebody_waits() -> bool:
    """Whether a lock keeps anybody; SQLite lets one write at a time, so that all others wait."""
    if connection.vendor == "sqlite":
        return True
    with connection.cursor() as cursor:
        cursor.execute("SELECT count(*) FROM pg_locks WHERE NOT granted")
        return bool(cursor.fetchone()[0])


def page_of_the_shop(owner: Person) -> Callable[[Deed], None]:
    """A page of the shop's standard, which counts a change of each job."""

    def hold(wait: Deed) -> None:
        request = cast(SignedInRequest, RequestFactory().post("/"))
        request.user = owner
        assert owner.shop is not None
        request.shop = owner.shop

        def view(request: SignedInRequest) -> HttpResponse:
            wait()
            standard_set(owner=request.shop, overlay_left=12, at=NOW, by=owner)
            return HttpResponse()

        in_turn(view)(request)

    return hold


def test_a_plan_ends_while_its_offcuts_are_marked_as_sawn(
    job: Job, office: Person, signed_in: SignIn
) -> None:
    """The worker holds the shop and tells of the job; the page comes to hold both."""
    kitchen(job)
    plan = plan_that_takes(job, office, entered(job))

    def end(wait: Deed) -> None:
        with transaction.atomic():
            shop_lock(job.shop_id)
            wait()
            plan_offcuts_lay_by(plan=plan, at=NOW)

    sawn = {"plan": plan.pk, "do": "sawn"}
    assert while_sent(signed_in(office), f"/jobs/{job.pk}/cut/offcuts/", sent=sawn, hold=end) == 302
    plan.refresh_from_db()
    assert plan.sawn_at is not None


def test_the_standard_changes_while_offcuts_are_marked_as_sawn(
    job: Job, owner: Person, signed_in: SignIn
) -> None:
    """The shop is held before all its jobs; the page holds it before its own."""
    kitchen(job)
    plan = plan_that_takes(job, owner, entered(job))
    plan_offcuts_lay_by(plan=plan, at=NOW)
    address, sawn = f"/jobs/{job.pk}/cut/offcuts/", {"plan": plan.pk, "do": "sawn"}

    assert while_sent(signed_in(owner), address, sawn, page_of_the_shop(owner)) == 302
    plan.refresh_from_db()
    assert plan.sawn_at is not None


def test_the_standard_changes_while_a_job_does(job: Job, owner: Person, signed_in: SignIn) -> None:
    """What is written for a job leads to its shop, which keeps nobody from writing it."""
    JobFactory.create(shop=job.shop)
    address = f"/jobs/{job.pk}/dates/mark/measure/"

    status = while_sent(signed_in(owner), address, {"mark": "begun"}, page_of_the_shop(owner))

    assert status == 302
    assert StageMark.objects.filter(job=job).exists()
