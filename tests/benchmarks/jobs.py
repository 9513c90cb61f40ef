"""How long the list of jobs takes in a shop of many years beside one that has begun.

    python3 manage.py bench jobs

Most jobs were fitted long ago and stand on the list still: the worst that can be. Each list is
asked for as an owner, its page with the search, the filters and the form.
"""

from collections.abc import Callable, Iterator
from datetime import timedelta

from django.test import Client
from django.utils import timezone

from fronts.models import Cabinet, FitRecord, Front, Opening, Snag
from shopjobs.models import Client as Customer
from shopjobs.models import Job, Person, Role, Shop, Site
from tests.benchmarks.edit import content
from tests.benchmarks.figures import Figure, database, median_ms_in_turn
from tests.factories import PersonFactory, ShopFactory

FEW, MANY = 50, 5000
CABINETS, OPENINGS = 4, 3
DONE_OF_TEN, LATE_ONES = 9, 20
MOST_TIMES = 3
ROADS = ("Hill Road", "Mill Lane")
ROUNDS = 7
LISTS = {
    "the list": "",
    "the second page": "?page=2",
    "by number": "?order=number",
    "by client": "?order=client",
    "searched": "?q=ash+hill",
    "searched by cabinet": "?q=B3",
    "this week": "?when=week",
    "late": "?when=late",
    "to fit": "?stage=fit",
    "by fitting day": "?order=fit",
}


def figures() -> Iterator[Figure]:
    """The times of each list in either shop, and the one in the other's."""
    with database():
        few, many = (_visitor(count) for count in (FEW, MANY))
        for what, query in LISTS.items():
            asked = [_asked(client, f"/jobs/{query}") for client in (few, many)]
            short, long = median_ms_in_turn(asked, ROUNDS)
            yield Figure(f"{what}: {FEW} jobs", short, "ms")
            yield Figure(f"  {MANY:,} jobs", long, "ms")
            yield Figure("  in the shorter one's time", long / short, "times", MOST_TIMES)


def _asked(client: Client, address: str) -> Callable[[], bytes]:
    return lambda: content(client.get(address))


def _visitor(count: int) -> Client:
    shop: Shop = ShopFactory.create(name=f"{count} jobs")
    owner: Person = PersonFactory.create(shop=shop, role=Role.OWNER)
    _fill(shop, count)
    client = Client(SERVER_NAME="localhost")
    client.force_login(owner)
    return client


def _fill(shop: Shop, count: int) -> None:
    """Jobs with a small kitchen each; most of them done years ago, the latest to come."""
    now = timezone.now()
    names = [f"{wood} {number}" for number in range(count // 4) for wood in ("Ash", "Birch", "Elm")]
    clients = Customer.objects.bulk_create(Customer(shop=shop, name=name) for name in names)
    sites = Site.objects.bulk_create(
        Site(shop=shop, client=client, address=f"{number % 83} {ROADS[number % len(ROADS)]}")
        for number, client in enumerate(clients)
    )
    jobs = Job.objects.bulk_create(
        Job(
            shop=shop,
            number=f"K-{number}",
            client=clients[number % len(clients)],
            site=sites[number % len(sites)],
            fit_on=now.date() + timedelta(days=number - count + LATE_ONES // 2),
        )
        for number in range(count)
    )
    cabinets = Cabinet.objects.bulk_create(
        Cabinet(
            job=job, label=f"B{place}", position=place, kind="base", build="face-frame",
            wall="North", y=0, width=600, height=700, depth=600,
        )
        for job in jobs
        for place in range(CABINETS)
    )  # fmt: skip
    openings = Opening.objects.bulk_create(
        Opening(
            cabinet=cabinet, label="abc"[place], position=place, x=0, y=0, width=500,
            height=200, closed_by="drawer",
        )
        for cabinet in cabinets
        for place in range(OPENINGS)
    )  # fmt: skip
    fronts = Front.objects.bulk_create(Front(opening=each, position=0) for each in openings)
    done = count * DONE_OF_TEN // 10 * CABINETS * OPENINGS
    FitRecord.objects.bulk_create(
        FitRecord(
            job_id=front.opening.cabinet.job_id, front=front, label="B1.a", state="done",
            fitted_at=now,
        )
        for front in fronts[:done]
    )  # fmt: skip
    Snag.objects.bulk_create(
        Snag(job=job, of="job", words="a scratch", raised_at=now, changed_at=now)
        for job in jobs[-LATE_ONES:]
    )
