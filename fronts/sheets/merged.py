"""Several PDFs as one, still tagged for reading aloud; the one door to pikepdf.

ISO 32000-1, 14.7.4.4: what stands on a page is found by the page's number in the structure's
parent tree, so each file's numbers move on by those that were given out before.
"""

import io
from collections.abc import Iterable

from pikepdf import (
    Array,
    Dictionary,
    Name,
    Object,
    ObjectStreamMode,
    OutlineItem,
    Page,
    Pdf,
    String,
)


def merged(files: Iterable[tuple[str, bytes]], title: str) -> bytes:
    """The pages of all the files in their order, each with its structure and a bookmark.

    Of the same files it is the same, byte by byte.
    """
    parts: list[Object] = []
    numbers: list[int | Object] = []
    marks: list[OutlineItem] = []
    with Pdf.new() as whole:
        for name, content in files:
            marks.append(OutlineItem(name, len(whole.pages)))
            with Pdf.open(io.BytesIO(content)) as file:
                _append(whole, file, parts, numbers)
        with whole.open_outline() as outline:
            outline.root.extend(marks)
        _describe(whole, parts, numbers, title)
        written = io.BytesIO()
        whole.save(written, object_stream_mode=ObjectStreamMode.generate, deterministic_id=True)
    return written.getvalue()


def _append(whole: Pdf, file: Pdf, parts: list[Object], numbers: list[int | Object]) -> None:
    """Copy a file's pages, links that lead within it, and their structure, renumbered."""
    first, given_out = len(whole.pages), 1 + int(numbers[-2]) if numbers else 0
    whole.add_pages_from(file, forms="strip", layers="ignore", outlines="ignore")
    for page in list(whole.pages)[first:]:
        _move_on(page, given_out)
    # The pages came first: a reference to one that is not copied yet would be lost.
    tree = whole.copy_foreign(file.Root.StructTreeRoot)
    parts.extend(tree.K)
    own = list(tree.ParentTree.Nums)
    for number, marks in zip(own[::2], own[1::2], strict=True):
        numbers.extend((int(number) + given_out, marks))


def _move_on(page: Page, by: int) -> None:
    """Renumber a page and the links on it."""
    if "/StructParents" in page:
        page.StructParents += by
    for link in page.get("/Annots", ()):
        if "/StructParent" in link:
            link.StructParent += by


def _describe(whole: Pdf, parts: list[Object], numbers: list[int | Object], title: str) -> None:
    """Say how the file is tagged, what it is called, and in which language it is."""
    tree = whole.make_indirect(
        Dictionary(
            Type=Name.StructTreeRoot, K=Array(parts), ParentTree=Dictionary(Nums=Array(numbers))
        )
    )
    for part in parts:
        part.P = tree
    whole.Root.StructTreeRoot = tree
    whole.Root.MarkInfo = Dictionary(Marked=True)
    whole.Root.ViewerPreferences = Dictionary(DisplayDocTitle=True)
    whole.Root.Lang = String("en")
    whole.docinfo.Title = String(title)
