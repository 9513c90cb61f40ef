"""Whether the site is alive, and whether it can do its work, for whatever watches over it."""

import logging
import shutil
import tempfile
from collections.abc import Callable
from pathlib import Path

from django.conf import settings
from django.core.files.storage import storages
from django.core.files.storage.filesystem import FileSystemStorage
from django.db import connection
from django.http import HttpRequest, HttpResponseNotAllowed, JsonResponse
from django.http.response import HttpResponseBase
from django.utils.module_loading import import_string

from shopjobs.bootstrap import missing_libraries

LOG = logging.getLogger(__name__)
ALIVE, READY = "/healthz", "/readyz"
LEAST_FREE_BYTES = 200 * 1024 * 1024
"""With less room a set of sheets or a copy of the database may no longer fit."""


class NotReadyError(RuntimeError):
    """What hinders the site at its work, in words for whoever runs it."""


class Health:
    """Answers the two addresses before anything else is asked of a request.

    They hold for any host and behind any proxy, and touch neither session nor person. What
    hinders the site stands in the log; the answer names only the check.
    """

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        if request.path_info not in (ALIVE, READY):
            return self.get_response(request)
        if request.method not in ("GET", "HEAD"):
            return HttpResponseNotAllowed(["GET", "HEAD"])
        checks = {} if request.path_info == ALIVE else _checked()
        failed = "failed" in checks.values()
        response = JsonResponse(
            {"status": "failed" if failed else "ok", **checks}, status=503 if failed else 200
        )
        response.headers["Cache-Control"] = "no-store"
        return response


def _checked() -> dict[str, str]:
    return {name: _outcome(name, import_string(path)) for name, path in settings.READY_CHECKS}


def _outcome(name: str, check: Callable[[], None]) -> str:
    try:
        check()
    except NotReadyError as hindered:
        LOG.warning("Not ready: %s: %s", name, hindered)
    except Exception:
        LOG.exception("Not ready: %s", name)
    else:
        return "ok"
    return "failed"


def database() -> None:
    """Ask the database for an answer."""
    with connection.cursor() as cursor:
        cursor.execute("SELECT 1")


def disk() -> None:
    """Write where the site writes: there is room, and it may."""
    for folder in _written_folders():
        free = shutil.disk_usage(folder).free
        if free < LEAST_FREE_BYTES:
            raise NotReadyError(f"{folder} has {free // 1024**2} MB free")
        try:
            with tempfile.TemporaryFile(dir=folder) as file:
                file.write(b"\0" * 4096)
        except OSError as failed:
            raise NotReadyError(f"{folder} takes no file: {failed.strerror}") from failed


def photos() -> None:
    """Ask the store of photos for an answer, where they lie in a bucket."""
    storage = storages["default"]
    if isinstance(storage, FileSystemStorage):
        return
    try:
        storage.exists("readyz")
    except OSError as failed:
        raise NotReadyError(str(failed)) from failed


def printing() -> None:
    """Look for what draws text on sheets; WeasyPrint itself, 50 MB, stays unloaded."""
    if missing := missing_libraries():
        raise NotReadyError(f"the system lacks {', '.join(missing)}")


def _written_folders() -> set[Path]:
    folders = {Path(tempfile.gettempdir())}
    if connection.vendor == "sqlite":
        folders.add(Path(connection.settings_dict["NAME"]).parent)
    return folders
