"""How soon a page shows what it is for, on a phone with a slow connection.

    python3 manage.py bench paint

Chromium on a processor four times as slow, over the line that Lighthouse calls "Slow 4G": 1.6
Mbit/s, 150 ms there and back (github.com/GoogleChrome/lighthouse, docs/throttling.md). Each page
is opened by somebody whose phone has the shop's styles and scripts already, by somebody new who
comes from the list of jobs, and by somebody new who follows a link to it.
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
            pages = [address.format(job.pk)] * 2
            new, known = _opened(browser, visitor, pages)
            _, after_the_jobs = _opened(browser, visitor, [PAGES["the jobs"], *pages[:1]])
            for who, (painted, _) in (
                ("on a phone that is known", known),
                ("on a new phone, after the jobs", after_the_jobs),
                ("on a new phone, before any other page", new),
            ):
                yield Figure(f"{what}, {who}", painted, "ms", MOST_MS)
            yield Figure("  sent to a new one", new[1], "kB")
        browser.close()


def _opened(browser: Browser, visitor: Visitor, addresses: list[str]) -> list[tuple[float, float]]:
    """Until each is painted, and the kilobytes sent, on a new phone that opens them in turn."""
    rounds = [list(_on_a_phone(browser, visitor, addresses)) for _ in range(ROUNDS)]
    return [
        (statistics.median(ms for ms, _ in times), statistics.median(sent for _, sent in times))
        for times in zip(*rounds, strict=True)
    ]


def _on_a_phone(
    browser: Browser, visitor: Visitor, addresses: list[str]
) -> Iterator[tuple[float, float]]:
    site = f"http://127.0.0.1:{visitor.port}"
    context = browser.new_context(viewport=PHONE, base_url=site)
    context.add_cookies(
        [{"name": name, "value": value, "url": site} for name, value in visitor.cookies.items()]
    )
    page = context.new_page()
    session = context.new_cdp_session(page)
    session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    session.send("Network.enable")
    session.send("Network.emulateNetworkConditions", SLOW_4G)
    for address in addresses:
        page.goto(address)
        page.wait_for_load_state("networkidle")
        yield page.evaluate(PAINTED), page.evaluate(SENT)
    context.close()
