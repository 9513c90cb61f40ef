"""How long an edit takes to be answered: an opening of the demo kitchen, made narrower and back.

    python3 manage.py bench edit

It is posted as htmx posts it, through the site's own address, to a database of its own.
Beside it a bare view of the same site, for the same person, that does nothing but render a
plain template of as many bytes.
"""

from collections.abc import Iterator
from functools import lru_cache
from http import HTTPStatus
from itertools import cycle
from typing import Any
from urllib.parse import urlencode

from django.http import HttpRequest, HttpResponse
from django.template import engines
from django.test import Client, override_settings
from django.urls import include, path, reverse

from fronts.forms.openings import OpeningForm
from fronts.forms.version import version_of
from fronts.models import Opening
from fronts.rules.lengths import write
from fronts.rules.practice import inches
from fronts.selectors.kitchens import doors_of, opening_of
from fronts.services.demo import load_demo
from shopjobs.models import Job, Person, Role
from tests.benchmarks.figures import Figure, best_ms, database

ROUNDS = 100
MOST_TIMES = 5
NARROWER = inches(1, 4)
AS_FORM = "application/x-www-form-urlencoded"


@lru_cache(maxsize=8)
def plain_template(size: int) -> Any:
    """A template that renders so many bytes and asks nothing."""
    return engines["django"].from_string("x" * size)


def bare(request: HttpRequest, size: int) -> HttpResponse:
    """What a view costs that does nothing."""
    return HttpResponse(plain_template(size).render({}, request))


urlpatterns = [path("bare/<int:size>/", bare), path("", include("shopjobs.urls"))]


class Edit:
    """The demo's owner at an opening that a door closes."""

    def __init__(self, job: Job) -> None:
        self.job = job
        openings = Opening.objects.filter(cabinet__job=job, closed_by="door")
        self.opening = openings.order_by("pk")[0]
        width = self.opening.width
        self.widths = cycle((width - NARROWER, width))
        self.client = Client(SERVER_NAME="localhost")
        self.client.force_login(Person.objects.get(shop=job.shop, role=Role.OWNER))
        self.next: dict[str, Any] = {}

    def fill(self) -> None:
        """Fill the form in as a browser would, with the other width."""
        opening, unit = opening_of(self.job, self.opening.pk), self.job.unit
        form = OpeningForm(unit=unit, doors=list(doors_of(self.job)), opening=opening)
        said = {name: form[name].value() for name in form.fields}
        typed = {"version": version_of(opening), "width": write(next(self.widths), unit)}
        self.next = {name: each for name, each in said.items() if each not in (None, False)} | typed

    def post(self) -> bytes:
        """Post the form, and take what comes back."""
        target = f"opening-{self.opening.pk}"
        address = reverse("fronts:opening-edit", args=[self.job.pk, self.opening.pk])
        return self._content(
            self.client.post(
                address, urlencode(self.next), content_type=AS_FORM, headers=_htmx(target)
            )
        )

    def follow(self) -> bytes:
        """Fetch what follows every change: the drawing, the findings and the fronts."""
        address = reverse("fronts:job-measure", args=[self.job.pk])
        return self._content(self.client.get(address, headers=_htmx("walls")))

    def bare(self, size: int) -> bytes:
        """Fetch as many bytes from the bare view."""
        return self._content(self.client.post(f"/bare/{size}/"))

    def _content(self, response: Any) -> bytes:
        if response.status_code != HTTPStatus.OK:
            raise RuntimeError(f"{response.request['PATH_INFO']} answered {response.status_code}")
        content: bytes = response.content
        return content


def figures() -> Iterator[Figure]:
    """The answer to an edit, and what follows it, each beside the bare view."""
    urls = override_settings(ROOT_URLCONF=__name__, ALLOWED_HOSTS=["localhost"])
    with urls, database():
        job = load_demo()
        if job is None:
            raise RuntimeError("the demo kitchen is there already")
        edit = Edit(job)
        edit.fill()
        size = len(edit.post())
        answer = best_ms(edit.post, ROUNDS, before=edit.fill)
        bare_answer = best_ms(lambda: edit.bare(size), ROUNDS)
        yield Figure(f"bare view, {size:,} bytes", bare_answer, "ms")
        yield Figure("an edit's answer, POST to HTML", answer, "ms", MOST_TIMES * bare_answer)
        yield Figure("  in times of the bare view", answer / bare_answer, "times", MOST_TIMES)
        follows = len(edit.follow())
        told = f"drawing, findings and fronts after it, {follows:,} bytes"
        yield Figure(told, best_ms(edit.follow, ROUNDS // 2), "ms")


def _htmx(target: str) -> dict[str, str]:
    return {"HX-Request": "true", "HX-Target": target}
