"""A page's styles are one file."""

import gzip
import re
from collections.abc import Callable
from pathlib import Path

import brotli
import pytest
from django.test import Client

from shopjobs import page_styles
from shopjobs.models import Person
from shopjobs.templatetags.styles import OF_ALL_PAGES
from tests.factories import JobFactory

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def client(db: None) -> Client:
    return Client()


def address_in(page: str) -> str:
    """The one style sheet of the page."""
    address: str
    (address,) = re.findall(r'<link rel="stylesheet" href="([^"]+)"', page)
    return address


def test_a_page_has_one_style_file_that_is_kept_for_good(client: Client) -> None:
    """All that it names, in that order; nobody needs to sign in for it."""
    address = address_in(client.get("/sign-in/").text)
    answer = client.get(address)
    files = [page_styles.FOLDER / f"{name}.css" for name in OF_ALL_PAGES]

    assert answer.text == "".join(file.read_text() for file in files)
    assert answer["Content-Type"].startswith("text/css")
    assert "immutable" in answer["Cache-Control"]
    assert "Cookie" not in answer.get("Vary", "")


@pytest.mark.parametrize(("takes", "packed"), [("gzip, br", "br"), ("gzip", "gzip"), ("", None)])
def test_they_are_packed_as_a_browser_takes_them(
    client: Client, takes: str, packed: str | None
) -> None:
    """What is sent is the same content, whichever it is packed by."""
    address = address_in(client.get("/sign-in/").text)
    answer = client.get(address, headers={"Accept-Encoding": takes})
    unpack = {"br": brotli.decompress, "gzip": gzip.decompress, None: bytes}[packed]

    assert answer.get("Content-Encoding") == packed
    assert unpack(answer.content) == client.get(address).content
    assert "Accept-Encoding" in answer["Vary"]


def test_what_was_changed_has_another_address(
    client: Client, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A page from before the change gets what there is now, and does not keep it."""
    for file in page_styles.FOLDER.glob("*.css"):
        (tmp_path / file.name).write_bytes(file.read_bytes())
    monkeypatch.setattr(page_styles, "FOLDER", tmp_path)
    before = address_in(client.get("/sign-in/").text)
    with (tmp_path / "tables.css").open("a") as tables:
        tables.write("\n.added { color: red; }\n")
    after = address_in(client.get("/sign-in/").text)

    assert before != after
    assert ".added" in client.get(after).text
    assert "immutable" in client.get(after)["Cache-Control"]
    assert ".added" in client.get(before).text
    assert client.get(before)["Cache-Control"] == "no-cache"


@pytest.mark.parametrize(
    "names", ["tokens-nothing", "nothing", "tokens-", "..", "tokens/page", "tokens-page-tokens"]
)
def test_what_there_is_not_is_not_found(client: Client, names: str) -> None:
    """A stranger's address reads no other file, and is no failure."""
    assert client.get(f"/styles/{names}.0123456789ab.css").status_code == 404


def test_every_file_is_some_page_s() -> None:
    """No page names a file that there isn't, and there is none that no page names."""
    named = set(OF_ALL_PAGES)
    for template in (ROOT / "templates").rglob("*.html"):
        text = template.read_text()
        for names in re.findall(r"\{% block styles %\}([^{]*)\{% endblock %\}", text):
            named.update(names.split())
        if template.name == "styles.html":
            named.update(text.split())

    assert named == {file.stem for file in page_styles.FOLDER.glob("*.css")}


def test_whoever_comes_in_has_the_styles_of_the_pages_that_are_opened_next(
    client: Client, owner: Person, signed_in: Callable[[Person], Client]
) -> None:
    """Measuring and fitting are painted at once, also on a phone that never had them."""
    ours, job = signed_in(owner), JobFactory.create(shop=owner.shop)
    opened_next = [address_in(ours.get(f"/jobs/{job.pk}/{page}").text) for page in ("", "fit/")]

    for first in (client.get("/sign-in/"), ours.get("/jobs/")):
        fetched = re.findall(r'<link rel="prefetch" as="style"\s+href="([^"]+)"', first.text)
        assert fetched == opened_next
