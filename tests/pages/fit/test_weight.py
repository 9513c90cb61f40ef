"""What a cabinet's page weighs on the way to a phone."""

import gzip
from collections.abc import Callable

from django.test import Client

from fronts.models import Cabinet
from fronts.services.demo import load_demo
from shopjobs.models import Person

SignIn = Callable[[Person], Client]
MOST = 25 * 1024


def test_each_cabinet_of_the_demo_is_light(db: None, signed_in: SignIn) -> None:
    """With all its fronts, their drawings, steps and forms."""
    demo = load_demo()
    assert demo is not None
    client = signed_in(Person.objects.filter(shop=demo.shop)[0])

    weights = {
        cabinet.label: len(
            gzip.compress(client.get(f"/jobs/{demo.pk}/fit/{cabinet.pk}/").content, 6)
        )
        for cabinet in Cabinet.objects.filter(job=demo)
    }

    assert len(weights) == 20
    assert max(weights.values()) <= MOST, weights
