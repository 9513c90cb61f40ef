"""How soon a page shows what it is for, on a phone with a slow connection.

    python3 manage.py bench paint

Chromium on a processor four times as slow, over the line that Lighthouse calls "Slow 4G": 1.6
Mbit/s, 150 ms there and back (github.com/GoogleChrome/lighthouse, docs/throttling.md). Each page
is opened by somebody whose phone has the shop's styles and scripts already, and by somebody new.
"""

import os
import statistics
from collections.abc import Iterator

from playwright.sync_api import Browser, ViewportSize, sync_playwright

from fronts.services.demo import load_demo
from shopjobs.bootstrap import chromium
from shopjobs.models import Job, Person, Role
from tests.benchmarks.figures import Figure, database
from tests.benchmarks.over_http import Visitor, served
from tests.browser.conftest import ARGUMENTS

SLOWER = 4
SLOW_4G = {
    "offline": False, "latency": 150, "downloadThroughput": 1_600_000 / 8,
    "uploadThroughput": 750_000 / 8,
}  # fmt: skip
PHONE: ViewportSize = {"width": 390, "height": 844}
MOST_MS = 1000
ROUNDS = 5
PAGES = {"the jobs": "/jobs/", "Measure": "/jobs/{}/", "Fit": "/jobs/{}/fit/"}
PAINTED = "performance.getEntriesByName('first-contentful-paint')[0].startTime"
SENT = """[performance.getEntriesByType('navigation')[0],
           ...performance.getEntriesByType('resource')]
  .reduce((sum, one) => sum + one.transferSize, 0) / 1000"""


def figures() -> Iterator[Figure]:
    """Until each page is painted first, and all that was sent for it."""
    os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "true"
    with database(), served() as port, sync_playwright() as playwright:
        load_demo()
        visitor = Visitor(Person.objects.get(role=Role.OWNER), port)
        job = Job.objects.order_by("pk")[0]
        browser = playwright.chromium.launch(executable_path=chromium(), args=ARGUMENTS)
        for what, address in PAGES.items():
            page = f"http://127.0.0.1:{port}{address.format(job.pk)}"
            new, known = zip(
                *(_opened_twice(browser, visitor, page) for _ in range(ROUNDS)), strict=True
            )
            for who, times in (("known", known), ("new", new)):
                painted = statistics.median(painted for painted, _ in times)
                yield Figure(f"{what}, on a phone that is {who}", painted, "ms", MOST_MS)
            yield Figure("  sent to a new one", statistics.median(sent for _, sent in new), "kB")
        browser.close()


def _opened_twice(browser: Browser, visitor: Visitor, address: str) -> list[tuple[float, float]]:
    """The time until painted and the kilobytes sent: on a new phone, and once it was there."""
    context = browser.new_context(viewport=PHONE)
    context.add_cookies(
        [{"name": name, "value": value, "url": address} for name, value in visitor.cookies.items()]
    )
    page = context.new_page()
    session = context.new_cdp_session(page)
    session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    session.send("Network.enable")
    session.send("Network.emulateNetworkConditions", SLOW_4G)
    found = []
    for _ in range(2):
        page.goto(address)
        page.wait_for_load_state("networkidle")
        found.append((page.evaluate(PAINTED), page.evaluate(SENT)))
    context.close()
    return found
