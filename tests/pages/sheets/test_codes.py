"""A code scanned or typed: still true, or what changed since; nothing of another shop's."""

import io
import re
from collections.abc import Callable
from datetime import timedelta

import pytest
from django.test import Client, override_settings
from pypdf import PdfReader

from fronts.models import Box, Cabinet, Opening, PrintedSheet
from fronts.rules.practice import inches
from fronts.rules.shown_figures import ShownFigure
from fronts.services.cabinets import cabinet_delete
from fronts.services.history import revision_undo
from fronts.services.printed_sheets import (
    CODES_OF_A_CABINET,
    SheetShown,
    printed_sheets_keep,
)
from shopjobs.models import Job, Person, Revision
from tests.dom import Part, dom
from tests.factories import (
    NOW,
    PASSWORD,
    BoxFactory,
    CabinetFactory,
    JobFactory,
    OpeningFactory,
    door_and_drawer,
    overlaid,
)
from tests.frozen_sheets import frozen_code
from tests.pdf_text import page_texts
from tests.sheets.scanned import scanned

SignIn = Callable[[Person], Client]


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """A door over a drawer on its box, and another cabinet beside it."""
    overlaid(job)
    first = door_and_drawer(job)
    BoxFactory.create(opening=Opening.objects.get(cabinet=first, label="b"))
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job, label="B2", x=inches(40)))
    return first


@pytest.fixture
def phone(installer: Person, signed_in: SignIn) -> Client:
    """The installer's."""
    return signed_in(installer)


def sheet_of(cabinet: Cabinet) -> str:
    """Where its sheet is printed."""
    return f"/jobs/{cabinet.job_id}/sheets/fitting/{cabinet.pk}/"


def table(page: Part) -> list[list[str]]:
    """The rows of what changed."""
    rows = page.all(".changed-figures tbody tr")
    return [[cell.words for cell in (*row.all("th"), *row.all("td"))] for row in rows]


def test_a_printed_sheet_is_still_true(cabinet: Cabinet, phone: Client) -> None:
    """The code that its PDF bears says so, and leads to the cabinet."""
    answer = phone.get(sheet_of(cabinet), headers={"Host": "localhost:8000"})
    paper = PdfReader(io.BytesIO(answer.content)).pages[0]
    printed = PrintedSheet.objects.get()
    assert f"Sheet {printed.code}" in page_texts(answer.content)[0]
    assert scanned(paper).text == f"http://localhost:8000/s/{printed.code}/"

    page = dom(phone.get(f"/s/{printed.code}/"))

    assert page.one("h1").words == f"Sheet {printed.code}"
    assert "Still true. Everything on it is as it is now." in page.words
    assert page.one(".printed-sheet .button").attribute("href") == (
        f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/"
    )
    assert not page.has("table")


@override_settings(SITE_ADDRESS="https://fronts.example/")
def test_the_code_leads_where_the_site_says_that_it_is(cabinet: Cabinet, phone: Client) -> None:
    """Wherever it was asked from."""
    page = PdfReader(io.BytesIO(phone.get(sheet_of(cabinet)).content)).pages[0]
    assert scanned(page).text == f"https://fronts.example/s/{PrintedSheet.objects.get().code}/"


def test_what_changed_since_is_told_dimension_by_dimension(cabinet: Cabinet, phone: Client) -> None:
    """Opening and box mended on site: sizes, offset and jig before and after, worked out by hand.

    The door's opening is 15 × 19 with laps of 1/2: 16 wide, 15 7/8 once it is 1/8 narrower. The
    box's bottom is 1/2 above the opening's: with the lap 1 to the front's edge, 1 1/16 after.
    """
    code, other = frozen_code(cabinet.job, "B1"), frozen_code(cabinet.job, "B2")
    opening = Opening.objects.get(cabinet=cabinet, label="a")
    Opening.objects.filter(pk=opening.pk).update(width=opening.width - inches(1, 8))
    box = Box.objects.get()
    Box.objects.filter(pk=box.pk).update(rise=box.rise + inches(1, 16))

    page = dom(phone.get(f"/s/{code}/"))

    assert "No longer true." in page.words
    rows = table(page)
    assert ["width", "16", "15 7/8"] in rows
    assert ["jig", "1", "1 1/16"] in rows
    assert rows.index(["B1.a"]) < rows.index(["width", "16", "15 7/8"])
    hrefs = [link.attribute("href") for link in page.all(".printed-sheet .button")]
    assert hrefs == [sheet_of(cabinet), f"/jobs/{cabinet.job_id}/fit/{cabinet.pk}/"]
    new = frozen_code(cabinet.job, "B1")
    assert new != code
    assert "Still true" in dom(phone.get(f"/s/{new}/")).words
    assert "Still true" in dom(phone.get(f"/s/{other}/")).words


def test_a_stop_that_came_is_told(cabinet: Cabinet, phone: Client) -> None:
    """A finding in its words, beside that it was not on the sheet."""
    code = frozen_code(cabinet.job, "B1")
    Box.objects.update(width=inches(15))

    rows = table(dom(phone.get(f"/s/{code}/")))

    stops = [row for row in rows if row[0] == "stop"]
    assert stops
    assert all(row[1] == "not on it" and row[2] for row in stops)


def test_a_cabinet_that_is_called_otherwise_is_found(cabinet: Cabinet, phone: Client) -> None:
    """The sheet says B1; the page leads to what B1 is called now, and not to the new B1."""
    code = frozen_code(cabinet.job, "B1")
    Cabinet.objects.filter(pk=cabinet.pk).update(label="B7")
    Cabinet.objects.filter(label="B2").update(label="B1")

    page = dom(phone.get(f"/s/{code}/"))

    told = table(page)
    assert told[:2] == [["B7"], ["label", "B1", "B7"]]
    assert not [row for row in told if "width" in row[0]]
    assert "New sheet of B7, PDF" in page.words
    assert page.all(".printed-sheet .button")[1].attribute("href").endswith(f"/{cabinet.pk}/")


def test_a_cabinet_that_has_gone_is_told_and_comes_back(
    cabinet: Cabinet, phone: Client, owner: Person
) -> None:
    """Taken back, the sheet is true again; History has no line of it."""
    code = frozen_code(cabinet.job, "B1")
    cabinet_delete(cabinet=cabinet, by=owner, at=NOW)
    gone = dom(phone.get(f"/s/{code}/"))
    assert "There is no cabinet B1 in this job any more" in gone.words
    assert not gone.has(".printed-sheet .button")

    revision = Revision.objects.latest("pk")
    assert "printedsheet" not in str(revision.changes)
    revision_undo(revision=revision, by=owner, at=NOW)

    assert "Still true." in dom(phone.get(f"/s/{code}/")).words


def test_another_shops_code_is_unknown(
    cabinet: Cabinet, stranger: Person, signed_in: SignIn
) -> None:
    """By value: not a word of the job, the same answer as to a code that nobody has."""
    code = frozen_code(cabinet.job, "B1")
    theirs = signed_in(stranger)

    answer = theirs.get(f"/s/{code}/")

    assert answer.status_code == 404
    assert "is known here" in dom(answer).words
    for ours in ("K-1", "Lindqvist", "B1", "Alder Row"):
        assert not re.search(rf"\b{ours}\b", answer.text)  # Within a token anything may stand.
    nobodys = theirs.get("/s/0123-4567/")
    assert dom(answer).words.replace(code, "0123-4567") == dom(nobodys).words


def test_one_code_in_two_jobs_shows_both(cabinet: Cabinet, phone: Client) -> None:
    """A copied job has the same cabinets; each is told by its number."""
    code = frozen_code(cabinet.job, "B1")
    other = JobFactory.create(shop=cabinet.job.shop, number="K-2")
    overlaid(other)
    BoxFactory.create(opening=Opening.objects.get(cabinet=door_and_drawer(other), label="b"))
    assert frozen_code(other, "B1") == code
    Box.objects.filter(front__opening__cabinet__job=other).update(rise=inches(3, 4))

    page = dom(phone.get(f"/s/{code}/"))

    told = {part.one("h2").words.split(" first")[0]: part.one(".verdict strong").words
            for part in page.all(".printed-sheet")}  # fmt: skip
    assert told == {"B1, job K-1": "Still true.", "B1, job K-2": "No longer true."}


def test_a_job_that_was_deleted_is_not_known(cabinet: Cabinet, phone: Client) -> None:
    """Its sheets are nobody's any more."""
    code = frozen_code(cabinet.job, "B1")
    Job.objects.filter(pk=cabinet.job_id).update(deleted_at=NOW)
    assert phone.get(f"/s/{code}/").status_code == 404


def test_a_code_is_typed_on_the_page_of_fitting(cabinet: Cabinet, phone: Client) -> None:
    """As people type it; what is none stays in its field with a message."""
    code = frozen_code(cabinet.job, "B1")
    form = dom(phone.get(f"/jobs/{cabinet.job_id}/fit/")).one("#sheet-code-form")
    assert form.attribute("method") == "get"

    typed = phone.get(form.attribute("action"), {"code": f" {code.upper().replace('-', ' ')}"})
    assert (typed.status_code, typed["Location"]) == (302, f"/s/{code}/")

    wrong = phone.get("/s/", {"code": "<b>xyz"})
    assert wrong.status_code == 422
    page = dom(wrong)
    assert "A code is eight digits and letters from a to f" in page.words
    assert page.field("code").value == "<b>xyz"
    empty = phone.get("/s/", {"code": ""})
    assert "Enter the code on the sheet." in dom(empty).words
    assert phone.get("/s/").status_code == 200


@pytest.mark.parametrize("code", ["0123-4567", "x", "%3Cscript%3E", "3f9a%000", "9" * 300])
def test_an_unknown_code_is_told_plainly(code: str, cabinet: Cabinet, phone: Client) -> None:
    """Never a failure, whatever stands in the address; it can be typed again."""
    answer = phone.get(f"/s/{code}/")
    assert answer.status_code == 404
    assert "No sheet with the code" in dom(answer).words
    assert "<script>alert" not in answer.text


def test_a_scanned_address_outlives_the_sign_in(cabinet: Cabinet, installer: Person) -> None:
    """A phone whose session has ended comes back to the sheet."""
    code, phone = frozen_code(cabinet.job, "B1"), Client()
    asked = phone.get(f"/s/{code}/", follow=True)
    form = dom(asked).one("form.sheet")
    assert form.field("next").value == f"/s/{code}/"
    sent = {"username": "ines", "password": PASSWORD, "next": f"/s/{code}/"}

    answer = phone.post("/sign-in/", sent, follow=True)

    assert "Still true" in dom(answer).words


def test_a_sheet_is_frozen_once_a_code(cabinet: Cabinet, phone: Client) -> None:
    """Printed twice it is the same row, the same day and the same PDF."""
    first = phone.get(sheet_of(cabinet))
    printed = PrintedSheet.objects.get()
    PrintedSheet.objects.update(printed_at=printed.printed_at - timedelta(days=9))

    second = phone.get(sheet_of(cabinet))

    assert PrintedSheet.objects.count() == 1
    text = page_texts(second.content)[0]
    day = (printed.printed_at - timedelta(days=9)).date().isoformat()
    assert f"first printed {day}" in text
    again = phone.get(sheet_of(cabinet), headers={"If-None-Match": second["ETag"]})
    assert again.status_code == 304
    assert first["ETag"] != second["ETag"]


def test_a_cabinets_oldest_codes_are_forgotten(cabinet: Cabinet) -> None:
    """The latest are kept, and what another cabinet's sheets showed."""
    job = cabinet.job
    frozen_code(job, "B2")
    for number in range(CODES_OF_A_CABINET + 3):
        sheet = SheetShown("B1", f"0000-{number:04}", (ShownFigure("B1", "width", str(number)),))
        printed_sheets_keep(job=job, sheets=[sheet], at=NOW + timedelta(minutes=number))

    kept = set(PrintedSheet.objects.filter(label="B1").values_list("code", flat=True))

    assert kept == {f"0000-{number:04}" for number in range(3, CODES_OF_A_CABINET + 3)}
    assert PrintedSheet.objects.filter(label="B2").count() == 1
