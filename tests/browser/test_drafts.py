"""Drafts in a real browser: what is typed comes again until it is saved or dropped."""

import re

import pytest
from playwright.sync_api import Locator, Page, expect

from fronts.models import Cabinet, FitRecord, Opening
from fronts.rules.practice import inches
from shopjobs.models import Job
from tests.browser.conftest import AT_A_DESK
from tests.browser.opened_forms import DRAFTS, line_of, opened, width_in
from tests.pages.kitchens import furnish

pytestmark = [pytest.mark.thorough, AT_A_DESK]
HERE_AGAIN = re.compile(r"What you typed at \d{1,2}:\d\d is here again")


@pytest.fixture
def kitchen(job: Job) -> Job:
    """The job with a small kitchen."""
    furnish(job)
    return job


def closed_and_opened_again(page: Page) -> Page:
    """The tab is closed, and another one opened."""
    context = page.context
    page.close()
    again = context.new_page()
    again.set_default_timeout(10_000)
    return again


def test_a_reload_brings_the_form_back_with_what_was_typed(page: Page, kitchen: Job) -> None:
    """A form that was open in place opens again; the notice says since when; saving ends it."""
    width_in(opened(page, kitchen)).fill("14 1/2")
    page.reload()

    line = line_of(page)
    expect(width_in(line)).to_have_value("14 1/2")
    expect(line.locator(".draft-note")).to_contain_text(HERE_AGAIN)
    expect(line.locator(".preview")).to_contain_text("15 1/2")
    line.get_by_role("button", name="Save").click()
    expect(line.get_by_label("Width of B1.a")).to_have_value("14 1/2")
    assert page.evaluate(DRAFTS) == []

    page.reload()
    expect(line.get_by_label("Width of B1.a")).to_have_value("14 1/2")
    expect(page.locator(".draft:visible")).to_have_count(0)


def test_back_brings_it_too(page: Page, kitchen: Job) -> None:
    """Who looked at another page finds the form as it was typed."""
    width_in(opened(page, kitchen)).fill("14 1/2")
    page.goto("/people/")
    page.go_back()

    expect(width_in(line_of(page))).to_have_value("14 1/2")


def test_a_draft_is_dropped_and_brought_back(page: Page, kitchen: Job) -> None:
    """Dropping shows what is saved; it can be taken back, and nothing is asked first."""
    width_in(opened(page, kitchen)).fill("14 1/2")
    page.reload()
    line = line_of(page)

    line.get_by_role("button", name="Drop it").click()
    expect(width_in(line)).to_have_value("15")
    expect(line.locator(".draft-note")).to_contain_text("What you typed is dropped.")
    assert page.evaluate(DRAFTS) == []

    line.get_by_role("button", name="Bring it back").click()
    expect(width_in(line)).to_have_value("14 1/2")
    assert len(page.evaluate(DRAFTS)) == 1


def test_closing_the_tab_keeps_it(page: Page, kitchen: Job) -> None:
    """A new tab lists what was typed and where; one goes on with it, or drops it."""
    width_in(opened(page, kitchen)).fill("14 1/2")
    again = closed_and_opened_again(page)
    again.goto(f"/jobs/{kitchen.pk}/")

    listed = again.locator(".drafts")
    expect(listed).to_contain_text("Opening B1.a, typed at")
    expect(listed).to_contain_text("Width: 14 1/2")
    listed.get_by_role("button", name="Go on").click()
    opening = Opening.objects.get(cabinet__label="B1")
    form = again.locator(f"form#opening-{opening.pk}")
    expect(width_in(form)).to_have_value("14 1/2")
    expect(form.locator(":focus")).to_have_count(1)
    expect(listed).to_have_count(0)

    again = closed_and_opened_again(again)
    again.goto(f"/jobs/{kitchen.pk}/")
    again.locator(".drafts").get_by_role("button", name="Drop it").click()
    expect(again.locator(".drafts")).to_have_count(0)
    assert again.evaluate(DRAFTS) == []


def test_a_page_of_its_own_keeps_it_and_forgets_it_once_saved(page: Page, kitchen: Job) -> None:
    """A form that is a page is answered by another page, which says that it is saved."""
    address = f"/jobs/{kitchen.pk}/openings/{Opening.objects.get(cabinet__label='B1').pk}/"
    page.goto(address)
    page.get_by_label("Width", exact=True).fill("wide")
    page.get_by_role("button", name="Save").click()
    expect(page.locator(".summary")).to_be_visible()
    page.get_by_label("Width", exact=True).fill("14 1/2")
    again = closed_and_opened_again(page)
    again.goto(address)

    expect(again.get_by_label("Width", exact=True)).to_have_value("14 1/2")
    again.get_by_role("button", name="Save").click()
    expect(again.locator("#said")).to_contain_text("is saved")
    again.wait_for_load_state()
    assert again.evaluate(DRAFTS) == []


def test_what_was_saved_meanwhile_is_said(page: Page, kitchen: Job) -> None:
    """A draft never goes over what somebody else saved in the same field unseen."""
    width_in(opened(page, kitchen)).fill("14 1/2")
    Opening.objects.filter(cabinet__label="B1").update(width=inches(59, 4))
    page.reload()

    line = line_of(page)
    expect(line.locator(".draft-note")).to_contain_text("This was saved anew since you typed at")
    expect(line.locator(".draft-note")).to_contain_text("Width: 14 3/4 by now, you typed 14 1/2")
    expect(width_in(line)).to_have_value("14 3/4")
    page.reload()
    line.get_by_role("button", name="Put in what I typed").click()
    expect(width_in(line)).to_have_value("14 1/2")


def test_another_field_that_was_saved_meanwhile_stays(page: Page, kitchen: Job) -> None:
    """Only what somebody typed comes back; the rest is as others saved it."""
    width_in(opened(page, kitchen)).fill("14 1/2")
    Opening.objects.filter(cabinet__label="B1").update(height=inches(27))
    page.reload()

    line = line_of(page)
    expect(width_in(line)).to_have_value("14 1/2")
    expect(line.get_by_label("Height", exact=True)).to_have_value("27")
    expect(line.locator(".draft-note")).to_contain_text(HERE_AGAIN)


def test_a_new_thing_comes_back_whole(page: Page, kitchen: Job) -> None:
    """A wall cabinet stays one, though its form usually starts with a base cabinet."""
    page.goto(f"/jobs/{kitchen.pk}/")
    page.get_by_role("link", name="Add a wall cabinet").click()
    for name, size in (("width", "21"), ("height", "30"), ("depth", "12"), ("y", "54")):
        page.locator(f"#cabinet-new-{name}").fill(size)
    label = page.locator("#cabinet-new-label").input_value()
    page.reload()

    expect(page.locator("#cabinet-new-width")).to_have_value("21")
    expect(page.locator("#cabinet-new-kind")).to_have_value("wall")
    # By keyboard: the drawing that comes beside the form may move the button under a pointer.
    page.get_by_role("button", name="Enter the cabinet").press("Enter")
    expect(page.locator("#said")).to_contain_text("is entered")
    made = Cabinet.objects.get(label=label)
    assert (made.width, made.kind) == (inches(21), "wall")
    assert page.evaluate(DRAFTS) == []


@pytest.mark.parametrize(
    ("path", "form", "field"),
    [
        ("/jobs/{job}/settings/", "#job-form", "client"),
        ("/jobs/{job}/order/", ".mark form", "note"),
        ("/jobs/{job}/fit/{cabinet}/", ".record form", "note"),
        ("/jobs/{job}/cut/", "#cut-form", "kerf"),
        ("/shop/hardware/stock/", "#shop-stock", "knob_thread"),
        ("/shop/", "#shop-form", "name"),
        ("/people/", "#new-person", "first_name"),
        ("/jobs/", "#new-job", "site"),
        ("/jobs/import/", "#job-import", "number"),
    ],
)
def test_every_page_keeps_its_forms(
    page: Page, kitchen: Job, path: str, form: str, field: str
) -> None:
    """Each kind of form comes back after the tab was closed; dropping puts it back."""
    address = path.format(job=kitchen.pk, cabinet=Cabinet.objects.get(label="B1").pk)

    def shown(on: Page) -> Locator:
        return on.locator(form).first.locator(f"[name={field}]")

    page.goto(address)
    before = shown(page).input_value()
    shown(page).evaluate("field => field.closest('details')?.setAttribute('open', '')")
    shown(page).fill("1/16")
    again = closed_and_opened_again(page)
    again.goto(address)

    expect(shown(again)).to_have_value("1/16")
    expect(shown(again)).to_be_visible()
    expect(again.locator(form).first.locator(".draft-note")).to_contain_text(HERE_AGAIN)
    again.locator(form).first.get_by_role("button", name="Drop it").click()
    expect(shown(again)).to_have_value(before)


def test_a_unit_and_its_step_come_back_together(page: Page, kitchen: Job) -> None:
    """A list whose choices follow another field waits for them."""
    page.goto(f"/jobs/{kitchen.pk}/settings/")
    page.get_by_label("Unit").select_option("mm")
    expect(page.get_by_label("Cutting step").locator("option", has_text="0.5")).to_have_count(1)
    page.get_by_label("Cutting step").select_option("0.5")
    page.reload()

    expect(page.get_by_label("Unit")).to_have_value("mm")
    expect(page.get_by_label("Cutting step")).to_have_value("0.5")


def test_a_record_of_fit_is_made_once_however_it_is_sent(page: Page, kitchen: Job) -> None:
    """A double click, and a draft that is sent again after its answer got lost, make one."""
    cabinet = Cabinet.objects.get(label="B1")
    page.goto(f"/jobs/{kitchen.pk}/fit/{cabinet.pk}/")
    page.get_by_role("button", name="As planned").dblclick()

    expect(page.locator(".record .by")).to_contain_text("Ada, ")
    assert FitRecord.objects.count() == 1
