"""A real Chromium, signed in, at the width of a desk and of a phone.

Where there is no Chromium the tests here can't run; the closing lines say so, and
under CI they fail instead.
"""

import os
import threading
import time
from collections.abc import Iterator

import pytest
from django.conf import settings
from django.test import Client
from playwright.sync_api import Browser, BrowserContext, Page, expect, sync_playwright
from pytest_django.live_server_helper import LiveServer

from shopjobs.bootstrap import chromium
from shopjobs.models import Person
from tests.factories import PASSWORD
from tests.plans_to_look_at import no_search_for_offcuts

__all__ = ["no_search_for_offcuts"]

DESK = 1280
PHONE = 390
AT_A_DESK = pytest.mark.parametrize("width", [DESK], ids=["desk"])
ON_A_PHONE = pytest.mark.parametrize("width", [PHONE], ids=["phone"])
"""What has nothing to do with the window's width is tried at one of them."""
SMALLEST_TARGET = 44
"""The least height in CSS px of what a finger presses."""
ARGUMENTS = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
LAST_ANSWER_S = 30
FIRST_PAGE_MS = 30_000
"""A page may be the first that the server draws, on a machine that does much else."""
SEEN_MS = 20_000
"""How long is waited for what a page shows; what never comes is as wrong after it."""
NO_CHROMIUM = "Browser tests can't run: Chromium is not installed (Debian's package: chromium)"


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """The system's Chromium, started once."""
    path = chromium()
    if path is None:
        if os.environ.get("CI"):
            pytest.fail(NO_CHROMIUM)
        pytest.skip(NO_CHROMIUM)
    # Playwright's own loop runs in this thread, and Django takes that for async code.
    before = os.environ.get("DJANGO_ALLOW_ASYNC_UNSAFE")
    os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "true"
    expect.set_options(timeout=SEEN_MS)
    with sync_playwright() as playwright:
        chosen = playwright.chromium.launch(executable_path=path, args=ARGUMENTS)
        yield chosen
        chosen.close()
    if before is None:
        del os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"]


@pytest.fixture(autouse=True)
def answered(live_server: LiveServer) -> Iterator[None]:
    """Hold the end of a test until the server has answered what its closed windows asked.

    A request still under way would meet the emptying of the tables: PostgreSQL calls that
    a deadlock and gives the emptying up, and the next test finds this one's rows.
    """
    yield
    end = time.monotonic() + LAST_ANSWER_S
    while under_way := [thread for thread in threading.enumerate() if _answers(thread)]:
        assert time.monotonic() < end, f"after the test the server still answers: {under_way}"
        under_way[0].join(0.5)


def _answers(thread: threading.Thread) -> bool:
    """Tell the live server's threads, one a connection, by the name the library gives them."""
    return "process_request_thread" in thread.name


@pytest.fixture(params=[DESK, PHONE], ids=["desk", "phone"])
def width(request: pytest.FixtureRequest) -> int:
    """The width of the window, in CSS pixels: each test runs at both."""
    chosen: int = request.param
    return chosen


def open_context(
    browser: Browser, live_server: LiveServer, width: int, *, scripts: bool = True
) -> BrowserContext:
    """Open a window of its own; on a phone's width it is touched, not clicked."""
    context = browser.new_context(
        base_url=live_server.url,
        viewport={"width": width, "height": 900},
        has_touch=width == PHONE,
        java_script_enabled=scripts,
    )
    context.set_default_timeout(SEEN_MS)
    context.set_default_navigation_timeout(FIRST_PAGE_MS)
    return context


def sign_in(page: Page, username: str) -> None:
    """Sign in as a person does."""
    page.goto("/sign-in/")
    page.get_by_label("Sign-in name").fill(username)
    page.get_by_label("Password").fill(PASSWORD)
    page.get_by_role("button", name="Sign in").click()
    page.wait_for_url("**/jobs/")


@pytest.fixture
def open_page(browser: Browser, live_server: LiveServer, width: int) -> Iterator[Page]:
    """A page at the test's width, where nobody is signed in; its errors fail the test."""
    context = open_context(browser, live_server, width)
    page = context.new_page()
    faults: list[str] = []
    page.on("pageerror", lambda fault: faults.append(str(fault)))
    page.on("console", lambda said: faults.append(said.text) if _is_fault(said.text) else None)
    yield page
    context.close()

    assert faults == []


def come_in(context: BrowserContext, live_server: LiveServer, person: Person) -> None:
    """Let the window be one in which the person has signed in, without the way through its form."""
    client = Client()
    client.force_login(person)
    value = client.cookies[settings.SESSION_COOKIE_NAME].value
    context.add_cookies(
        [{"name": settings.SESSION_COOKIE_NAME, "value": value, "url": live_server.url}]
    )


@pytest.fixture
def page(open_page: Page, live_server: LiveServer, owner: Person) -> Page:
    """A page at the test's width on which the owner is signed in."""
    come_in(open_page.context, live_server, owner)
    return open_page


@pytest.fixture
def plain_page(
    browser: Browser, live_server: LiveServer, width: int, owner: Person
) -> Iterator[Page]:
    """A page like `page`, in a browser that runs no scripts."""
    context = open_context(browser, live_server, width, scripts=False)
    come_in(context, live_server, owner)
    yield context.new_page()
    context.close()


def _is_fault(text: str) -> bool:
    return "Content Security Policy" in text or "Uncaught" in text
