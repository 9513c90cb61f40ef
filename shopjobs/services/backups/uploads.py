"""The files that people uploaded, where the installation keeps any: in a folder, or in a bucket."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from django.conf import settings
from django.core.files import File
from django.core.files.storage import default_storage, storages
from django.core.files.storage.filesystem import FileSystemStorage

from shopjobs.services.backups.manifest import FILES, is_safe
from shopjobs.services.refused import Refused


def takes_uploads() -> bool:
    """Whether the installation has a place for uploaded files."""
    return folder_of_uploads() is not None or not _in_folder()


def folder_of_uploads() -> Path | None:
    """The folder where uploaded files lie; None where they are in a bucket, or none are taken."""
    return Path(settings.MEDIA_ROOT) if _in_folder() and settings.MEDIA_ROOT else None


def uploads() -> Iterator[str]:
    """Every uploaded file, by its name in the storage."""
    if not takes_uploads():
        return
    folder = folder_of_uploads()
    for name in _names_in_bucket("") if folder is None else _names_in_folder(folder):
        if not is_safe(f"{FILES}{name}"):
            raise Refused(f"{name!a} has a name that can't be saved.")
        yield name


@contextmanager
def uploads_in_place(unpacked: Path) -> Iterator[None]:
    """Put a folder in the place of the uploaded files, for good if the block ends well."""
    if not takes_uploads():
        yield
        return
    folder = folder_of_uploads()
    with _bucket_in_place(unpacked) if folder is None else _folder_in_place(folder, unpacked):
        yield


def _in_folder() -> bool:
    return isinstance(storages["default"], FileSystemStorage)


def _names_in_folder(folder: Path) -> Iterator[str]:
    for file in sorted(folder.rglob("*")):
        if file.is_file() and not file.is_symlink():
            yield file.relative_to(folder).as_posix()


def _names_in_bucket(folder: str) -> Iterator[str]:
    folders, files = default_storage.listdir(folder)
    for name in sorted(files):
        if name:  # A folder that some stores keep as a file without a name.
            yield f"{folder}{name}"
    for inner in sorted(folders):
        yield from _names_in_bucket(f"{folder}{inner}/")


@contextmanager
def _folder_in_place(folder: Path, unpacked: Path) -> Iterator[None]:
    """The files that were there lie beside the unpacked ones until then."""
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


@contextmanager
def _bucket_in_place(unpacked: Path) -> Iterator[None]:
    """What was there goes last, once all else is well; until then what came is taken out again.

    A name whose file is another one there is refused: names are given once, by chance.
    """
    there = set(uploads())
    wanted = {
        file.relative_to(unpacked).as_posix(): file
        for file in sorted(unpacked.rglob("*"))
        if file.is_file()
    }
    for name in sorted(wanted.keys() & there):
        _refuse_another(name, wanted[name])
    came: list[str] = []
    try:
        for name in sorted(wanted.keys() - there):
            with wanted[name].open("rb") as file:
                default_storage.save(name, File(file))
            came.append(name)
        yield
    except BaseException:
        for name in came:
            default_storage.delete(name)
        raise
    for name in sorted(there - wanted.keys()):
        default_storage.delete(name)


def _refuse_another(name: str, file: Path) -> None:
    with default_storage.open(name) as there:
        if there.read() != file.read_bytes():
            raise Refused(f"{name!a} is another file in the bucket than in this backup.")
