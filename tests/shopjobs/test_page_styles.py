"""A page's styles are one file."""

import re
from pathlib import Path

import pytest
from django.test import Client

from shopjobs import page_styles

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
    files = [page_styles.FOLDER / f"{name}.css" for name in ("tokens", "page", "forms", "tables")]

    assert answer.text == "".join(file.read_text() for file in files)
    assert answer["Content-Type"].startswith("text/css")
    assert "immutable" in answer["Cache-Control"]
    assert "Cookie" not in answer.get("Vary", "")


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


@pytest.mark.parametrize("names", ["tokens-nothing", "nothing", "tokens-", "..", "tokens/page"])
def test_what_there_is_not_is_not_found(client: Client, names: str) -> None:
    """A stranger's address reads no other file, and is no failure."""
    assert client.get(f"/styles/{names}.0123456789ab.css").status_code == 404


def test_every_file_is_some_page_s() -> None:
    """No page names a file that there isn't, and there is none that no page names."""
    base = re.findall(r"\{% filter joined %\}([^{]+)", (ROOT / "templates/base.html").read_text())
    pages = [
        block
        for file in (ROOT / "templates").rglob("*.html")
        for block in re.findall(r"\{% block styles %\}([^{]*)\{% endblock %\}", file.read_text())
    ]
    named = {name for names in (*base, *pages) for name in names.split()}

    assert named == {file.stem for file in page_styles.FOLDER.glob("*.css")}
