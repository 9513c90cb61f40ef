"""What the pages' scripts weigh, and what they never do."""

import gzip
import re
from pathlib import Path

import django_htmx
import pytest

ROOT = Path(__file__).resolve().parents[2]
OURS = sorted((ROOT / "static" / "js").glob("*.js"))
HTMX = Path(django_htmx.__file__).parent / "static" / "django_htmx" / "htmx-2.min.js"
MOST_BYTES = 40 * 1024
NEVER = re.compile(r"innerHTML|outerHTML\s*=|insertAdjacentHTML|document\.write|eval\(|Function\(")


WORKER = "sw.js"
"""It is no page's: the browser fetches it once, beside them."""
TEMPLATES = ROOT / "templates"
NAMED = re.compile(r"<script src=\"{% static 'js/(\w+\.js)'")


def asked_for(template: Path) -> list[str]:
    """The scripts that a template asks for itself."""
    return NAMED.findall(template.read_text(encoding="utf-8"))


EVERYWHERE = asked_for(TEMPLATES / "base.html")
PAGES = sorted(
    page for page in TEMPLATES.rglob("*.html") if page.name != "base.html" and asked_for(page)
)


@pytest.mark.parametrize("page", PAGES, ids=lambda page: str(page.relative_to(TEMPLATES)))
def test_the_scripts_of_a_page_are_light(page: Path) -> None:
    """All of them together, compressed as they are sent, htmx included."""
    files = [ROOT / "static" / "js" / name for name in (*EVERYWHERE, *asked_for(page))]
    sent = sum(len(gzip.compress(file.read_bytes())) for file in [HTMX, *files])

    assert sent <= MOST_BYTES


def test_what_is_typed_never_becomes_markup() -> None:
    """Drafts and answers are put into a page as text, or as elements that were read."""
    found = [
        f"{file.name}: {line.strip()}"
        for file in OURS
        for line in file.read_text(encoding="utf-8").splitlines()
        if NEVER.search(line)
    ]

    assert found == []


def test_every_script_is_on_some_page() -> None:
    """Pages ask for each file of ours, once, and for nothing that is not there."""
    asked = {name for page in PAGES for name in asked_for(page)}

    assert sorted({*EVERYWHERE, *asked, WORKER}) == [file.name for file in OURS]
    assert not asked & set(EVERYWHERE)
