"""Marks that are older than the telling apart of a shop's hinges, one by one."""

from collections.abc import Callable

from django.test import Client

from fronts.models import OrderCheck
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import HINGES, NOW, door_and_drawer, overlaid
from tests.pages.shared.sending import as_sent

SignIn = Callable[[Person], Client]


def test_a_mark_from_before_hinges_were_told_apart_is_opened_again(
    job: Job, office: Person, signed_in: SignIn
) -> None:
    """Both lines say why: the old one what took its place, the new one what it was part of."""
    overlaid(job)
    door_and_drawer(job)
    desk, address = signed_in(office), f"/jobs/{job.pk}/order/"
    OrderCheck.objects.create(job=job, item="hinge", need=2, checked_at=NOW)

    page = dom(desk.get(address))

    changes = [each.words for each in page.all(".order .change")]
    assert f"was 2, now listed one by one: {HINGES}" in changes
    assert "open again: it was part of the 2 × hinge checked before" in changes
    for item, what in ((HINGES, "check"), ("hinge", "drop")):
        forms = dom(desk.get(address)).all(".mark form")
        form = next(each for each in forms if each.field("item").value == item)
        marked = as_sent(form, mark=what)
        assert desk.post(address, marked).status_code == 302
    assert not dom(desk.get(address)).all(".order .change")
