"""What the surroundings decide: read once from the environment, and checked."""

import os
import re
import secrets
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from zoneinfo import available_timezones

from django.core.exceptions import ImproperlyConfigured

LOCAL_HOSTS = ("localhost", "127.0.0.1", "[::1]")
SHORTEST_KEY = 50
WEB = "SHOPJOBS_ANSWERS_WEB"
"""What `wsgi` sets before the settings are read: this process answers web requests."""


@dataclass(frozen=True, kw_only=True)
class Environment:
    """The site's settings that differ between one machine and the next."""

    secret_key: str
    debug: bool
    https: bool
    hosts: tuple[str, ...]
    address: str
    hsts_subdomains: bool
    hsts_preload: bool
    database_url: str
    sqlite_synchronous: str
    uploads: str
    s3_endpoint: str
    time_zone: str
    log: str
    mail_server: str
    mail_from: str
    errors_mailed_to: tuple[str, ...]
    errors_posted_to: str
    answers_web: bool


def read_environment(environ: Mapping[str, str], *, root: Path) -> Environment:
    """Read the environment of a site whose own files live under `root`."""
    https = _switch(environ, "SHOPJOBS_HTTPS")
    hosts = _several(environ, "SHOPJOBS_HOSTS") or LOCAL_HOSTS
    return Environment(
        secret_key=_secret_key(environ),
        debug=_switch(environ, "SHOPJOBS_DEBUG"),
        https=https,
        hosts=hosts,
        address=_web_address(environ, "SHOPJOBS_ADDRESS") or _address(hosts[0], https=https),
        hsts_subdomains=_switch(environ, "SHOPJOBS_HSTS_SUBDOMAINS"),
        hsts_preload=_hsts_preload(environ),
        database_url=environ.get("DATABASE_URL") or f"sqlite:///{embedded_database(root)}",
        sqlite_synchronous=_one_of(
            environ, "SHOPJOBS_SQLITE_SYNCHRONOUS", ("NORMAL", "FULL"), usual="NORMAL"
        ),
        uploads=environ.get("SHOPJOBS_UPLOADS") or str(root / "var" / "uploads"),
        s3_endpoint=environ.get("AWS_ENDPOINT_URL_S3") or environ.get("AWS_ENDPOINT_URL") or "",
        time_zone=_time_zone(environ),
        log=_one_of(environ, "SHOPJOBS_LOG", ("json", "text"), usual="json" if https else "text"),
        mail_server=environ.get("SHOPJOBS_MAIL_SERVER") or "smtp://localhost",
        mail_from=environ.get("SHOPJOBS_MAIL_FROM") or f"kitchen-fronts@{hosts[0]}",
        errors_mailed_to=_several(environ, "SHOPJOBS_ERRORS_MAILED_TO"),
        errors_posted_to=_web_address(environ, "SHOPJOBS_ERRORS_POSTED_TO"),
        answers_web=environ.get(WEB) == "1",
    )


def embedded_database(root: Path) -> Path:
    """Return the file of the database where none is named."""
    return root / "var" / "db.sqlite3"


def secrets_folder(environ: Mapping[str, str]) -> Path:
    """Return the folder for what must not be in the repository, made private to its user."""
    data = environ.get("XDG_DATA_HOME") or str(Path.home() / ".local" / "share")
    folder = Path(data) / "shopjobs"
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    return folder


def write_private(path: Path, text: str) -> str:
    """Write a file that only its user can read; where there is one already, that one holds."""
    draft = path.with_name(f".{path.name}.{os.getpid()}")
    descriptor = os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
    with os.fdopen(descriptor, "w", encoding="utf-8") as file:
        file.write(text)
    try:
        os.link(draft, path)
    except FileExistsError:
        pass
    finally:
        draft.unlink()
    return path.read_text(encoding="utf-8")


def keep_private(file: Path) -> None:
    """Make a file in a folder of its own; nobody but their user reads either of them."""
    file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    if not file.exists():
        file.touch(mode=0o600)
    beside = file.parent.glob(f"{file.name}*")
    for path, mode in ((file.parent, 0o700), *((each, 0o600) for each in beside)):
        if path.stat().st_uid == os.geteuid():
            path.chmod(mode)


def _secret_key(environ: Mapping[str, str]) -> str:
    given = environ.get("SHOPJOBS_SECRET_KEY", "")
    if given:
        if len(given) < SHORTEST_KEY:
            raise ImproperlyConfigured(
                f"SHOPJOBS_SECRET_KEY has {len(given)} characters; give at least {SHORTEST_KEY}."
            )
        return given
    path = secrets_folder(environ) / "secret-key"
    kept = path.read_text(encoding="utf-8") if path.exists() else ""
    return (kept or write_private(path, secrets.token_urlsafe(64))).strip()


def _switch(environ: Mapping[str, str], name: str) -> bool:
    given = environ.get(name, "")
    if given not in {"", "0", "1"}:
        raise ImproperlyConfigured(f"{name} is {given!r}; give 1 for on, 0 for off.")
    return given == "1"


def _several(environ: Mapping[str, str], name: str) -> tuple[str, ...]:
    given = (each.strip() for each in environ.get(name, "").split(","))
    return tuple(each for each in given if each)


def _one_of(environ: Mapping[str, str], name: str, words: tuple[str, ...], *, usual: str) -> str:
    given = environ.get(name) or usual
    if given not in words:
        raise ImproperlyConfigured(f"{name} is {given!r}; give {' or '.join(words)}.")
    return given


def _hsts_preload(environ: Mapping[str, str]) -> bool:
    """Browsers' lists take a site only with all its subdomains."""
    preload = _switch(environ, "SHOPJOBS_HSTS_PRELOAD")
    if preload and not _switch(environ, "SHOPJOBS_HSTS_SUBDOMAINS"):
        raise ImproperlyConfigured(
            "SHOPJOBS_HSTS_PRELOAD is 1; give SHOPJOBS_HSTS_SUBDOMAINS=1 with it."
        )
    return preload


def _web_address(environ: Mapping[str, str], name: str) -> str:
    given = environ.get(name, "")
    if given and not given.startswith(("https://", "http://")):
        raise ImproperlyConfigured(f"{name} is {given!r}; give an address like https://….")
    return given


def _address(host: str, *, https: bool) -> str:
    """Where people open the site; "" where that can't be told: a port is known behind HTTPS only,
    and a pattern such as `.fronts.example` is no name."""
    return f"https://{host}/" if https and re.fullmatch(r"[a-z0-9][a-z0-9.-]*", host) else ""


def _time_zone(environ: Mapping[str, str]) -> str:
    given = environ.get("SHOPJOBS_TIME_ZONE") or "UTC"
    if given not in available_timezones():
        raise ImproperlyConfigured(
            f"SHOPJOBS_TIME_ZONE is {given!r}; give a zone like America/Chicago."
        )
    return given
