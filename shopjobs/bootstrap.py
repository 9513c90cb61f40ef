"""Prepares what the project needs, outside an activated environment. Standard library only.

`python3 manage.py demo` on a fresh machine makes `.venv`, installs the packages
that `.ci` pins, each by the hash of its file, asks the system's package manager for what
Python's can't give, and hands over to the environment's own Python. A stamp in `.venv` says
what is installed, so that the next start has nothing to do.
"""

from __future__ import annotations

import ctypes
import hashlib
import importlib.util
import json
import os
import shutil
import subprocess
import sys
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import NoReturn

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
STAMP = VENV / "installed.json"
PINS = {
    "runtime": ROOT / ".ci" / "runtime.txt",
    "s3": ROOT / ".ci" / "s3.txt",
    "dev": ROOT / ".ci" / "constraints.txt",
}
"""What each group of packages consists of; each begins with the one before it."""
S3 = "s3://"
"""What begins the place for photos where that is a bucket of an S3 store."""
OLDEST_PYTHON = (3, 11)

PANGO_LIBRARIES = ("libpango-1.0.so.0", "libpangoft2-1.0.so.0", "libharfbuzz-subset.so.0")
PANGO_PACKAGES = ("libpango-1.0-0", "libpangoft2-1.0-0", "libharfbuzz-subset0")
FONT_FOLDERS = ("/usr/share/fonts", "/usr/local/share/fonts", "~/.fonts", "~/.local/share/fonts")
DRIVER_LIBRARIES = ("libatomic.so.1",)
"""What the program that drives Chromium, part of the package playwright, wants of the system."""
CHROMIUM_NAMES = ("chromium", "chromium-browser", "google-chrome")
TESTS = frozenset({"test", "coverage"})
DRAWS_SHEETS = frozenset({"demo", "sheets", "work", "bench"}) | TESTS
MEASURES_ITSELF = frozenset({"bench", "mutate"}) | TESTS
"""What needs the packages that only the tests use."""


def enter(arguments: Sequence[str]) -> None:
    """Return inside an activated environment; outside, prepare one and go on inside it."""
    if is_activated(sys.prefix, sys.base_prefix, os.environ):
        return
    if sys.version_info < OLDEST_PYTHON:
        _stop(
            f"Python {_dotted(OLDEST_PYTHON)} or newer is needed; this is {sys.version.split()[0]}."
        )
    command = arguments[0] if arguments else "help"
    python = _environment()
    _install(wanted_groups(command, os.environ))
    if command in DRAWS_SHEETS:
        _ensure_pango()
    if command in TESTS:
        _ensure_browser()
    environ = {**os.environ, "VIRTUAL_ENV": str(VENV)}
    os.execve(python, [str(python), str(ROOT / "manage.py"), *arguments], environ)


def is_activated(prefix: str, base_prefix: str, environ: Mapping[str, str]) -> bool:
    """Return whether Python runs in an environment that someone chose."""
    return prefix != base_prefix or bool(environ.get("VIRTUAL_ENV"))


def wanted_groups(command: str, environ: Mapping[str, str]) -> tuple[str, ...]:
    """Return which groups of packages a command needs, where photos are kept so."""
    if command in MEASURES_ITSELF:
        return tuple(PINS)
    in_s3 = environ.get("SHOPJOBS_UPLOADS", "").startswith(S3)
    return ("runtime", "s3") if in_s3 else ("runtime",)


def stamp_of(*pins: str) -> str:
    """Return a short text that changes whenever other packages are wanted."""
    return hashlib.sha256("\n".join(pins).encode()).hexdigest()[:16]


def missing_groups(wanted: Mapping[str, str], installed: Mapping[str, str]) -> list[str]:
    """Return the groups whose stamp is not the one that was left at their installation."""
    return [group for group, stamp in wanted.items() if installed.get(group) != stamp]


def chromium() -> str | None:
    """Return where Chromium is, if it is installed."""
    found = (shutil.which(name) for name in CHROMIUM_NAMES)
    return next((path for path in found if path), None)


def missing_libraries(names: Sequence[str] = PANGO_LIBRARIES) -> list[str]:
    """Return those of the system's libraries that can't be loaded."""
    return [name for name in names if not _loads(name)]


def has_font(folders: Sequence[str] = FONT_FOLDERS) -> bool:
    """Return whether any font is installed."""
    found = (Path(folder).expanduser().rglob("*.[to]tf") for folder in folders)
    return any(next(fonts, None) is not None for fonts in found)


def _environment() -> Path:
    python = VENV / "bin" / "python"
    if python.exists():
        return python
    if not _has_ensurepip():
        package = f"python{_dotted(sys.version_info[:2])}-venv"
        _ensure((package,), "a virtual environment")
        if not _has_ensurepip():
            raise SystemExit(1)
    _say("Making a virtual environment in .venv …")
    if _run([sys.executable, "-m", "venv", "--clear", str(VENV)]):
        _stop("The virtual environment could not be made; what Python said stands above.")
    return python


def _install(groups: Sequence[str]) -> None:
    pins = [PINS[group].read_text(encoding="utf-8") for group in groups]
    wanted = {group: stamp_of(*pins[: index + 1]) for index, group in enumerate(groups)}
    installed = json.loads(STAMP.read_text(encoding="utf-8")) if STAMP.exists() else {}
    if not missing_groups(wanted, installed):
        return
    _say("Installing the Python packages that are needed, about a minute …")
    pip = [str(VENV / "bin" / "python"), "-m", "pip", "install", "--quiet"]
    quiet = ["--disable-pip-version-check", "--root-user-action=ignore", "--no-input"]
    if _run([*pip, *quiet, "--require-hashes", "--requirement", str(PINS[groups[-1]])]):
        _stop("Not all packages could be installed; what pip said stands above.")
    STAMP.write_text(json.dumps({**installed, **wanted}), encoding="utf-8")


def _ensure_pango() -> None:
    packages = PANGO_PACKAGES if missing_libraries() else ()
    fonts = () if has_font() else ("fonts-dejavu-core",)
    if packages or fonts:
        _ensure((*packages, *fonts), "printing sheets")


def _ensure_browser() -> None:
    browser = () if chromium() else ("chromium",)
    driver = ("libatomic1",) if missing_libraries(DRIVER_LIBRARIES) else ()
    if browser or driver:
        _ensure((*browser, *driver), "the browser tests")


def _ensure(packages: Sequence[str], purpose: str) -> None:
    """Install system packages where that may be done; else say in one line which are missing."""
    names = " ".join(packages)
    root = _root_command()
    if root is not None and shutil.which("apt-get"):
        _say(f"Installing {names} from the system's packages, for {purpose} …")
        apt = [*root, "env", "DEBIAN_FRONTEND=noninteractive", "apt-get", "-qq"]
        apt += ["-o", "DPkg::Lock::Timeout=120"]
        install = [*apt, "install", "--yes", "--no-install-recommends", *packages]
        if not _run(install, quiet=True):
            return
        _run([*apt, "update"], quiet=True)
        if not _run(install):
            return
    _say(f"Missing for {purpose}: {names}. On Debian, install with: apt install {names}")


def _root_command() -> list[str] | None:
    if os.geteuid() == 0:
        return []
    if shutil.which("sudo") and not _run(["sudo", "-n", "true"], quiet=True):
        return ["sudo", "-n"]
    return None


def _run(command: Sequence[str], *, quiet: bool = False) -> int:
    """Run a command and return its exit code; unless quiet, show what a failing one printed."""
    done = subprocess.run(
        command,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        errors="replace",
    )
    if done.returncode and not quiet:
        _say(done.stdout.strip())
    return done.returncode


def _loads(library: str) -> bool:
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True


def _has_ensurepip() -> bool:
    importlib.invalidate_caches()
    return importlib.util.find_spec("ensurepip") is not None


def _dotted(version: Sequence[int]) -> str:
    return ".".join(str(part) for part in version)


def _say(line: str) -> None:
    print(line, file=sys.stderr, flush=True)


def _stop(line: str) -> NoReturn:
    _say(line)
    raise SystemExit(1)
