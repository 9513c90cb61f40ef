"""The style files of a page, joined into one: a phone asks for it once, over a slow connection."""

import hashlib
from functools import lru_cache
from pathlib import Path
from typing import NamedTuple

import brotli
from django.conf import settings

FOLDER: Path = settings.BASE_DIR / "static" / "css"


class Joined(NamedTuple):
    """The content of some style files, plain and as brotli, and twelve digits that change with it.

    The digits are hexadecimal.
    """

    content: bytes
    packed: bytes
    mark: str


def joined(names: tuple[str, ...]) -> Joined:
    """Join the files of these names, in that order.

    Raises
    ------
    FileNotFoundError
        There is no file of a name.
    """
    return _joined(names, tuple(_file(name).stat().st_mtime_ns for name in names))


@lru_cache(maxsize=100)
def _joined(names: tuple[str, ...], _: tuple[int, ...]) -> Joined:
    """Join them anew when one of them was written since."""
    content = b"".join(_file(name).read_bytes() for name in names)
    return Joined(content, brotli.compress(content), hashlib.sha256(content).hexdigest()[:12])


def _file(name: str) -> Path:
    return FOLDER / f"{name}.css"
