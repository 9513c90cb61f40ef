"""How long it takes to say what twenty jobs of forty cabinets need together, by supplier.

    python3 manage.py bench buying

Beside it stands a bare view: the same template with all that it shows laid ready in a dict,
behind the same middleware, for the same person. They are asked in turn.
"""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

from django.db import connection
from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.test import Client, RequestFactory, override_settings
from django.test.utils import CaptureQueriesContext
from django.urls import include, path, reverse
from django.utils import timezone

from fronts.pages.buy.views import PAGE, shown
from fronts.pages.shared.purchase_asked import purchase_asked
from fronts.selectors.kitchens import placed_kitchen_of
from fronts.services.demo import load_demo
from fronts.services.imports import job_import
from shopjobs.models import Job, Person, Role, Shop
from tests.benchmarks.edit import content
from tests.benchmarks.figures import Figure, best_ms, database, median_ms_in_turn
from tests.benchmarks.larger import times_over

JOBS, TIMES, ROUNDS, MOST_TIMES = 20, 2, 20, 5
READY: dict[str, Mapping[str, Any]] = {}


def bare(request: HttpRequest) -> HttpResponse:
    """The page of what stands ready."""
    return render(request, PAGE, dict(READY["page"]))


urlpatterns = [path("bare/", bare), path("", include("shopjobs.urls"))]


def figures() -> Iterator[Figure]:
    """The page beside its bare view; how long it takes where nothing is remembered yet."""
    urls = override_settings(ROOT_URLCONF=__name__, ALLOWED_HOSTS=["localhost"])
    with urls, database():
        job = load_demo()
        if job is None:
            raise RuntimeError("the demo kitchen is there already")
        owner = Person.objects.get(shop=job.shop, role=Role.OWNER)
        query = {"job": [each.pk for each in _jobs(job, owner)]}
        client = Client(SERVER_NAME="localhost")
        client.force_login(owner)
        yield from _figures(client, job.shop, owner, query)


def _jobs(job: Job, owner: Person) -> Iterator[Job]:
    """So many jobs with a larger kitchen each."""
    kitchen = times_over(placed_kitchen_of(job), TIMES)
    for number in range(JOBS):
        facts = replace(kitchen.job, number=f"BENCH-{number}")
        of = replace(kitchen, job=facts)
        yield job_import(kitchen=of, shop=job.shop, at=timezone.now(), by=owner)


def _figures(client: Client, shop: Shop, owner: Person, query: dict[str, Any]) -> Iterator[Figure]:
    address = reverse("fronts:shop-buy")

    def page() -> bytes:
        return content(client.get(address, query))

    def bare_page() -> bytes:
        return content(client.get("/bare/"))

    first = best_ms(page, 1)
    request = RequestFactory().get(address, query)
    READY["page"] = shown(shop, owner, purchase_asked(shop, request.GET))
    with CaptureQueriesContext(connection) as queries:
        size = len(page())
        asked = len(queries)
    if abs(len(bare_page()) - size) > size // 100:
        raise RuntimeError("the bare view shows something else")
    whole, plain = median_ms_in_turn([page, bare_page], ROUNDS)
    yield Figure(f"{JOBS} jobs of 40 cabinets, never asked before", first, "ms")
    yield Figure(f"bare view of the same template, {size:,} bytes", plain, "ms")
    yield Figure(f"what {JOBS} jobs of 40 cabinets need", whole, "ms", MOST_TIMES * plain)
    yield Figure("  in times of the bare view", whole / plain, "times", MOST_TIMES)
    yield Figure("  queries", asked, "")
