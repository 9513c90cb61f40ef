"""The printed sheets as the browser gets them."""

import io
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from django.test import Client
from pypdf import PdfReader

from fronts.models import Cabinet
from fronts.pages.shared.file_answers import safe_name
from fronts.rules.practice import inches
from fronts.sheets import pdf
from shopjobs.models import Job, Paper, Person
from tests.dom import dom
from tests.factories import NOW, OpeningFactory, door_and_drawer
from tests.pdf_text import page_texts
from tests.saying import standard_set

SignIn = Callable[[Person], Client]
SHEETS = {
    "schedule": "K-1 front schedule.pdf",
    "hardware": "K-1 hardware.pdf",
    "jigs": "K-1 jigs and shims.pdf",
    "templates": "K-1 templates.pdf",
    "fitting": "K-1 fitting sheets.pdf",
    "labels": "K-1 labels.pdf",
    "set-up": "K-1 set-up.pdf",
    "boxes": "K-1 boxes.pdf",
}
POINTS = {"letter": (612, 792), "a4": (595, 842)}
"""Widths and heights in points: 8 1/2 x 11 in, and ISO 216 A4 (210 x 297 mm)."""


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """An inset cabinet with a drawer and a leaning door: a stop."""
    standard_set(owner=job, at=NOW, mount="inset")
    return door_and_drawer(job, measured_diagonal_1=inches(25), measured_diagonal_2=inches(49, 2))


@pytest.mark.parametrize("sheet", SHEETS)
def test_a_sheet_opens_in_the_browser_under_a_plain_name(
    sheet: str, cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """Everybody of the shop gets it as a PDF, to look at and to print."""
    answer = signed_in(installer).get(f"/jobs/{cabinet.job_id}/sheets/{sheet}/")

    assert answer.status_code == 200
    assert answer["Content-Type"] == "application/pdf"
    assert answer["Content-Disposition"] == f'inline; filename="{SHEETS[sheet]}"'
    text = "".join(page_texts(answer.content))
    assert "Job K-1" in text


@pytest.mark.parametrize("paper", POINTS)
def test_sheets_come_on_the_shops_paper(
    paper: str, cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """Letter or A4, as the shop chose."""
    cabinet.job.shop.paper = Paper(paper)
    cabinet.job.shop.save()

    answer = signed_in(installer).get(f"/jobs/{cabinet.job_id}/sheets/hardware/")

    box = PdfReader(io.BytesIO(answer.content)).pages[0].mediabox
    assert (round(box.width), round(box.height)) == POINTS[paper]


def test_a_cabinets_own_sheet(cabinet: Cabinet, installer: Person, signed_in: SignIn) -> None:
    """It is named after its cabinet, and a stop stands on it."""
    answer = signed_in(installer).get(f"/jobs/{cabinet.job_id}/sheets/fitting/{cabinet.pk}/")

    assert answer["Content-Disposition"] == 'inline; filename="K-1 fitting B1.pdf"'
    text = "".join(page_texts(answer.content))
    assert "STOP" in text
    assert "B1.a leans" in text


def test_a_sheet_is_not_made_twice_for_one_browser(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """While nothing changes, the browser's own copy does; after a change, it does not."""
    client, path = signed_in(installer), f"/jobs/{cabinet.job_id}/sheets/hardware/"
    etag = client.get(path)["ETag"]

    assert client.get(path, headers={"If-None-Match": etag}).status_code == 304

    OpeningFactory.create(cabinet__job=cabinet.job, cabinet__label="B2", cabinet__x=inches(18))
    assert client.get(path, headers={"If-None-Match": etag}).status_code == 200


def test_no_shared_cache_keeps_a_sheet_and_viewers_may_show_it(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """It is asked for again each time, and kept by nobody between."""
    answer = signed_in(installer).get(f"/jobs/{cabinet.job_id}/sheets/hardware/")

    assert answer["Cache-Control"] == "private, no-cache"
    assert answer["X-Content-Type-Options"] == "nosniff"
    assert "object-src" not in answer["Content-Security-Policy"]


@pytest.mark.parametrize("sheet", [*SHEETS, "cutting", "fitting/{cabinet}"])
def test_another_shop_gets_no_sheet(
    sheet: str, cabinet: Cabinet, stranger: Person, signed_in: SignIn
) -> None:
    """Another shop's job does not exist, nor its sheets."""
    path = sheet.format(cabinet=cabinet.pk)

    assert signed_in(stranger).get(f"/jobs/{cabinet.job_id}/sheets/{path}/").status_code == 404


@pytest.mark.parametrize("sheet", [*SHEETS, "cutting", "fitting/{cabinet}"])
def test_sheets_are_only_read(
    sheet: str, cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """Nothing can be posted to a sheet."""
    path = sheet.format(cabinet=cabinet.pk)

    assert signed_in(installer).post(f"/jobs/{cabinet.job_id}/sheets/{path}/").status_code == 405


@pytest.mark.parametrize("sheet", SHEETS)
def test_a_job_without_a_kitchen_has_sheets_too(
    sheet: str, job: Job, installer: Person, signed_in: SignIn
) -> None:
    """They say that there is nothing yet."""
    assert signed_in(installer).get(f"/jobs/{job.pk}/sheets/{sheet}/").status_code == 200


def test_without_pango_a_page_says_what_is_missing(
    cabinet: Cabinet,
    installer: Person,
    signed_in: SignIn,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """WeasyPrint fails to load as it does on a machine without Pango: with an OSError."""
    (tmp_path / "weasyprint.py").write_text("raise OSError('cannot load library libpango')\n")
    for name in [each for each in sys.modules if each.split(".")[0] == "weasyprint"]:
        monkeypatch.delitem(sys.modules, name)
    monkeypatch.syspath_prepend(tmp_path)

    answer = signed_in(installer).get(f"/jobs/{cabinet.job_id}/sheets/hardware/")

    assert answer.status_code == 503
    assert "libpango-1.0-0" in dom(answer).words
    assert f"/jobs/{cabinet.job_id}/order/" in dom(answer).addresses


@pytest.mark.parametrize(
    ("name", "safe"),
    [
        ("K-104 fitting B1.pdf", "K-104 fitting B1.pdf"),
        ('K/1\\2: "x" fitting a*b?.pdf', "K-1-2- -x- fitting a-b.pdf"),
        ("K\r\nX-Evil: 1.pdf", "K-X-Evil- 1.pdf"),
        ("../../etc/passwd.pdf", "etc-passwd.pdf"),
        ("….pdf", "….pdf"),
        ("x" * 300 + ".pdf", "x" * 80 + ".pdf"),
    ],
)
def test_file_names_are_safe(name: str, safe: str) -> None:
    """Whatever a job is numbered, its files can be kept anywhere and break no header."""
    assert safe_name(name) == safe


def test_a_name_in_other_letters_is_kept_for_those_who_can(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """RFC 6266: a plain name for all, the whole one beside it."""
    Job.objects.filter(pk=cabinet.job_id).update(number="Küche 7")

    answer = signed_in(installer).get(f"/jobs/{cabinet.job_id}/sheets/hardware/")

    said = answer["Content-Disposition"]
    assert 'filename="K_che 7 hardware.pdf"' in said
    assert "filename*=UTF-8''K%C3%BCche%207%20hardware.pdf" in said


def test_asking_after_a_sheet_makes_none(
    cabinet: Cabinet, installer: Person, signed_in: SignIn
) -> None:
    """HEAD tells what a sheet would be, even while nothing can be made; no length is claimed."""
    client, path = signed_in(installer), f"/jobs/{cabinet.job_id}/sheets/hardware/"

    with pdf.ONE_AT_A_TIME:
        answer = client.head(path)

    assert (answer.status_code, answer["Content-Type"]) == (200, "application/pdf")
    assert not answer.has_header("Content-Length")
    assert answer["ETag"] == client.get(path)["ETag"]


def test_who_waits_too_long_for_a_sheet_reads_why(
    cabinet: Cabinet, installer: Person, signed_in: SignIn, monkeypatch: pytest.MonkeyPatch
) -> None:
    """While other sheets take long, the answer says to try again; then it works."""
    monkeypatch.setattr(pdf, "PATIENCE", 0.05)
    client, path = signed_in(installer), f"/jobs/{cabinet.job_id}/sheets/hardware/"

    with pdf.ONE_AT_A_TIME:
        answer = client.get(path)

    assert answer.status_code == 503
    assert (
        "Other sheets are being made just now. This page tries again by itself" in dom(answer).words
    )
    assert "Whoever looks after this machine" not in dom(answer).words
    assert client.get(path).status_code == 200
