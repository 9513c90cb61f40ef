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
from itertools import cycle
from math import inf

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
WIDTHS = 16

PARTS = ("its answer", "findings and fronts", "the last step", "the next row")

Answer = Callable[[], bytes]
Edits = dict[str, Sequence[Answer]]


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
        yield from _compared(*(dict(_edits(client, job)) for job in (demo, large)))


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
    """One cabinet's width, each time another: nothing that was worked out once comes again."""
    cabinet = Cabinet.objects.filter(job=job).order_by("position")[0]
    cell = f"cabinet-{cabinet.pk}-width"
    address = f"{reverse('fronts:cells-save', args=[job.pk])}?wall={cabinet.wall}"
    widths = (cabinet.width + CHANGE * step / WIDTHS for step in range(WIDTHS))
    said = cycle(write(width, job.unit) for width in widths)
    seen = [next(said)]

    def post() -> bytes:
        typed = {cell: next(said), "seen": json.dumps({cell: seen[0]})}
        seen[0] = typed[cell]
        return content(client.post(address, typed, headers={"HX-Request": "true"}))

    return post


def _compared(demo: Edits, large: Edits) -> Iterator[Figure]:
    """Every part of every edit in either job, asked for by turns: the best time of each."""
    asked = [(job, what, part) for what in demo for part in range(len(PARTS)) for job in (0, 1)]
    jobs = (demo, large)
    times = dict.fromkeys(asked, inf)
    for _ in range(ROUNDS):
        for job, what, part in asked:
            took = best_ms(jobs[job][what][part], 1)
            times[job, what, part] = min(times[job, what, part], took)
    for what in demo:
        for part, named in enumerate(PARTS):
            yield Figure(f"{what}, {named}: on the demo", times[0, what, part], "ms")
            yield Figure(f"  on {TIMES_OVER} times as many cabinets", times[1, what, part], "ms")
        ms = [sum(times[job, what, part] for part in range(len(PARTS))) for job in (0, 1)]
        sizes = [sum(len(gzip.compress(part())) for part in job[what]) for job in jobs]
        yield Figure(f"{what}, all of it, in the demo's time", ms[1] / ms[0], "times", MOST_TIMES)
        yield Figure("  in its bytes", sizes[1] / sizes[0], "times", MOST_TIMES)
