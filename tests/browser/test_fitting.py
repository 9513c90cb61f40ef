"""Fitting with one thumb on a phone: how many taps, how large, and what is on the first screen."""

import re
from collections.abc import Iterator
from fractions import Fraction

import pytest
from playwright.sync_api import Browser, Page, expect
from pytest_django.live_server_helper import LiveServer

from fronts.models import Cabinet, FitRecord, Front, Opening, PrintedSheet, WorkTick
from fronts.rules.practice import inches
from fronts.services.demo import load_demo
from shopjobs.models import Person, Role
from tests.browser.conftest import PHONE, come_in, open_context

pytestmark = pytest.mark.slow
ALL_AS_PLANNED, WITH_SIX_OFF = 80, 120
"""The most taps for the demo's 38 fronts, from the list of its cabinets."""
OFF = ("B1.a", "B3.a.1", "B5.b", "T1.a", "W6.a.2", "W2.a.1")


@pytest.fixture
def kitchen(db: None) -> Cabinet:
    """The demo kitchen's first cabinet."""
    demo = load_demo()
    return Cabinet.objects.filter(job=demo).order_by("position", "pk")[0]


@pytest.fixture
def phone(browser: Browser, live_server: LiveServer, kitchen: Cabinet) -> Iterator[Page]:
    """The phone of the demo shop's installer."""
    shop = kitchen.job.shop
    context = open_context(browser, live_server, PHONE)
    come_in(context, live_server, Person.objects.filter(shop=shop, role=Role.INSTALLER)[0])
    page = context.new_page()
    page.set_viewport_size({"width": PHONE, "height": 844})
    yield page
    context.close()


def test_the_figures_of_the_first_front_are_on_the_first_screen(
    phone: Page, kitchen: Cabinet
) -> None:
    """Its drawing, its size in 24 px or more, and the first figures to set, over the bar."""
    phone.goto(f"/jobs/{kitchen.job_id}/fit/{kitchen.pk}/")
    bar = phone.locator(".fit-bar").bounding_box()
    assert bar is not None
    for part in (".at-wall > .drawn svg", ".big", ".figures .key"):
        box = phone.locator(part).first.bounding_box()
        assert box is not None
        assert box["y"] + box["height"] <= bar["y"], part
    size = phone.locator(".big").first.evaluate("one => parseFloat(getComputedStyle(one).fontSize)")
    assert size >= 24
    wide = phone.evaluate("document.documentElement.scrollWidth")
    assert wide == PHONE
    small = phone.evaluate("""() => [...document.querySelectorAll(
      ".record button:not(.aside), .works summary, .step")].filter((one) => one.checkVisibility())
      .map((one) => one.getBoundingClientRect().height).filter((height) => height < 44)""")
    assert small == []


def test_a_kitchen_is_fitted_in_few_taps(phone: Page, kitchen: Cabinet) -> None:
    """A tap a front and one to the next; what is off by its − and +, three taps more each."""
    phone.goto(f"/jobs/{kitchen.job_id}/fit/")
    phone.locator(".cabinets a").first.tap()
    taps = 1
    while "All done" not in (where := phone.locator("#where-next")).inner_text():
        label = where.inner_text().removeprefix("Next: ").strip()
        record = phone.locator(f"[id='record-{label}']")
        if not record.count():
            where.get_by_role("link").tap()
            expect(record).to_be_visible()
            taps += 1
        if label in OFF:
            record.get_by_text("Not as planned").tap()
            record.get_by_label("Top: more").tap()
            record.get_by_label("Bottom: less").tap()
            record.get_by_role("button", name="Done", exact=True).tap()
            taps += 4
        else:
            record.get_by_role("button", name="As planned").tap()
            taps += 1
        expect(record.locator(".state")).to_contain_text("done")
        expect(where).not_to_contain_text(label)

    assert taps <= WITH_SIX_OFF
    assert taps - 3 * len(OFF) <= ALL_AS_PLANNED
    done = FitRecord.objects.filter(state="done")
    assert done.count() == Front.objects.filter(opening__cabinet__job=kitchen.job).count() == 38
    for one in done.filter(label__in=OFF):
        assert one.gap_top == (one.planned_top or 0) + inches(1, 16)


def test_less_and_more_say_what_the_gap_is_now(phone: Page, kitchen: Cabinet) -> None:
    """Also from what is planned between two marks of a rule, or typed with a comma."""
    opening = Opening.objects.get(cabinet=kitchen, label="a")
    opening.x += Fraction(1, 10)
    opening.save()
    phone.goto(f"/jobs/{kitchen.job_id}/fit/{kitchen.pk}/")
    record = phone.locator("[id='record-B1.a']")
    record.get_by_text("Not as planned").tap()
    left, more = record.get_by_label("Left planned"), record.get_by_label("Left: more")
    expect(left).to_have_attribute("placeholder", "≈1")

    left.fill("12 15/16")
    assert left.evaluate("field => field.scrollWidth <= field.clientWidth")

    for typed, shown in (("", "1 1/16"), ("1,5", "1 9/16"), ('1-1/2"', "1 9/16")):
        left.fill(typed)
        more.tap()
        expect(left).to_have_value(shown)
        expect(record.get_by_role("status")).to_have_text(f"Left: {shown}")


def test_a_step_waits_for_a_signal_as_a_record_does(phone: Page, kitchen: Cabinet) -> None:
    """Each by itself and in its order, sent once the signal is back.

    The front that is recorded says that it waits, and the bar goes on to the next one.
    """
    phone.goto(f"/jobs/{kitchen.job_id}/fit/{kitchen.pk}/")
    work = phone.locator("[id='record-B1.a-work']")
    work.locator("summary").tap()
    phone.context.set_offline(True)
    for step in (0, 1):
        work.locator(".step").nth(step).tap()
        expect(phone.locator("#waiting")).to_contain_text(
            "1 entry waits" if not step else "2 entries wait"
        )
    phone.locator("[id='record-B1.a']").get_by_role("button", name="As planned").tap()
    expect(phone.locator("#waiting")).to_contain_text("3 entries wait")
    expect(phone.locator(".fit-bar .waits-here")).to_have_count(1)
    following = phone.locator("#where-next a")
    expect(following).to_have_text("Next: B2.a.1")
    expect(following).to_have_attribute("href", re.compile(r"/\d+/#record-B2\.a\.1-front$"))

    phone.context.set_offline(False)
    expect(phone.locator("#waiting")).not_to_contain_text("wait")

    assert WorkTick.objects.count() == 2
    assert FitRecord.objects.get().state == "done"


def test_two_phones_on_one_front_both_keep_what_they_wrote(
    phone: Page, kitchen: Cabinet, browser: Browser, live_server: LiveServer
) -> None:
    """One without a signal: once that is back, it is told that somebody was there meanwhile."""
    address = f"/jobs/{kitchen.job_id}/fit/{kitchen.pk}/"
    phone.goto(address)
    phone.context.set_offline(True)
    phone.locator("[id='record-B1.a']").get_by_role("button", name="As planned").tap()
    expect(phone.locator("#waiting")).to_contain_text("1 entry waits")
    context = open_context(browser, live_server, PHONE)
    owner = Person.objects.filter(shop=kitchen.job.shop, role=Role.OWNER)[0]
    come_in(context, live_server, owner)
    other = context.new_page()
    other.goto(address)
    record = other.locator("[id='record-B1.a']")
    record.get_by_text("Not as planned").tap()
    record.get_by_role("button", name="Damaged").tap()
    expect(record.locator(".state")).to_contain_text("damaged")
    context.close()

    phone.context.set_offline(False)

    expect(phone.locator("#waiting")).to_contain_text(
        f"{owner.shown_name} recorded B1.a too", timeout=10_000
    )
    states = FitRecord.objects.filter(label="B1.a").order_by("fitted_at")
    assert [record.state for record in states] == ["done", "damaged"]


def test_a_code_on_a_sheet_says_that_its_cabinet_has_changed(phone: Page, kitchen: Cabinet) -> None:
    """Typed as it stands on the paper it leads to what changed, and from there to the cabinet."""
    phone.request.get(f"/jobs/{kitchen.job_id}/sheets/fitting/{kitchen.pk}/")
    code = PrintedSheet.objects.get(job=kitchen.job).code
    phone.goto(f"/jobs/{kitchen.job_id}/fit/")
    field = phone.get_by_label("Code on the sheet")
    field.fill(code)
    field.press("Enter")
    expect(phone.locator(".verdict")).to_contain_text("Still true")
    Opening.objects.filter(cabinet=kitchen, label="a").update(
        measured_width_top=inches(239, 16), measured_width_bottom=inches(239, 16)
    )

    phone.goto(f"/s/{code}/")

    expect(phone.locator(".verdict")).to_contain_text("No longer true.")
    changed = phone.locator(".changed-figures tr", has_text="lap left")
    expect(changed).to_contain_text("+1/2")
    expect(changed).to_contain_text("+17/32")
    phone.get_by_role("link", name="Fit B1").tap()
    expect(phone.get_by_role("heading", name="Cabinet B1")).to_be_visible()
