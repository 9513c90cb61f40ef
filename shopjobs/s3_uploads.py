"""Uploaded files in a bucket of an S3 store, which several machines share."""

import errno
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any, NoReturn

from botocore.config import Config
from botocore.exceptions import BotoCoreError, ClientError
from django.core.files.base import File
from storages.backends.s3 import S3Storage

CONNECT_S, READ_S, TRIES = 5, 30, 3


class StoreError(OSError):
    """The store could not be reached, or would not do as it was told."""


class S3Uploads(S3Storage):
    """A bucket as private as it is: no file in it has a link that leads past the site.

    A name is given once: what is there is never written over. Checksums are those that every
    store of this kind knows.
    """

    def get_default_settings(self) -> dict[str, Any]:
        """What the class holds its bucket to, whatever a settings file may say."""
        told: dict[str, Any] = super().get_default_settings()
        return told | {"file_overwrite": False, "default_acl": None, "use_ssl": True}

    def __init__(self, **options: Any) -> None:
        style = options.get("addressing_style", "auto")
        config = Config(
            s3={"addressing_style": style}, signature_version="s3v4",
            connect_timeout=CONNECT_S, read_timeout=READ_S, retries={"total_max_attempts": TRIES},
            request_checksum_calculation="when_required",
            response_checksum_validation="when_required",
        )  # fmt: skip
        super().__init__(**options, client_config=config)

    def url(self, name: str | None, *_: Any, **__: Any) -> NoReturn:
        """There is none: pages hand files out themselves."""
        raise ValueError(f"{name} is not accessible by a link")

    def _open(self, name: str, mode: str = "rb") -> File[bytes]:
        with _told():
            opened: File[bytes] = super()._open(name, mode)
            opened.file  # noqa: B018 - fetches it here, where what fails is told
            return opened

    def _save(self, name: str, content: File[bytes]) -> str:
        with _told():
            kept: str = super()._save(name, content)
            return kept

    def delete(self, name: str) -> None:
        """Remove a file; one that is gone already is no fault."""
        with _told():
            super().delete(name)

    def exists(self, name: str) -> bool:
        """Whether there is a file of this name."""
        with _told():
            there: bool = super().exists(name)
            return there

    def listdir(self, path: str) -> tuple[list[str], list[str]]:
        """The folders and the files in a folder."""
        with _told():
            folders, files = super().listdir(path)
            return folders, files


@contextmanager
def _told() -> Iterator[None]:
    """Let what the store refuses be an error of files, as it is of a folder."""
    try:
        yield
    except (BotoCoreError, ClientError) as error:
        words = f"the store of uploaded files: {error}"
        raise StoreError(errno.EHOSTUNREACH, words) from error
