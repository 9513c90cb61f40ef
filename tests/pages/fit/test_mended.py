"""An opening measured again while its fronts are hung: what follows is told on coming back."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Cabinet, Opening
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import BoxFactory, door_and_drawer, overlaid
from tests.pages.kitchens import seen_in
from tests.pages.on_site.test_what_follows import told

SignIn = Callable[[Person], Client]


@pytest.fixture
def drawer(job: Job) -> Opening:
    """An opening 15 × 7 with a box behind its drawer front, laps of 1/2 all round."""
    overlaid(job)
    opening = Opening.objects.get(cabinet=door_and_drawer(job), label="b")
    BoxFactory.create(opening=opening)
    return opening


@pytest.mark.parametrize("who", ["installer", "owner"])
def test_what_follows_is_told_front_by_front(
    who: str, drawer: Opening, request: pytest.FixtureRequest, signed_in: SignIn
) -> None:
    """Before and after, on the page of the cabinet; where nothing follows, nothing is told."""
    client, cabinet = signed_in(request.getfixturevalue(who)), drawer.cabinet
    way = f"/jobs/{cabinet.job_id}/openings/{drawer.pk}/measured/"
    from_here = f"{way}?back=fit-{cabinet.pk}"
    typed = seen_in(dom(client.get(from_here)))
    wider = typed | {"measured_width_top": "15 1/8", "measured_width_bottom": "15 1/8"}

    answer = client.post(from_here, wider, follow=True)

    assert answer.redirect_chain[-1][0] == f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/"
    found = told(answer)
    assert list(found) == ["B1.b"]
    assert "width 16 → 16 1/8" in found["B1.b"]
    same = wider | seen_in(dom(client.get(from_here)))
    assert told(client.post(from_here, same | {"measured_height_left": "7"}, follow=True)) == {}


def test_elsewhere_the_kitchen_itself_is_in_view(
    drawer: Opening, installer: Person, signed_in: SignIn
) -> None:
    """Who came from the page of measures has all of it before the eyes."""
    client, cabinet = signed_in(installer), Cabinet.objects.get(pk=drawer.cabinet_id)
    way = f"/jobs/{cabinet.job_id}/openings/{drawer.pk}/measured/"
    typed = seen_in(dom(client.get(way)))
    wider = typed | {"measured_width_top": "15 1/8", "measured_width_bottom": "15 1/8"}

    assert told(client.post(way, wider, follow=True)) == {}
