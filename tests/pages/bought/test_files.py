"""The door maker's list as files: what the page counts, every file counts."""

import csv
import io
import zipfile
from collections.abc import Callable
from datetime import date
from typing import Any
from xml.etree import ElementTree

import pytest
from django.http import HttpResponse
from django.test import Client
from hypothesis import given

from fronts.pages.bought.rows.files import bought_csv, bought_xlsx
from fronts.pages.bought.rows.lines import bought_list
from fronts.rules.kitchen import Kitchen
from fronts.rules.schedule import schedule
from fronts.selectors.receipts import Received, ReceivedLine
from fronts.sheets import bought
from fronts.sheets.sheet_page import source_of
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW
from tests.pages.bought.test_page import address, buy, lines, send
from tests.pdf_text import page_texts
from tests.rules.buying import buying
from tests.rules.laws import KITCHEN_LAW
from tests.saying import standard_set

SignIn = Callable[[Person], Client]
_IN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"


def csv_rows(answer: Any) -> list[list[str]]:
    """What a spreadsheet reads of a CSV file."""
    return list(csv.reader(io.StringIO(answer.content.decode("utf-8-sig"))))


def xlsx_rows(answer: Any) -> list[list[str]]:
    """What a spreadsheet reads of its own file (ISO/IEC 29500): shared texts and numbers."""
    with zipfile.ZipFile(io.BytesIO(answer.content)) as book:
        texts = _texts(book)
        sheet = ElementTree.fromstring(book.read("xl/worksheets/sheet1.xml"))
    assert not list(sheet.iter(f"{_IN}f"))  # No formula anywhere.
    return [
        [
            texts[int(cell.findtext(f"{_IN}v", ""))] if cell.get("t") == "s"
            else cell.findtext(f"{_IN}v", "")
            for cell in row
        ]
        for row in sheet.iter(f"{_IN}row")
    ]  # fmt: skip


def _texts(book: zipfile.ZipFile) -> list[str]:
    shared = ElementTree.fromstring(book.read("xl/sharedStrings.xml"))
    return ["".join(text.itertext()) for text in shared.iter(f"{_IN}si")]


@KITCHEN_LAW
@given(buying())
def test_screen_paper_and_both_files_count_the_same(of: Kitchen) -> None:
    """Line by line, whatever the kitchen."""
    found, unit = schedule(of), of.job.unit
    received = Received(tuple(ReceivedLine(line, {}, ()) for line in found.bought), ())
    shown, job = bought_list(received, unit, str), Job(number="T-1", unit=unit)
    _, *of_csv = csv_rows(bought_csv(job, shown))
    _, *of_xlsx = xlsx_rows(bought_xlsx(job, shown))
    html = bought.content(source_of(of, date(2027, 3, 1)))
    paper = dom(HttpResponse(html)).all("tr:has(.tick)") if found.bought else []

    counts = [row.count for row in shown.rows]
    assert sum(counts) == sum(front.bought for front in found.fronts)
    assert [int(row[0]) for row in of_csv] == counts
    assert [int(row[0]) for row in of_xlsx] == counts
    assert [int(row.one(".count, .key").words) for row in paper] == counts
    assert [row[1:-1] for row in of_csv] == [row[1:-1] for row in of_xlsx]


@pytest.fixture
def bought_job(job: Job) -> Job:
    """Four doors that are bought, of a style that a spreadsheet could take for a formula."""
    buy(job, style="=1+1")
    return job


@pytest.mark.parametrize("ending", ["csv", "xlsx"])
def test_a_file_has_each_line_and_what_came(
    ending: str, bought_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Sizes in the shop's fractions, bores in millimetres, nothing that is a formula."""
    client = signed_in(office)
    send(client, bought_job, lines(client, bought_job)[0], came="2", note="@late")
    answer = client.get(f"/jobs/{bought_job.pk}/bought.{ending}")
    heads, first, _ = (csv_rows if ending == "csv" else xlsx_rows)(answer)
    said = dict(zip(heads, first, strict=True))

    assert f'filename="K-1 bought fronts.{ending}"' in answer["Content-Disposition"]
    assert (said["quantity"], said["fronts"]) == ("3", "B1.a, B2.a, B3.a")
    assert (said["width, in"], said["height, in"], said["thickness, in"]) == (
        "16", "28 1/2", "3/4",
    )  # fmt: skip
    assert (said["hinged"], said["bore diameter, mm"]) == ("Left", "35")
    assert said["bore centres, in"] == "3 1/2, 25"
    assert said["door style"] == "'=1+1"
    assert (said["came"], said["still to come"]) == ("2", "1")
    assert "@late" in said["checked off"]


def test_the_sheet_is_there_once_something_is_bought(
    bought_job: Job, office: Person, signed_in: SignIn
) -> None:
    """Linked from its page and among the sheets, read back as a PDF; gone with the last front."""
    client = signed_in(office)
    sheet = f"/jobs/{bought_job.pk}/sheets/bought/"

    for page in (address(bought_job), f"/jobs/{bought_job.pk}/sheets/"):
        assert sheet in dom(client.get(page)).one("main").addresses
    text = "".join(page_texts(client.get(sheet).content))
    assert "4 fronts in 2 lines" in text
    assert "16 × 28 1/2 × 3/4" in text.replace("\N{NO-BREAK SPACE}", " ")

    standard_set(owner=bought_job, at=NOW, made_by="here")
    assert sheet not in dom(client.get(f"/jobs/{bought_job.pk}/sheets/")).one("main").addresses
