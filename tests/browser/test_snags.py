"""Snags on a phone: written down without a signal, with photos, each sent once."""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from PIL import Image
from PIL.ExifTags import GPS, IFD
from playwright.sync_api import Page, Route, expect

from fronts.models import Cabinet, Snag, SnagPhoto
from shopjobs.models import Job, Person
from tests.browser.conftest import PHONE
from tests.factories import NOW, CabinetFactory, OpeningFactory, overlaid

pytestmark = [
    pytest.mark.thorough, pytest.mark.parametrize("width", [PHONE], ids=["phone"])
]  # fmt: skip


@pytest.fixture(autouse=True)
def _uploads(settings: Any, tmp_path: Path) -> None:
    settings.MEDIA_ROOT = str(tmp_path / "uploads")


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """B1, with a door."""
    overlaid(job)
    return OpeningFactory.create(cabinet=CabinetFactory.create(job=job)).cabinet


@pytest.fixture
def along(page: Page, job: Job, cabinet: Cabinet) -> Iterator[Page]:
    """A phone that has the job along, and no signal."""
    page.goto(f"/jobs/{job.pk}/fit/")
    page.get_by_role("button", name="Take this job along").click()
    expect(page.locator("[data-along-said]")).to_have_text("On this phone, also without a signal.")
    page.context.set_offline(True)
    yield page
    page.context.set_offline(False)


@pytest.fixture
def photo(tmp_path: Path) -> Path:
    """A photo larger than a page needs, with the place where it was taken."""
    exif = Image.Exif()
    exif.get_ifd(IFD.GPSInfo)[GPS.GPSLatitude] = (52.0, 30.0, 0.0)
    file = tmp_path / "IMG_1.jpg"
    Image.new("RGB", (2400, 1200), "sienna").save(file, exif=exif)
    return file


def write(page: Page, words: str, photo: Path | None = None) -> None:
    """Write a snag down on the door where one stands."""
    form = page.locator("#snag-new")
    if not form.is_visible():
        page.get_by_text("A new snag").click()
    form.get_by_label("What is wrong").fill(words)
    form.get_by_label("On", exact=True).select_option(label="B1.a")
    if photo:
        form.get_by_label("Take a photo").set_input_files(photo)
    page.get_by_role("button", name="Write the snag down").click()


def test_snags_wait_each_by_itself_and_come_once(
    along: Page, cabinet: Cabinet, job: Job, photo: Path
) -> None:
    """At the cabinet: with a photo, without, one after the other from the same form."""
    along.goto(f"/jobs/{job.pk}/fit/{cabinet.pk}/")
    write(along, "scratched", photo)
    expect(along.locator("#waiting")).to_contain_text("1 entry waits to be sent.")
    expect(along.locator("#snag-new textarea")).to_have_value("")
    write(along, "knob turns")
    expect(along.locator("#waiting")).to_contain_text("2 entries wait to be sent.")
    write(along, "rubs on the stile")
    expect(along.locator("#waiting")).to_contain_text("3 entries wait to be sent.")
    assert not Snag.objects.exists()

    along.context.set_offline(False)
    along.get_by_role("button", name="Send now").click()
    expect(along.locator("#waiting")).to_be_empty()
    found = list(Snag.objects.order_by("pk"))
    assert [one.words for one in found] == ["scratched", "knob turns", "rubs on the stile"]
    assert all(one.label == "B1.a" and one.cabinet == cabinet for one in found)
    with Image.open(SnagPhoto.objects.get().image.path) as taken:
        assert taken.size == (1600, 800)
        assert not taken.getexif()
    expect(along.locator("#snags .what")).to_have_count(3)


def test_a_photo_that_takes_its_time_stays_with_its_own_snag(
    along: Page, cabinet: Cabinet, job: Job, photo: Path
) -> None:
    """Made small only once its form is empty again: the next snag has none of it."""
    along.goto(f"/jobs/{job.pk}/fit/{cabinet.pk}/")
    along.evaluate("""() => {
        const at_once = createImageBitmap;
        const slow = new Promise((go) => { window.go_on = go; });
        window.createImageBitmap = async (...what) => { await slow; return at_once(...what); };
    }""")
    write(along, "scratched", photo)
    expect(along.locator("#waiting")).to_contain_text("1 entry waits to be sent.")
    along.evaluate("""() => new Promise((made) => {
        const small = OffscreenCanvas.prototype.convertToBlob;
        OffscreenCanvas.prototype.convertToBlob = async function (...how) {
            const blob = await small.apply(this, how);
            setTimeout(made, 100);
            return blob;
        };
        window.go_on();
    })""")
    write(along, "knob turns")
    expect(along.locator("#waiting")).to_contain_text("2 entries wait to be sent.")

    along.context.set_offline(False)
    along.get_by_role("button", name="Send now").click()
    expect(along.locator("#waiting")).to_be_empty()
    assert SnagPhoto.objects.get().snag.words == "scratched"


def test_a_lost_answer_makes_one_snag(page: Page, job: Job, cabinet: Cabinet) -> None:
    """It was saved, nobody heard of it; sent again it is answered as the first time."""
    page.goto(f"/jobs/{job.pk}/snags/")

    def lose(route: Route) -> None:
        if route.request.method != "POST":
            route.continue_()
            return
        route.fetch()
        route.abort()

    page.route("**/snags/", lose)
    write(page, "scratched")
    expect(page.locator("#waiting")).to_contain_text("1 entry waits to be sent.")
    assert Snag.objects.count() == 1
    page.unroute("**/snags/")
    page.get_by_role("button", name="Send now").click()
    expect(page.locator("#waiting")).to_be_empty()
    assert Snag.objects.count() == 1


def test_two_phones_on_one_snag(along: Page, job: Job, cabinet: Cabinet, office: Person) -> None:
    """Settled without a signal while somebody else settled it: both are shown, none is dropped."""
    along.context.set_offline(False)
    along.goto(f"/jobs/{job.pk}/snags/")
    write(along, "scratched")
    expect(along.locator(".snag .what")).to_have_text("scratched")
    along.context.set_offline(True)
    along.get_by_text("Done …").click()
    along.get_by_label("What was done").fill("filled")
    along.get_by_role("button", name="It is done").click()
    expect(along.locator("#waiting")).to_contain_text("1 entry waits to be sent.")
    Snag.objects.update(done_at=NOW, done_by=office, done_note="polished", changed_at=NOW)

    along.context.set_offline(False)
    along.get_by_role("button", name="Send now").click()
    waiting = along.locator("#waiting")
    expect(waiting).to_contain_text("1 to settle.")
    expect(waiting).to_contain_text("“polished”")
    expect(waiting).to_contain_text("“filled”")
    assert Snag.objects.get().done_note == "polished"
