"""What an edit costs in a large job: the demo kitchen eight times over beside the demo itself.

    python3 manage.py bench growth

A cell of a wall's table and an opening's form are changed and changed back, and what the page
then fetches is fetched: the job's last step, the next row, the findings and the fronts, and after a
form the drawing too. Beside the times stand the bytes as they are sent.
"""

import gzip
import json
from collections.abc import Callable, Iterator, Sequence
from functools import partial

from django.test import Client, override_settings
from django.urls import reverse

from fronts.models import Cabinet
from fronts.rules.lengths import write
from fronts.services.demo import load_demo
from fronts.services.imports import job_import
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Role
from tests.benchmarks.edit import CHANGE, content, edits
from tests.benchmarks.figures import Figure, best_ms, database
from tests.benchmarks.larger import times_over
from tests.factories import NOW

ROUNDS = 25
TIMES_OVER = 8
MOST_TIMES = 2

Answer = Callable[[], bytes]


def figures() -> Iterator[Figure]:
    """Times and bytes of each edit and of what follows it, in those on the demo."""
    urls = override_settings(ROOT_URLCONF="tests.benchmarks.edit", ALLOWED_HOSTS=["localhost"])
    with urls, database():
        demo = load_demo()
        if demo is None:
            raise RuntimeError("the demo kitchen is there already")
        owner = Person.objects.get(shop=demo.shop, role=Role.OWNER)
        kitchen = times_over(kitchen_of(demo), TIMES_OVER)
        large = job_import(kitchen=kitchen, shop=demo.shop, at=NOW, by=owner)
        client = Client(SERVER_NAME="localhost")
        client.force_login(owner)
        jobs = [dict(_edits(client, job)) for job in (demo, large)]
        for what in jobs[0]:
            yield from _beside_demo(what, *(job[what] for job in jobs))


def _edits(client: Client, job: Job) -> Iterator[tuple[str, Sequence[Answer]]]:
    """The edits by what is edited: the answer to each, and what the page fetches after it."""
    bar = partial(_get, client, reverse("fronts:job-undo-bar", args=[job.pk]), "undo-bar")
    measure = reverse("fronts:job-measure", args=[job.pk])
    row = partial(_get, client, f"{reverse('fronts:row-new', args=[job.pk])}?kind=base", "row-new")
    rest = partial(_get, client, measure, "follows-drawn")
    yield "a cell", (_cell(client, job), rest, bar, row)
    _, opening = next(edits(client, job))
    yield "an opening", (opening.post, partial(_get, client, measure, "follows"), bar, row)


def _get(client: Client, address: str, part: str) -> bytes:
    return content(client.get(address, headers={"HX-Request": "true", "HX-Target": part}))


def _cell(client: Client, job: Job) -> Answer:
    """One cabinet's width, a little more and as it was by turns."""
    cabinet = Cabinet.objects.filter(job=job).order_by("position")[0]
    cell = f"cabinet-{cabinet.pk}-width"
    widths = [write(width, job.unit) for width in (cabinet.width, cabinet.width + CHANGE)]
    address = f"{reverse('fronts:cells-save', args=[job.pk])}?wall={cabinet.wall}"

    def post() -> bytes:
        seen = json.dumps({cell: widths[0]})
        widths.reverse()
        typed = {cell: widths[0], "seen": seen}
        return content(client.post(address, typed, headers={"HX-Request": "true"}))

    return post


def _beside_demo(what: str, demo: Sequence[Answer], large: Sequence[Answer]) -> Iterator[Figure]:
    """The demo's and the large job's, asked for by turns: each part of either a best time."""
    times = [[[best_ms(part, 1) for part in job] for job in (demo, large)] for _ in range(ROUNDS)]
    sizes = [[len(gzip.compress(part())) for part in job] for job in (demo, large)]
    for part, named in enumerate(("its answer", "findings and fronts", "the last step", "the next row")):
        few, many = (min(each[job][part] for each in times) for job in (0, 1))
        yield Figure(f"{what}, {named}: on the demo", few, "ms")
        yield Figure(f"  on {TIMES_OVER} times as many cabinets", many, "ms")
    few, many = (sum(map(min, zip(*(each[job] for each in times)))) for job in (0, 1))
    yield Figure(f"{what}, all of it: in times of the demo's time", many / few, "times", MOST_TIMES)
    yield Figure("  in times of its bytes", sum(sizes[1]) / sum(sizes[0]), "times", MOST_TIMES)
