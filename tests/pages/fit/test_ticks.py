"""The work on a front, step by step: its ticks are kept, and the owner sees them."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Cabinet, WorkTick
from shopjobs.models import Job, Person
from tests.dom import Part, dom
from tests.factories import door_and_drawer, overlaid

SignIn = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """A cabinet with a door and a drawer."""
    overlaid(job)
    return door_and_drawer(job)


@pytest.fixture
def phone(installer: Person, signed_in: SignIn) -> Client:
    """The installer's."""
    return signed_in(installer)


def work(client: Client, cabinet: Cabinet, front: str = "B1.a") -> Part:
    """The work on a front, on the cabinet's page."""
    page = dom(client.get(f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/"))
    return page.one(f"[id='record-{front}-work']")


def tick(client: Client, cabinet: Cabinet, part: Part, step: int, **headers: str) -> Part:
    """Press one of the steps."""
    button, form = part.all("button.step")[step], part.one("form")
    sent = {"front": "B1.a", button.attribute("name"): button.attribute("value")}
    return dom(client.post(form.attribute("action"), sent, headers=HTMX | headers)).first


def test_a_step_is_ticked_by_one_tap_and_the_owner_sees_it(
    cabinet: Cabinet, phone: Client, owner: Person, signed_in: SignIn
) -> None:
    """With who did it; pressed again it is taken back; another front's steps are their own."""
    after = tick(phone, cabinet, work(phone, cabinet), 0)
    assert "1 of 8 ticked" in after.words

    seen = work(signed_in(owner), cabinet)
    first, second = seen.all("button.step")[:2]
    assert (first.attribute("aria-pressed"), second.attribute("aria-pressed")) == ("true", "false")
    assert "ines" in first.words
    assert " 0 of " in f" {work(phone, cabinet, 'B1.b').one('summary').words}"
    assert "0 of 8 ticked" in tick(phone, cabinet, seen, 0).words
    assert not WorkTick.objects.exists()


def test_a_step_that_is_none_is_passed_by(cabinet: Cabinet, phone: Client) -> None:
    """Also one of another front, of one that has gone, and without htmx."""
    address = f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/work/"
    for sent in ({"front": "B1.a", "tick": "Dance."}, {"front": "B9.z", "tick": "Dance."}, {}):
        assert phone.post(address, sent).status_code == 302
    assert not WorkTick.objects.exists()


@pytest.mark.parametrize("pressed", ["tick", "untick"])
@pytest.mark.parametrize(
    ("front", "said"),
    [
        ("B1.a", "The order of work of B1.a has changed: “Dance.” is no step of it now."),
        ("B9.z", "B9.z is no longer part of cabinet B1: the kitchen has changed."),
    ],
)
def test_a_step_that_went_meanwhile_is_not_dropped_without_a_word(
    front: str, said: str, pressed: str, cabinet: Cabinet, phone: Client
) -> None:
    """A phone that sends it late keeps it until somebody settles it; a page says it on top."""
    address = f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/work/"
    sent = {"front": front, pressed: "Dance."}

    late = phone.post(address, sent, headers=HTMX)

    assert late.status_code == 422
    assert said in dom(late).words
    assert said in dom(phone.post(address, sent, follow=True)).words
    assert not WorkTick.objects.exists()


def test_ticked_twice_it_is_ticked_once(cabinet: Cabinet, phone: Client) -> None:
    """A lost answer and a second phone change nothing."""
    fresh = work(phone, cabinet)
    tick(phone, cabinet, fresh, 1)
    tick(phone, cabinet, fresh, 1)

    assert WorkTick.objects.count() == 1


def test_another_shop_ticks_nothing(
    cabinet: Cabinet, phone: Client, stranger: Person, signed_in: SignIn
) -> None:
    """The job is not there."""
    step = work(phone, cabinet).all("button.step")[0].attribute("value")
    sent = {"front": "B1.a", "tick": step}

    answer = signed_in(stranger).post(f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/work/", sent)

    assert answer.status_code == 404
    assert not WorkTick.objects.exists()
