"""The files of the repository, as the tests of its architecture read them."""

import subprocess
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


def files() -> list[Path]:
    """Return the files of the project: those of the repository, and those not ignored."""
    listed = subprocess.run(
        ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    there = [ROOT / name for name in listed.stdout.split("\0") if name]
    return [file for file in there if file.is_file()]


def texts() -> Iterator[tuple[Path, str]]:
    """Return every file that is text, by its path from the top."""
    for file in files():
        try:
            yield file.relative_to(ROOT), file.read_text(encoding="utf-8")
        except UnicodeDecodeError:
            continue


def sources(*folders: str) -> list[tuple[Path, str]]:
    """Return the Python files of these folders, or of all; migrations are written by Django."""
    return [
        (path, text)
        for path, text in texts()
        if path.suffix == ".py"
        and "migrations" not in path.parts
        and (not folders or path.parts[0] in folders)
    ]
