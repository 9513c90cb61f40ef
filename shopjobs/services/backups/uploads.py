"""The files that people uploaded, where the installation keeps any."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from django.conf import settings

from shopjobs.services.backups.manifest import FILES, is_safe
from shopjobs.services.refused import Refused


def folder_of_uploads() -> Path | None:
    """Where uploaded files lie; None where the installation takes none."""
    return Path(settings.MEDIA_ROOT) if settings.MEDIA_ROOT else None


def uploads() -> Iterator[tuple[str, Path]]:
    """Every uploaded file, by its name in an archive."""
    folder = folder_of_uploads()
    if folder is None:
        return
    for file in sorted(folder.rglob("*")):
        if file.is_file() and not file.is_symlink():
            name = f"{FILES}{file.relative_to(folder).as_posix()}"
            if not is_safe(name):
                raise Refused(f"{str(file)!a} has a name that can't be saved.")
            yield name, file


@contextmanager
def uploads_in_place(unpacked: Path) -> Iterator[None]:
    """Put a folder in the place of the uploaded files, for good if the block ends well.

    The files that were there lie beside the unpacked ones until then.
    """
    folder = folder_of_uploads()
    if folder is None:
        yield
        return
    before = unpacked.with_name(f"{unpacked.name}-before")
    _move(folder, before)
    try:
        _move(unpacked, folder)
        yield
    except BaseException:
        _move(folder, unpacked)
        _move(before, folder)
        raise


def _move(folder: Path, to: Path) -> None:
    if folder.exists():
        folder.rename(to)
