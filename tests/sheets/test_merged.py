"""Several PDFs as one: every page, its structure, its bookmark."""

import io
from typing import Any

import pytest
from pypdf import PdfReader

from fronts.sheets.merged import merged
from fronts.sheets.pdf import render
from tests.pdf_text import page_texts

pytestmark = pytest.mark.slow
PAGES = '<html lang="en"><h1>{0}</h1><p>first</p><p style="break-before: page">second of {0}</p>'
FILES = [
    ("B1", render(PAGES.format("One"), "a4")),
    ("B2", render('<html lang="en"><h1>Two</h1><a href="#x">to x</a><p id="x">x</p>', "letter")),
    ("B3", render(PAGES.format("Three"), "a4")),
]


@pytest.fixture(scope="module")
def whole() -> bytes:
    """Five pages of three files."""
    return merged(FILES, "K-1 – All")


@pytest.fixture(scope="module")
def together(whole: bytes) -> PdfReader:
    """The same, to look into."""
    return PdfReader(io.BytesIO(whole))


def test_every_page_is_there_in_its_order(whole: bytes, together: PdfReader) -> None:
    """With its own size and text."""
    widths = [round(page.mediabox.width) for page in together.pages]
    assert widths == [595, 595, 612, 595, 595]
    words = ("One first", "second of One", "Two to x x", "Three first", "second of Three")
    texts = [" ".join(text.split()) for text in page_texts(whole)]
    assert [word in text for word, text in zip(words, texts, strict=True)] == [True] * 5


def test_each_file_has_a_bookmark(together: PdfReader) -> None:
    """One jumps to a cabinet by its label."""
    marks: Any = together.outline
    assert [(mark.title, together.get_destination_page_number(mark)) for mark in marks] == [
        ("B1", 0), ("B2", 2), ("B3", 3),
    ]  # fmt: skip


def test_it_is_still_tagged_for_reading_aloud(together: PdfReader) -> None:
    """ISO 32000-1, 14.7.4.4: what each page's number leads to lies on that page, links too."""
    root: Any = together.trailer["/Root"]
    tree = root["/StructTreeRoot"]
    numbers = tree["/ParentTree"]["/Nums"]
    by_number = dict(zip(numbers[::2], numbers[1::2], strict=True))

    assert (bool(root["/MarkInfo"]["/Marked"]), root["/Lang"]) == (True, "en")
    assert len(by_number) == len(numbers) // 2
    assert len(tree["/K"]) == len(FILES)
    for page in together.pages:
        places = [mark.get_object().get("/Pg") for mark in by_number[page["/StructParents"]]]
        on = {place.get_object().indirect_reference for place in places if place is not None}
        assert on == {page.indirect_reference}
    links = [note.get_object() for page in together.pages for note in page.get("/Annots", ())]
    assert [by_number[link["/StructParent"]].get_object()["/S"] for link in links] == ["/Link"]


def test_a_link_leads_to_its_place_in_its_own_file(together: PdfReader) -> None:
    """On the page of the cabinet that it stands on."""
    notes: Any = together.pages[2]["/Annots"]
    (link,) = (note.get_object() for note in notes)
    destination = together.named_destinations[link["/A"]["/D"] if "/A" in link else link["/Dest"]]
    assert together.get_destination_page_number(destination) == 2


def test_of_the_same_files_it_is_the_same_file() -> None:
    """So that it may be known by what it was made from."""
    assert merged(FILES, "K-1 – All") == merged(FILES, "K-1 – All")


def test_it_says_what_it_is(together: PdfReader) -> None:
    """In the window's title."""
    assert together.metadata is not None
    assert together.metadata.title == "K-1 – All"
