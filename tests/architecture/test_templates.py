"""What holds for every template and stylesheet."""

import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
TEMPLATES = sorted((ROOT / "templates").rglob("*.html"))
STYLES = sorted((ROOT / "static" / "css").glob("*.css"))
TEMPLATE_TAG = re.compile(r"\{[%{#].*?[%}#]\}")
HTML_TAG = re.compile(r"<\w(?:[^>\"']|\"[^\"]*\"|'[^']*')*>")
TWICE = (("href=", "hx-get="), ("action=", "hx-post="))
FIELD_NAME = re.compile(r"\[(?:name|for|id)[~|^$*]?=")


def test_an_address_stands_once() -> None:
    """A link or form that htmx answers too takes both from one tag: `opens` or `sends`."""
    found = [
        f"{file.relative_to(ROOT)}: {tag}"
        for file in TEMPLATES
        for tag in HTML_TAG.findall(TEMPLATE_TAG.sub("", file.read_text(encoding="utf-8")))
        for plain, htmx in TWICE
        if plain in tag and htmx in tag
    ]

    assert len(TEMPLATES) > 0
    assert found == []


def test_styles_know_no_field_by_its_name() -> None:
    """Which field is of use when is for the rules to say, and for the page to tell."""
    found = [
        f"{file.name}: {line.strip()}"
        for file in STYLES
        for line in file.read_text(encoding="utf-8").splitlines()
        if FIELD_NAME.search(line)
    ]

    assert len(STYLES) > 0
    assert found == []
