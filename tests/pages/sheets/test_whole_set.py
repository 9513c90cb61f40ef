"""All sheets of a job: asked for, printed piece by piece, taken away, and not another shop's."""

import io
import zipfile
from collections.abc import Callable
from datetime import timedelta

import pytest
from django.test import Client
from django.utils import timezone

from fronts.models import Cabinet, PrintedSheet, SheetFile, SheetSet
from fronts.rules.practice import inches
from shopjobs.models import BackgroundTask, Job, Paper, Person, Revision
from shopjobs.services.lost_tasks import tasks_tidy, worker_beat
from tests.dom import dom
from tests.factories import CabinetFactory, OpeningFactory, door_and_drawer, overlaid
from tests.pdf_text import page_texts
from tests.queue_work import in_queue, work_off

SignIn = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}
NAMES = [
    "front-schedule.pdf", "hardware.pdf", "jigs-and-shims.pdf", "templates.pdf", "labels.pdf",
    "set-up.pdf",
    "fitting-B1.pdf", "fitting-B2.pdf", "fitting-B3.pdf", "fitting-all.pdf",
]  # fmt: skip


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """Three cabinets; the first of them."""
    overlaid(job)
    first = door_and_drawer(job)
    for number in (2, 3):
        cabinet = CabinetFactory.create(job=job, label=f"B{number}", x=inches(40 * number))
        OpeningFactory.create(cabinet=cabinet)
    return first


def page_of(job: Job) -> str:
    """The page of the job's sheets."""
    return f"/jobs/{job.pk}/sheets/"


def unpacked(client: Client, job: Job) -> dict[str, bytes]:
    """The files that the set's ZIP holds."""
    answer = client.get(f"{page_of(job)}set/zip/")
    assert answer["Content-Disposition"] == 'attachment; filename="K-1 sheets.zip"'
    with zipfile.ZipFile(io.BytesIO(answer.content)) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


def text_of(pdf: bytes) -> str:
    """The words of a PDF."""
    return " ".join(page_texts(pdf))


def test_all_sheets_are_printed_and_taken_away(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """Each in a file of its own, the fitting sheets once more in one; the diary knows."""
    client, job = signed_in(installer), cabinet.job
    assert "Print all 10 sheets" in dom(client.get(page_of(job))).words

    page = dom(client.post(page_of(job), follow=True))
    assert "10 sheets, printed for ines" in page.words
    assert "has changed" not in page.words
    files = unpacked(client, job)

    assert list(files) == NAMES
    assert "B2" in text_of(files["fitting-B2.pdf"])
    answer = client.get(f"{page_of(job)}set/fitting/")
    assert answer["Content-Disposition"] == 'inline; filename="K-1 fitting sheets.pdf"'
    assert answer.content == files["fitting-all.pdf"]
    assert [label in text_of(answer.content) for label in ("B1", "B2", "B3")] == [True] * 3
    assert Revision.objects.filter(job=job, text="Had all sheets printed").exists()


def test_all_fitting_sheets_in_one_are_fetched_once(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """A browser that has the file is told so; of another set it is another."""
    client, job = signed_in(installer), cabinet.job
    path = f"{page_of(job)}set/fitting/"
    client.post(page_of(job))
    first = client.get(path)

    again = client.get(path, headers={"If-None-Match": first["ETag"]})
    assert (again.status_code, again.content) == (304, b"")

    Cabinet.objects.filter(label="B3").update(height=inches(31))
    client.post(page_of(job))
    changed = client.get(path, headers={"If-None-Match": first["ETag"]})
    assert changed.status_code == 200
    assert PrintedSheet.objects.filter(label="B3").latest("pk").code in text_of(changed.content)


def test_the_page_counts_the_sheets(cabinet: Cabinet, installer: Person, signed_in: SignIn) -> None:
    """Four at a time; whoever comes back sees how far it is."""
    worker_beat(name="bench-1", host="bench", pid=1)
    client, job = signed_in(installer), cabinet.job
    with in_queue:
        begun = dom(client.post(page_of(job), headers=HTMX))
        assert "0 of 10 sheets printed" in begun.words
        assert begun.one("#sheet-set").attribute("hx-trigger") == "load delay:1s"

        work_off(1)
        page = dom(client.get(page_of(job)))
        assert "4 of 10 sheets printed" in page.words
        assert page.one("noscript meta").attribute("content") == f"5; url={page_of(job)}"
        assert client.get(f"{page_of(job)}set/zip/").status_code == 404

        work_off()
        done = dom(client.get(page_of(job), headers=HTMX))
    assert "10 sheets, printed for ines" in done.words
    assert not done.has("[hx-trigger]")


@pytest.mark.parametrize("htmx", [False, True])
def test_printing_is_called_off(
    htmx: bool, cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """What was printed goes; it can be begun again."""
    client, job = signed_in(installer), cabinet.job
    with in_queue:
        client.post(page_of(job))
        work_off(1)
        headers = HTMX if htmx else {}
        answer = client.post(f"{page_of(job)}set/cancel/", headers=headers, follow=not htmx)
        work_off()

    assert "Cancelled by ines. Print them again." in dom(answer).words
    assert not SheetFile.objects.exists()
    client.post(page_of(job))
    assert list(unpacked(client, job)) == NAMES


def test_a_second_press_prints_nothing_twice(
    cabinet: Cabinet, installer: Person, office: Person, signed_in: SignIn
) -> None:
    """Whoever presses while it is printed is told so."""
    with in_queue:
        signed_in(installer).post(page_of(cabinet.job))
        answer = signed_in(office).post(page_of(cabinet.job))

    assert answer.status_code == 422
    assert SheetSet.objects.count() == BackgroundTask.objects.count() == 1


def test_all_sheets_are_of_one_kitchen(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """Whatever changes while they are printed; afterwards the page says that it did."""
    client, job = signed_in(installer), cabinet.job
    with in_queue:
        client.post(page_of(job))
        work_off(1)
        Cabinet.objects.filter(job=job, label="B3").update(width=inches(15))
        work_off()

    page = dom(client.get(page_of(job)))
    assert "has changed since these were printed" in page.words
    files = unpacked(client, job)
    assert SheetSet.objects.get().fingerprint in text_of(files["jigs-and-shims.pdf"])
    code = PrintedSheet.objects.get(job=job, label="B3").code
    assert f"Sheet {code}" in text_of(files["fitting-B3.pdf"])


def test_another_paper_is_another_set(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """The page says that these are on the old one."""
    client, job = signed_in(installer), cabinet.job
    client.post(page_of(job))
    job.shop.paper = Paper.A4
    job.shop.save()

    assert "has changed since these were printed" in dom(client.get(page_of(job))).words


def test_printed_again_the_old_set_is_gone(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """A job has one set."""
    client, job = signed_in(installer), cabinet.job
    client.post(page_of(job))
    before = SheetSet.objects.get()
    Cabinet.objects.filter(label="B3").delete()

    client.post(page_of(job))

    assert SheetSet.objects.get() != before
    assert list(unpacked(client, job)) == [name for name in NAMES if name != "fitting-B3.pdf"]


def test_a_set_is_kept_for_a_day(cabinet: Cabinet, installer: Person, signed_in: SignIn) -> None:
    """Then nobody gets it, whether a worker tidied up or not; and when one did, it is gone."""
    client, job = signed_in(installer), cabinet.job
    client.post(page_of(job))
    assert client.get(f"{page_of(job)}set/zip/").status_code == 200
    BackgroundTask.objects.update(ended_at=timezone.now() - timedelta(hours=25))

    assert client.get(f"{page_of(job)}set/zip/").status_code == 404
    assert "Print all 10 sheets" in dom(client.get(page_of(job))).words

    tasks_tidy(at=timezone.now())
    assert not SheetFile.objects.exists()


def test_another_shop_gets_nothing_of_it(
    cabinet: Cabinet, installer: Person, stranger: Person, signed_in: SignIn
) -> None:
    """No page, no file, no printing, no calling off."""
    signed_in(installer).post(page_of(cabinet.job))
    other = signed_in(stranger)

    for path in ("", "set/zip/", "set/fitting/"):
        assert other.get(page_of(cabinet.job) + path).status_code == 404, path
    for path in ("", "set/cancel/"):
        assert other.post(page_of(cabinet.job) + path).status_code == 404, path


def test_a_job_with_no_cabinets_has_its_few_sheets(
    job: Job, installer: Person, signed_in: SignIn
) -> None:
    """They say that there is nothing yet; there are no fitting sheets to take."""
    client = signed_in(installer)
    page = dom(client.post(page_of(job), follow=True))

    assert "5 sheets, printed for ines" in page.words
    assert "All fitting sheets" not in page.words
    assert client.get(f"{page_of(job)}set/fitting/").status_code == 404
    assert list(unpacked(client, job)) == [each for each in NAMES[:6] if each != "templates.pdf"]


def test_many_fitting_sheets_come_with_the_set(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """Few are made while one waits; for more one is led to the set."""
    client = signed_in(installer)
    path = f"{page_of(cabinet.job)}fitting/"
    assert client.get(path).status_code == 200
    CabinetFactory.create(job=cabinet.job, wall="South")

    answer = client.get(path, follow=True)

    assert answer.redirect_chain == [(page_of(cabinet.job), 302)]
    assert "The fitting sheets of 4 cabinets are printed with the whole set" in dom(answer).words
