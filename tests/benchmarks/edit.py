"""How long an edit takes to be answered: an opening, a cabinet and a box of the demo kitchen.

    python3 manage.py bench edit

Each is made wider or narrower and back, posted as htmx posts it, through the whole site and
to a database of its own. Beside each answer stands a bare view, see `bare`; they are asked
in turn, so that they share whatever else the machine does.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from functools import lru_cache
from html.parser import HTMLParser
from http import HTTPStatus
from itertools import cycle
from typing import Any
from urllib.parse import urlencode

from django.http import HttpRequest, HttpResponse
from django.template import engines
from django.test import Client, override_settings
from django.urls import include, path, reverse

from fronts.models import Box, Cabinet, Opening
from fronts.pages.measure.views.parts import KIND_LINKS, PAGE, part_of
from fronts.rules.lengths import Mm, write
from fronts.rules.practice import inches
from fronts.services.demo import load_demo
from shopjobs.models import Job, Person, Role
from tests.benchmarks.figures import Figure, best_ms, database

ROUNDS = 100
MOST_TIMES = 5
CHANGE = inches(1, 4)
AS_FORM = "application/x-www-form-urlencoded"
READY: dict[str, Mapping[str, Any]] = {}
"""What each part of the page shows, worked out beforehand, by the part's id."""


@lru_cache(maxsize=8)
def plain_template(source: str) -> Any:
    """A template of the site's engine, parsed once."""
    return engines["django"].from_string(source)


def bare(request: HttpRequest, part: str) -> HttpResponse:
    """A view that does nothing but render a template of the same size.

    It runs behind the same middleware, for the same signed-in person, who comes with their
    shop as on every page, and asks the database for nothing more. Its template is the answer's
    own: the part of the page that the edit brings back and the line that says it is saved,
    with as many tags, loops, addresses and bytes. What they show stands ready in a dict;
    there is no row, form, service or check.
    """
    shown = READY[part]
    source = f'{{% include "{PAGE}#{shown["name"]}" %}}{{% include "{PAGE}#said" %}}'
    return HttpResponse(plain_template(source).render(dict(shown), request))


def constant(request: HttpRequest, size: int) -> HttpResponse:
    """A view whose template is so many bytes of plain text, and no tag."""
    return HttpResponse(plain_template("x" * size).render({}, request))


urlpatterns = [
    path("bare/<str:part>/", bare),
    path("constant/<int:size>/", constant),
    path("", include("shopjobs.urls")),
]


class Typed(HTMLParser):
    """What a browser would post of a form that nobody touched."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.values: dict[str, str] = {}
        self._select = ""
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        said = dict(attrs)
        name, value = said.get("name") or "", said.get("value") or ""
        if tag == "select":
            self._select = name
        elif tag == "option":
            if "selected" in said or self._select not in self.values:
                self.values[self._select] = value
        elif tag == "input" and name and said.get("type") != "checkbox":
            self.values[name] = value


class Edit:
    """One thing's width, changed and changed back by the demo's owner."""

    def __init__(
        self, client: Client, job: Job, address: str, part: str, widths: tuple[Mm, Mm]
    ) -> None:
        self.client, self.job, self.address, self.part = client, job, address, part
        self.typed = cycle([self._typed(width) for width in widths])
        next(self.typed), next(self.typed)  # Each was posted once already.

    def post(self) -> bytes:
        """Post the form, and take what comes back."""
        return self._post(next(self.typed))

    def bare(self) -> bytes:
        """Fetch the same part from the bare view."""
        return content(self.client.post(f"/bare/{self.part}/"))

    def make_ready(self) -> int:
        """Lay ready what the bare view shows; how many bytes that are."""
        self.post()
        answer = self.post().decode()
        said = answer.partition('<div class="said">')[2].partition("</div>")[0]
        name, context = part_of(self.job, self.part)
        more = {"said": said, "changed": self.part, "kinds": KIND_LINKS, "part": True}
        READY[self.part] = {"name": name, "job": self.job, **context, **more}
        if len(self.bare()) != len(answer.encode()):
            raise RuntimeError(f"the bare view of {self.part} shows something else")
        return len(answer.encode())

    def _typed(self, width: Mm) -> str:
        """Fill the form in, post it, and keep what was posted: the form's version comes again."""
        form = content(self.client.get(self.address, headers=_htmx(self.part))).decode()
        typed = urlencode(Typed(form).values | {"width": write(width, self.job.unit)})
        self._post(typed)
        return typed

    def _post(self, typed: str) -> bytes:
        headers = _htmx(self.part)
        return content(self.client.post(self.address, typed, content_type=AS_FORM, headers=headers))


def edits(client: Client, job: Job) -> Iterator[tuple[str, Edit]]:
    """An opening that a door closes, a cabinet, and a box."""
    opening = Opening.objects.filter(cabinet__job=job, closed_by="door").order_by("pk")[0]
    cabinet = Cabinet.objects.filter(job=job).order_by("-pk")[0]
    boxes = Box.objects.filter(front__opening__cabinet__job=job, shelf_pins__isnull=False)
    box = boxes.select_related("front").order_by("pk")[0]
    boxed = box.front.opening_id
    places: tuple[tuple[str, str, list[int], str, Mm, Mm], ...] = (
        ("opening", "opening-edit", [opening.pk], f"opening-{opening.pk}", opening.width, -CHANGE),
        ("cabinet", "cabinet-edit", [cabinet.pk], f"cabinet-{cabinet.pk}", cabinet.width, CHANGE),
        ("box", "box-edit", [boxed, box.front.position], f"opening-{boxed}", box.width, -CHANGE),
    )  # fmt: skip
    for what, page, args, part, width, change in places:
        address = reverse(f"fronts:{page}", args=[job.pk, *args])
        yield what, Edit(client, job, address, part, (width + change, width))


def figures() -> Iterator[Figure]:
    """The answer to each edit beside its bare view, and what follows it."""
    urls = override_settings(ROOT_URLCONF=__name__, ALLOWED_HOSTS=["localhost"])
    with urls, database():
        job = load_demo()
        if job is None:
            raise RuntimeError("the demo kitchen is there already")
        client = Client(SERVER_NAME="localhost")
        client.force_login(Person.objects.get(shop=job.shop, role=Role.OWNER))
        for what, edit in edits(client, job):
            yield from _beside_bare(what, edit)
        yield _follows(client, job)


def _beside_bare(what: str, edit: Edit) -> Iterator[Figure]:
    size = edit.make_ready()

    def constant_post() -> bytes:
        return content(edit.client.post(f"/constant/{size}/"))

    answer, bare_answer, plain = _best_in_turn([edit.post, edit.bare, constant_post])
    yield Figure(f"{what}: {size:,} bytes of plain text", plain, "ms")
    yield Figure(f"{what}: bare view of the same template", bare_answer, "ms")
    yield Figure(f"{what}: an edit's answer, POST to HTML", answer, "ms", MOST_TIMES * bare_answer)
    yield Figure("  in times of the bare view", answer / bare_answer, "times", MOST_TIMES)


def _best_in_turn(things: Sequence[Callable[[], object]]) -> list[float]:
    """The best time of each, in milliseconds, each done once in every round."""
    times = [[best_ms(do, 1) for do in things] for _ in range(ROUNDS)]
    return [min(each) for each in zip(*times, strict=True)]


def _follows(client: Client, job: Job) -> Figure:
    """What the page fetches after every change: the drawing, the findings and the fronts."""
    address = reverse("fronts:job-measure", args=[job.pk])

    def follow() -> bytes:
        return content(client.get(address, headers=_htmx("follows")))

    told = f"drawing, findings and fronts after it, {len(follow()):,} bytes"
    return Figure(told, best_ms(follow, ROUNDS // 2), "ms")


def content(response: Any) -> bytes:
    """What was answered; RuntimeError where the site refused."""
    if response.status_code != HTTPStatus.OK:
        raise RuntimeError(f"{response.request['PATH_INFO']} answered {response.status_code}")
    body: bytes = response.content
    return body


def _htmx(target: str) -> dict[str, str]:
    return {"HX-Request": "true", "HX-Target": target}
