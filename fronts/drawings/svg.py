"""SVG text from plain Python: every word escaped, every number an exact short decimal.

Places on paper are whole hundredths of a CSS pixel (1/96 in): `12_00` is 12 px. No
locale and no template can change how they are written.
"""

import re
from collections.abc import Mapping
from functools import lru_cache
from html import escape
from typing import TypeAlias

Px: TypeAlias = int
"""Hundredths of a CSS pixel."""

_NOT_XML = re.compile("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
_NOT_ID = re.compile(r"[^A-Za-z0-9.-]")


@lru_cache(maxsize=16_384)
def number(px: Px) -> str:
    """`1250` as `12.5`."""
    whole, rest = divmod(abs(px), 100)
    sign = "-" if px < 0 else ""
    return f"{sign}{whole}.{rest:02d}".rstrip("0") if rest else f"{sign}{whole}"


@lru_cache(maxsize=4_096)
def words(text: str) -> str:
    """Text that is safe between tags and in attributes; what XML can't hold is left out."""
    return escape(_NOT_XML.sub("", text), quote=True)


def written(attributes: Mapping[str, str | Px | None]) -> str:
    """Attributes as they stand in a tag; whole numbers as pixels, None is left out."""
    return "".join(
        f' {key}="{number(value) if isinstance(value, int) else words(value)}"'
        for key, value in attributes.items()
        if value is not None
    )


def element(name: str, attributes: Mapping[str, str | Px | None], *children: str) -> str:
    """One element with what is inside it."""
    inside = "".join(children)
    return (
        f"<{name}{written(attributes)}>{inside}</{name}>"
        if inside
        else (f"<{name}{written(attributes)}/>")
    )


def safe_id(prefix: str, label: str) -> str:
    """An element's id for a label: `front-B1.a`; other signs by their code, so ids stay apart."""
    return f"{prefix}-" + _NOT_ID.sub(lambda found: f"_{ord(found[0]):x}_", label)
