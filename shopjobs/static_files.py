"""Where style sheets, scripts and pictures are collected, and what pages call them."""

from django.conf import settings
from django.contrib.staticfiles.storage import StaticFilesStorage
from whitenoise.storage import CompressedManifestStaticFilesStorage


class CollectedFiles(CompressedManifestStaticFilesStorage):  # type: ignore[misc] # untyped
    """Collects files under names made of their content, whatever the environment says.

    So `collectstatic` does the same wherever it runs. Only a site that serves what was
    collected has such names in its pages; others serve the files from where they lie.
    """

    def url(self, name: str | None, force: bool = False) -> str:  # noqa: FBT001, FBT002 - Django's
        """Return a file's address."""
        if force or settings.STATIC_ROOT is not None:
            hashed: str = super().url(name, force)
            return hashed
        return StaticFilesStorage.url(self, name)
