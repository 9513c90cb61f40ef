"""Files as answers, under names that every system can keep."""

import re
from typing import Literal
from urllib.parse import quote

from django.http import HttpResponse
from django.http.response import HttpResponseBase

LONGEST = 80
_UNSAFE = re.compile(r'[\x00-\x1f\x7f<>:"/\\|?*;%]+')
_NOT_ASCII = re.compile(r"[^\x20-\x7e]+")


def safe_name(name: str) -> str:
    """The name without what a file system or a header could stumble over, its ending kept."""
    stem, dot, ending = name.rpartition(".")
    kept = " ".join(_UNSAFE.sub("-", stem).split()).strip(" .-")[:LONGEST].rstrip()
    return f"{kept or 'sheet'}{dot}{ending}"


def attachment(content: bytes, kind: str, name: str) -> HttpResponse:
    """A file to be kept."""
    return _file(content, kind, name, "attachment")


def inline(content: bytes, kind: str, name: str) -> HttpResponse:
    """A file to be looked at in the browser."""
    return _file(content, kind, name, "inline")


def asked_about_again(response: HttpResponseBase, etag: str) -> HttpResponseBase:
    """The file, kept by its browser, which asks each time whether it is still this one."""
    response.headers["ETag"] = etag
    response.headers["Cache-Control"] = "private, no-cache"
    return response


def _file(
    content: bytes, kind: str, name: str, how: Literal["attachment", "inline"]
) -> HttpResponse:
    """RFC 6266: the plain name for everyone, the whole one where it has other letters."""
    safe = safe_name(name)
    plain = _NOT_ASCII.sub("_", safe)
    said = f'{how}; filename="{plain}"'
    if plain != safe:
        said += f"; filename*=UTF-8''{quote(safe)}"
    response = HttpResponse(content, content_type=kind)
    response.headers["Content-Disposition"] = said
    response.headers["Cache-Control"] = "private, no-store"
    response.headers["X-Content-Type-Options"] = "nosniff"
    # A browser's own viewer of PDFs is a plugin to it, which the pages' policy forbids.
    response.headers["Content-Security-Policy"] = "frame-ancestors 'none'; base-uri 'none'"
    return response
