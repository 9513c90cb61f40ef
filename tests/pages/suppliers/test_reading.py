"""Files of offers in every form in which people send them, and what is none."""

import io
import zipfile
from typing import Any

import pytest
from django.test import Client
from openpyxl import Workbook

from fronts.pages.shared.xlsx_in import OLE
from shopjobs.models import Shop
from tests.dom import dom
from tests.pages.suppliers.sent_file import HEAD, cells, counts, sent


@pytest.mark.parametrize(
    "data",
    [
        f'\ufeff{HEAD}\noil,Æther Yard,,,,"12,50",,,,,\n'.encode(),
        f"{HEAD}\noil,Æther Yard,,,,12.50,,,,,\n".replace(",", ";").encode("cp1252"),
        f"{HEAD}\noil,Æther Yard,,,,12.50,,,,,\n".replace(",", "\t").encode("utf-16"),
        "price;SUPPLIER;Item\r\n€ 12,50;Æther Yard;oil\r\n".encode(),
        "\n\nitem,supplier,price,currency\n\noil,Æther Yard,$12.50,\n".encode(),
    ],
)
def test_text_in_any_usual_form_is_read(data: bytes, desk: Client, shop: Shop) -> None:
    """With a mark at its start or none, parted by commas, semicolons or tabs."""
    answer = sent(desk, data)

    assert counts(answer)[0] == "1 new", dom(answer).one("main").words
    assert "Æther Yard" in dom(answer).one("table.preview").words
    assert "12.50 " in dom(answer).one("table.preview").words


def workbook(*rows: tuple[Any, ...]) -> bytes:
    """A spreadsheet of these rows, as another program makes it."""
    book, out = Workbook(), io.BytesIO()
    for row in rows:
        book.active.append(row)
    book.save(out)
    return out.getvalue()


def test_a_spreadsheet_of_another_program_is_read(desk: Client, shop: Shop) -> None:
    """Numbers as they look; what it works out itself, or holds beside, is no matter."""
    heads = ("item", "supplier", "price", "pack", "preferred", "remark")
    file = workbook(heads, ("oil", "Yard", 0.1 + 0.2, 5, True, "x"), (), ("wax", "Yard", 3, 1.0))

    answer = sent(desk, file)

    assert counts(answer)[0] == "2 new"
    assert "0.30 USD" in dom(answer).one("table.preview").words
    assert "Left out, since no column is called so: remark" in dom(answer).one("main").words


def test_a_heading_is_known_by_either_apostrophe(desk: Client, shop: Shop) -> None:
    """As the page writes it, or as a keyboard does; what it heads is read and not left out."""
    answer = sent(desk, "Item,Supplier,Supplier’s code,Price\noil,Yard,Q-17,3\n")

    assert "code Q-17" in dom(answer).one("table.preview").words
    assert "Left out" not in dom(answer).one("main").words


def packed(*members: tuple[str, bytes]) -> bytes:
    """A ZIP file."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as file:
        for name, content in members:
            file.writestr(name, content)
    return out.getvalue()


def with_entities() -> bytes:
    """A spreadsheet whose text would grow a thousand times over."""
    sheet = workbook(("item",))
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(sheet)) as old, zipfile.ZipFile(out, "w") as new:
        for member in old.namelist():
            content = old.read(member)
            if member.endswith("sheet1.xml"):
                bomb = b'<!DOCTYPE x [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>'
                content = bomb + content.replace(b"item", b"&b;")
            new.writestr(member, content)
    return out.getvalue()


@pytest.mark.parametrize(
    ("data", "told"),
    [
        (b"", "empty"),
        (b"\0\1\2", "no text"),
        (b"\x81\x8d\xff\xfe\x81", "no text"),
        ("item,supplier\n", "missing: “price”"),
        ("item,item,supplier,price\n", "“item” is there twice"),
        ('item,supplier,price\n"oil,a,b\n', "can't be read as CSV"),
        (" \n;\n", "missing"),
        ("\n", "holds nothing"),
        (f"{HEAD}\n" + "oil,Yard,,,,1,,,,,\n" * 2001, "more than 2000 lines"),
        (f"item,supplier,price\n{'x' * 140_000},a,1\n", "can't be read as CSV"),
        (f"item,supplier,price\n{('y' * 100_000 + ',a,1' + chr(10)) * 12}", "far more"),
        (b"x" * (2 * 1024 * 1024 + 1), "over 2 MB"),
        (OLE + b"\xa1\xb1\x1a\xe1" + b"\0" * 600, "password or is of an older kind"),
        (b"PK\x03\x04 and then nothing", "can't be read as a spreadsheet"),
        (packed(("a.txt", b"nothing of a spreadsheet")), "can't be read as a spreadsheet"),
        (packed(("xl/big.xml", b"\0" * (31 * 1024 * 1024))), "far more"),
        (packed(*((f"{n}.xml", b"") for n in range(201))), "far more"),
        (with_entities(), "can't be read as a spreadsheet"),
    ],
)  # fmt: skip
def test_a_file_that_is_none_is_refused(data: bytes | str, told: str, desk: Client) -> None:
    """In words that say what to do; nothing fails."""
    answer = sent(desk, data)

    assert answer.status_code == 422
    assert told.casefold() in dom(answer).one("main").words.casefold()


@pytest.mark.parametrize(
    ("line", "column", "wanted"),
    [
        (",Ash,,,,1,,,,,", "item", "empty"),
        (f"{'i' * 201},Ash,,,,1,,,,,", "item", "200 letters"),
        ("oil,Ash,,,,,,,,,", "price", "12.50"),
        ("oil,Ash,,,,1.234,,,,,", "price", "at most 2 decimals"),
        ('oil,Ash,,,,"1,234",,,,,', "price", "1234 or 1.234"),
        ("oil,Ash,,,,-1,,,,,", "price", "12.50"),
        ("oil,Ash,,,,1,shells,,,,", "price", "none of the currencies"),
        ("oil,Ash,,0,,1,,,,,", "pack", "more than nothing"),
        ("oil,Ash,,1,barrel,1,,,,,", "unit", "pieces, feet or metres"),
        ("oil,Ash,,,,1,,1.5,,,", "lead days", "whole working days"),
        (f"oil,Ash,,,,1,,{'9' * 25},,,", "lead days", "working days"),
        ("oil,Ash,,,,1,,,0,,", "least order", "one pack or more"),
        ("oil,Ash,,,,1,,,,perhaps,", "preferred", "yes, or nothing"),
        (f"oil,Ash,,,,1,,,,,{'n' * 401}", "note", "400 letters"),
        ("oil,Ash,a\x07b,,,1,,,,,", "supplier's code", "plain text"),
        ("wax,Ash,,,,1,,,,,", "supplier's code", "line 2 says the same one"),
        ("wax,Birch,,,,1,,,,yes,", "preferred", "line 2 is that already"),
    ],
)
def test_what_a_line_cannot_say_is_told_by_its_column(
    line: str, column: str, wanted: str, desk: Client, shop: Shop
) -> None:
    """Every other line may be taken in."""
    answer = sent(desk, f"{HEAD}\nwax,Ash,,,,2,,,,yes,\n{line}\n")

    told = cells(dom(answer).all("table.preview")[0])
    assert [row[:2] for row in told] == [["3", column]]
    assert wanted in told[0][3]
    assert counts(answer)[0] == "1 new"
