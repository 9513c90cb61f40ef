"""Several PDFs as one, still tagged for reading aloud; the one door to pypdf.

ISO 32000-1, 14.7.4.4: what stands on a page is found by the page's number in the structure's
parent tree, so each file's numbers move on by those that were given out before.
"""

import io
from collections.abc import Iterable
from typing import Any

from pypdf import PdfReader, PdfWriter
from pypdf.generic import (
    ArrayObject,
    BooleanObject,
    DictionaryObject,
    NameObject,
    NumberObject,
    TextStringObject,
)


def merged(files: Iterable[tuple[str, bytes]], title: str) -> bytes:
    """The pages of all the files in their order, each with its structure and a bookmark."""
    writer = PdfWriter()
    branches, parts, numbers = ArrayObject(), ArrayObject(), ArrayObject()
    for name, content in files:
        branch = _append(writer, PdfReader(io.BytesIO(content)), parts, numbers)
        branches.append(branch)
        writer.add_outline_item(title=name, page_number=branch.get_object()["/Kids"][0])
    _grow_pages(writer, branches)
    _describe(writer, parts, numbers, title)
    written = io.BytesIO()
    writer.write(written)
    return written.getvalue()


def _append(writer: PdfWriter, reader: PdfReader, parts: ArrayObject, numbers: ArrayObject) -> Any:
    """Copy a file whole, renumbered, and return its branch of pages."""
    given_out = 1 + max(numbers[::2], default=-1)
    catalog: Any = reader.root_object.clone(writer)
    branch = catalog.raw_get("/Pages")
    for page in branch.get_object()["/Kids"]:
        _move_on(page.get_object(), given_out)
    tree = catalog["/StructTreeRoot"]
    parts.extend(tree["/K"])
    own = tree["/ParentTree"]["/Nums"]
    for number, marks in zip(own[::2], own[1::2], strict=True):
        numbers.extend((NumberObject(number + given_out), marks))
    return branch


def _move_on(page: Any, by: int) -> None:
    """Renumber a page and the links on it."""
    links = [link.get_object() for link in page.get("/Annots", ())]
    for thing, key in ((page, "/StructParents"), *((link, "/StructParent") for link in links)):
        if key in thing:
            thing[NameObject(key)] = NumberObject(thing[key] + by)


def _grow_pages(writer: PdfWriter, branches: ArrayObject) -> None:
    """Put the branches below the one root of all pages."""
    root: Any = writer.root_object["/Pages"]
    root[NameObject("/Kids")] = branches
    root[NameObject("/Count")] = NumberObject(
        sum(branch.get_object()["/Count"] for branch in branches)
    )
    for branch in branches:
        branch.get_object()[NameObject("/Parent")] = writer.root_object.raw_get("/Pages")


def _describe(writer: PdfWriter, parts: ArrayObject, numbers: ArrayObject, title: str) -> None:
    """Say how the file is tagged, what it is called, and in which language it is."""
    tree: dict[str, Any] = {"/Type": NameObject("/StructTreeRoot"), "/K": parts}
    tree["/ParentTree"] = _dictionary({"/Nums": numbers})
    tree_reference = writer._add_object(_dictionary(tree))
    for part in parts:
        part.get_object()[NameObject("/P")] = tree_reference
    yes = BooleanObject(value=True)
    writer.root_object.update(
        _dictionary(
            {
                "/StructTreeRoot": tree_reference,
                "/MarkInfo": _dictionary({"/Marked": yes}),
                "/ViewerPreferences": _dictionary({"/DisplayDocTitle": yes}),
                "/Lang": TextStringObject("en"),
            }
        )
    )
    writer.add_metadata({"/Title": title})


def _dictionary(entries: dict[str, Any]) -> DictionaryObject:
    return DictionaryObject({NameObject(key): value for key, value in entries.items()})
