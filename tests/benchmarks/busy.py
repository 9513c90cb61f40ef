"""How long people wait for a page, a save and a sheet while plans and sets of sheets are made.

    python3 manage.py bench busy

The site is served as the guide says, with one worker. Six people of two shops, each at a job of
their own, fetch the whole page, save an opening and print a sheet, again and again: first with
nothing else going on, then while each shop has plans and whole sets of sheets made.
"""

from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field, replace
from statistics import quantiles

from django.db import connections
from django.utils import timezone

from fronts.jobfile import read_file
from fronts.models import Cabinet, Opening
from fronts.rules.lengths import write
from fronts.rules.practice import inches
from fronts.services.imports import job_import
from shopjobs.models import BackgroundTask, Job, Person, Role
from tests.benchmarks.edit import Typed
from tests.benchmarks.figures import Figure, database
from tests.benchmarks.over_http import Visitor, served
from tests.benchmarks.sheets import DEMO
from tests.factories import PersonFactory, ShopFactory
from tests.queue_work import workers

ROUNDS = 15
PEOPLE_A_SHOP = 3
MOST_TIMES_A_PAGE, MOST_TIMES_A_SHEET = 2, 3


@dataclass
class Waited:
    """Milliseconds that people waited, of each kind."""

    page: list[float] = field(default_factory=list)
    save: list[float] = field(default_factory=list)
    sheet: list[float] = field(default_factory=list)


class AtWork:
    """A person at a job: looks, saves, prints."""

    def __init__(self, job: Job, person: Person, port: int) -> None:
        self.visitor, self.job = Visitor(person, port), job
        self.opening = Opening.objects.filter(cabinet__job=job, closed_by="door").order_by("pk")[0]
        self.cabinet = Cabinet.objects.filter(job=job).order_by("pk")[0]

    def rounds(self, waited: Waited) -> None:
        """Do it all so many times."""
        for number in range(ROUNDS):
            waited.page.append(self.visitor.get(f"/jobs/{self.job.pk}/")[0])
            waited.save.append(self._save(narrower=number % 2 == 0))
            path = f"/jobs/{self.job.pk}/sheets/fitting/{self.cabinet.pk}/"
            if number % 3 == 0:
                waited.sheet.append(self.visitor.get(path)[0])

    def _save(self, *, narrower: bool) -> float:
        target = f"opening-{self.opening.pk}"
        htmx = {"HX_Request": "true", "HX_Target": target}
        path = f"/jobs/{self.job.pk}/openings/{self.opening.pk}/"
        form = Typed(self.visitor.get(path, **htmx)[1]).values
        width = self.opening.width - (inches(1, 4) if narrower else 0)
        return self.visitor.post(path, form | {"width": write(width, self.job.unit)}, **htmx)[0]

    def ask_for_long_work(self) -> None:
        """Have a plan made and all sheets printed."""
        cut = f"/jobs/{self.job.pk}/cut/"
        self.visitor.post(cut, Typed(self.visitor.get(cut)[1]).values | {"seconds": "60"})
        sheets = f"/jobs/{self.job.pk}/sheets/"
        self.visitor.post(sheets, Typed(self.visitor.get(sheets)[1]).values)


def figures() -> Iterator[Figure]:
    """The 95th percentiles, alone and beside long work."""
    with database(), served() as port, workers():
        people = list(_people(port))
        _waited(people)
        alone = _waited(people)
        for person in people:
            person.ask_for_long_work()
        busy = _waited(people)
        left = BackgroundTask.objects.filter(ended_at=None).count()
        connections.close_all()
    for what, most in (("page", MOST_TIMES_A_PAGE), ("save", MOST_TIMES_A_PAGE),
                       ("sheet", MOST_TIMES_A_SHEET)):  # fmt: skip
        before, beside = _p95(getattr(alone, what)), _p95(getattr(busy, what))
        yield Figure(f"a {what}, 95 of 100, six people", before, "ms")
        yield Figure(f"a {what} beside plans and sets of sheets", beside, "ms", most * before)
    yield Figure("plans and sets still going at the end", left, "")


def _people(port: int) -> Iterator[AtWork]:
    """Three people of two shops each, at a kitchen of their own like the demo's."""
    kitchen = read_file(str(DEMO)).kitchen
    for shop in (ShopFactory.create(name=name) for name in ("Alder Row", "Birch Lane")):
        for number in range(PEOPLE_A_SHOP):
            own = replace(kitchen, job=replace(kitchen.job, number=f"K-{number}"))
            job = job_import(kitchen=own, shop=shop, at=timezone.now())
            person = PersonFactory.create(shop=shop, role=Role.OWNER)
            yield AtWork(job, person, port)


def _waited(people: list[AtWork]) -> Waited:
    waited = Waited()
    with ThreadPoolExecutor(len(people)) as pool:
        list(pool.map(lambda person: person.rounds(waited), people))
    return waited


def _p95(times: list[float]) -> float:
    return quantiles(times, n=20)[-1]
