"""How many keys a kitchen takes that is typed in from a notebook, and how soon it is drawn.

    python3 manage.py bench entry

A browser types two notebooks by keyboard alone, into the rows of a wall's table and as lines.
Then an edit of a cell is followed in a browser on a processor four times as slow: how long the
server takes to save it, and how long until the drawing shows it.
"""

import os
import statistics
from collections.abc import Iterator
from contextlib import contextmanager
from fractions import Fraction

from django.conf import settings
from django.test import Client
from playwright.sync_api import Page, sync_playwright

from fronts.notebook import read_notebook
from shopjobs.bootstrap import chromium
from shopjobs.models import Job, Person
from tests.benchmarks.browser_speed import browser_speed
from tests.benchmarks.figures import Figure, database
from tests.benchmarks.over_http import served
from tests.browser.conftest import ARGUMENTS, DESK
from tests.browser.typing import NOTEBOOKS, RowTyping, Typist
from tests.factories import JobFactory, PersonFactory, ShopFactory, overlaid

MOST_KEYS_FOR_TEN = 250
MOST_KEYS_A_LETTER = 1.3
MOST_MS_UNTIL_DRAWN = 300
SLOWER = 4
EDITS = 20
WATCH = """size => {
  let start;
  document.addEventListener("keydown", () => { start = performance.now(); }, { once: true });
  window.drawn = new Promise((resolve) => new MutationObserver((_, watch) => {
    if (!document.querySelector("#elevations svg")?.textContent.includes(size)) return;
    watch.disconnect();
    requestAnimationFrame(() => resolve(performance.now() - start));
  }).observe(document.querySelector("main"), { childList: true }));
}"""
"""Keeps how long it is from the next key until the size stands in the drawing and is painted."""


def figures() -> Iterator[Figure]:
    """The keys of each notebook in each way, and the times of an edit."""
    os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "true"
    with database(), served() as port:
        owner = PersonFactory.create(shop=ShopFactory.create(), owner=True)
        with window(owner, port) as page:
            for name in ("ten", "twenty-five"):
                yield from _keys(page, owner, name)
            job = Job.objects.order_by("-pk")[0]
            yield from _edits(page, job)


@contextmanager
def window(person: Person, port: int) -> Iterator[Page]:
    """A browser in which the person is signed in."""
    client, site = Client(), f"http://127.0.0.1:{port}"
    client.force_login(person)
    name = settings.SESSION_COOKIE_NAME
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium(), args=ARGUMENTS)
        context = browser.new_context(base_url=site, viewport={"width": DESK, "height": 900})
        context.add_cookies([{"name": name, "value": client.cookies[name].value, "url": site}])
        yield context.new_page()
        browser.close()


def _keys(page: Page, owner: Person, name: str) -> Iterator[Figure]:
    text = (NOTEBOOKS / f"{name}.txt").read_text()
    for way in ("as lines", "in rows"):
        job = JobFactory.create(shop=owner.shop)
        overlaid(job)
        kitchen = read_notebook(text, "in", Fraction(job.step))
        fronts = sum(len(one.fronts) for each in kitchen.cabinets for one in each.openings)
        page.goto(f"/jobs/{job.pk}/")
        typist = Typist(page)
        typist.lines(text) if way == "as lines" else RowTyping(typist, kitchen).all(text)
        what = f"{name} cabinets, {fronts} fronts, {way}"
        most = MOST_KEYS_A_LETTER * typist.written + typist.fields
        if way == "in rows" and name == "ten":
            most = MOST_KEYS_FOR_TEN
        yield Figure(f"keys: {what}", typist.keys, "keys", most)
        yield Figure(f"keys a front: {what}", typist.keys / fronts, "keys")
        yield Figure(f"keys a letter: {what}", typist.keys / typist.written, "keys")


def _edits(page: Page, job: Job) -> Iterator[Figure]:
    """A cabinet's width, typed and left, again and again."""
    yield browser_speed(page)
    page.goto(f"/jobs/{job.pk}/?wall=North")
    page.wait_for_load_state("networkidle")
    session = page.context.new_cdp_session(page)
    session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    cell = page.get_by_label("Width of B5", exact=True)
    saved, drawn = [], []
    for edit in range(EDITS):
        width = "22" if edit % 2 else "23"
        cell.focus()
        page.keyboard.type(width)
        page.evaluate(WATCH, f"{int(width) - 2} ×")
        with page.expect_response(lambda answer: "/cells/" in answer.url) as answer:
            page.keyboard.press("Enter")
        drawn.append(page.evaluate("window.drawn"))
        saved.append(answer.value.request.timing["responseStart"])
        page.wait_for_load_state("networkidle")
    yield Figure("a cell: the server's answer", statistics.median(saved), "ms")
    what = f"a cell: from Enter until it is drawn, processor {SLOWER} times slowed"
    yield Figure(what, statistics.median(drawn), "ms", MOST_MS_UNTIL_DRAWN)
