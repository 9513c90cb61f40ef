"""What holds for every template and stylesheet."""

import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
TEMPLATES = sorted((ROOT / "templates").rglob("*.html"))
STYLES = sorted((ROOT / "static" / "css").glob("*.css"))
LONGEST_LINE = 100
TEMPLATE_TAG = re.compile(r"\{[%{#].*?[%}#]\}")
HTML_TAG = re.compile(r"<\w(?:[^>\"']|\"[^\"]*\"|'[^']*')*>")
TWICE = (("href=", "hx-get="), ("action=", "hx-post="))


def test_lines_are_short() -> None:
    """A line can be read without scrolling sideways."""
    found = [
        f"{file.relative_to(ROOT)}:{number}"
        for file in (*TEMPLATES, *STYLES)
        for number, line in enumerate(file.read_text(encoding="utf-8").splitlines(), 1)
        if len(line) > LONGEST_LINE
    ]

    assert len(TEMPLATES) > 0
    assert found == []


def test_an_address_stands_once() -> None:
    """A link or form that htmx answers too takes both from one tag: `opens` or `sends`."""
    found = [
        f"{file.relative_to(ROOT)}: {tag}"
        for file in TEMPLATES
        for tag in HTML_TAG.findall(TEMPLATE_TAG.sub("", file.read_text(encoding="utf-8")))
        for plain, htmx in TWICE
        if plain in tag and htmx in tag
    ]

    assert found == []
