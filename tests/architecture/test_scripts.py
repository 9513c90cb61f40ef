"""What the pages' scripts weigh, and what they never do."""

import gzip
import re
from pathlib import Path

import django_htmx

ROOT = Path(__file__).resolve().parents[2]
OURS = sorted((ROOT / "static" / "js").glob("*.js"))
HTMX = Path(django_htmx.__file__).parent / "static" / "django_htmx" / "htmx-2.min.js"
MOST_BYTES = 40 * 1024
NEVER = re.compile(r"innerHTML|outerHTML\s*=|insertAdjacentHTML|document\.write|eval\(|Function\(")


def test_the_scripts_are_light() -> None:
    """All of them together, compressed as they are sent, htmx included."""
    sent = sum(len(gzip.compress(file.read_bytes())) for file in [HTMX, *OURS])

    assert len(OURS) > 0
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


def test_every_script_is_on_every_page() -> None:
    """The page asks for each file of ours, and for nothing that is not there."""
    base = (ROOT / "templates" / "base.html").read_text(encoding="utf-8")

    assert sorted(re.findall(r"js/(\w+\.js)", base)) == [file.name for file in OURS]
