"""How soon a page shows what it is for, on a phone with a slow connection.

    python3 manage.py bench paint

Chromium on a processor four times as slow, over the line that Lighthouse calls "Slow 4G": 1.6
Mbit/s, 150 ms there and back (github.com/GoogleChrome/lighthouse, docs/throttling.md). Each page
is opened by somebody whose phone has the shop's styles and scripts already, and on a phone that
has nothing: by a link, which asks to sign in first, and from the list of jobs. A page's time
begins when it is asked for itself, after whatever sent there.
"""

import os
import statistics
from collections.abc import Iterator

from django.contrib.auth.hashers import PBKDF2PasswordHasher, make_password
from playwright.sync_api import Browser, Page, ViewportSize, sync_playwright

from fronts.services.demo import load_demo
from shopjobs.bootstrap import chromium
from shopjobs.models import Job, Person, Role
from tests.benchmarks.browser_speed import browser_speed
from tests.benchmarks.figures import Figure, database
from tests.benchmarks.over_http import served
from tests.browser.conftest import ARGUMENTS
from tests.factories import PASSWORD

SLOWER = 4
SLOW_4G = {
    "offline": False, "latency": 150, "downloadThroughput": 1_600_000 / 8,
    "uploadThroughput": 750_000 / 8,
}  # fmt: skip
PHONE: ViewportSize = {"width": 390, "height": 844}
MOST_MS = 1000
ROUNDS = 5
PAGES = {"the jobs": "/jobs/", "Measure": "/jobs/{}/", "Fit": "/jobs/{}/fit/"}
PAINTED = """performance.getEntriesByName('first-contentful-paint')[0].startTime
  - performance.getEntriesByType('navigation')[0].redirectEnd"""
SENT = """[performance.getEntriesByType('navigation')[0],
           ...performance.getEntriesByType('resource')]
  .reduce((sum, one) => sum + one.transferSize, 0) / 1000"""


def figures() -> Iterator[Figure]:
    """Until each page is painted first, and all that was sent for it."""
    os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "true"
    with database(), served() as port, sync_playwright() as playwright:
        load_demo()
        owner = Person.objects.get(role=Role.OWNER)
        # The server that is measured keeps passwords as a shop's does, not as the tests do.
        owner.password = make_password(PASSWORD, hasher=PBKDF2PasswordHasher())
        owner.save()
        job = Job.objects.order_by("pk")[0]
        browser = playwright.chromium.launch(executable_path=chromium(), args=ARGUMENTS)
        yield browser_speed(browser.new_page())
        for what, address in PAGES.items():
            page = address.format(job.pk)
            sign_in, linked, known = _opened(browser, port, owner.username, [page, page])
            if page == PAGES["the jobs"]:
                yield Figure("signing in, on a new phone", sign_in[0], "ms", MOST_MS)
                yield Figure("  sent to it", sign_in[1], "kB")
            yield Figure(f"{what}, on a phone that is known", known[0], "ms", MOST_MS)
            yield Figure(f"{what}, on a new phone, by a link", linked[0], "ms", MOST_MS)
            yield Figure("  sent to it", linked[1], "kB")
            if page != PAGES["the jobs"]:
                *_, after = _opened(browser, port, owner.username, [PAGES["the jobs"], page])
                yield Figure(f"{what}, on a new phone, from the jobs", after[0], "ms", MOST_MS)
        browser.close()


def _opened(
    browser: Browser, port: int, username: str, addresses: list[str]
) -> list[tuple[float, float]]:
    """On a new phone, the page to sign in and those that are opened in turn.

    Of each the milliseconds until it is painted, and the kilobytes sent.
    """
    rounds = [list(_on_a_phone(browser, port, username, addresses)) for _ in range(ROUNDS)]
    return [
        (statistics.median(ms for ms, _ in times), statistics.median(sent for _, sent in times))
        for times in zip(*rounds, strict=True)
    ]


def _on_a_phone(
    browser: Browser, port: int, username: str, addresses: list[str]
) -> Iterator[tuple[float, float]]:
    context = browser.new_context(viewport=PHONE, base_url=f"http://127.0.0.1:{port}")
    page = context.new_page()
    session = context.new_cdp_session(page)
    session.send("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
    session.send("Network.enable")
    session.send("Network.emulateNetworkConditions", SLOW_4G)
    first, *others = addresses
    page.goto(first)
    yield _seen(page)
    page.get_by_label("Sign-in name").fill(username)
    page.get_by_label("Password").fill(PASSWORD)
    page.get_by_role("button", name="Sign in").click()
    page.wait_for_url(first)
    yield _seen(page)
    for address in others:
        page.goto(address)
        yield _seen(page)
    context.close()


def _seen(page: Page) -> tuple[float, float]:
    page.wait_for_load_state("networkidle")
    return page.evaluate(PAINTED), page.evaluate(SENT)
